package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.key.UsualField;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.NamedValue;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.FieldMix.Share;
import lanetide.squads.model.Level;

/** Reads a field of bowlers given by shares. */
public record FieldReader(Names names) {
    /** Shares whose sum misses 100 % by this at most were rounded (33.3 % three times), and are scaled. */
    private static final double ROUNDING = 0.005;

    private static final double EXACT = 1e-9;

    /** Reads a field; empty, with notices, if something of it is wrong. */
    public Optional<FieldMix> read(Section section) {
        List.of(BowlerKeys.PER_SQUAD, BowlerKeys.HANDS, BowlerKeys.STYLES, BowlerKeys.LEVELS, BowlerKeys.COVERS)
                .forEach(section::require);
        List<Share<Hand>> hands = shares(section, BowlerKeys.HANDS, Names.HANDS, "hand");
        List<Share<PlayingStyle>> styles = shares(section, BowlerKeys.STYLES, names.styles(), "style");
        List<Share<Level>> levels = shares(section, BowlerKeys.LEVELS, names.levels(), "level");
        List<Share<Coverstock>> covers = shares(section, BowlerKeys.COVERS, names.covers(), "cover");
        Optional<Coverstock> spareCover = spareCover(section, BowlerKeys.FIELD_SPARE_COVER);
        Optional<Coverstock> secondCover = section.oneOf(BowlerKeys.FIELD_SECOND_COVER, names.covers());
        return section.build(() -> new FieldMix(
                section.get(BowlerKeys.PER_SQUAD),
                hands,
                styles,
                levels,
                covers,
                spareCover.orElseThrow(),
                tempos(section),
                secondCover));
    }

    /** The shares by which is drawn what entries do not say: those of a field beside them, else usual ones. */
    TraitShares besideEntries(Optional<Section> field) {
        boolean slow = field.filter(section -> section.has(BowlerKeys.SLOW)).isPresent();
        return new TraitShares(
                drawn(Trait.HAND, field, BowlerKeys.HANDS, Names.HANDS, UsualField.HANDS),
                drawn(Trait.STYLE, field, BowlerKeys.STYLES, names.styles(), UsualField.STYLES),
                drawn(Trait.LEVEL, field, BowlerKeys.LEVELS, names.levels(), Map.of()),
                drawn(Trait.COVER, field, BowlerKeys.COVERS, names.covers(), UsualField.COVERS),
                new TraitShare<>(
                        Trait.TEMPO,
                        field.filter(section -> slow)
                                .flatMap(section -> section.build(() -> tempos(section)))
                                .orElse(List.of()),
                        BowlerKeys.TEMPO.form()::write,
                        true),
                field.flatMap(section -> section.oneOf(BowlerKeys.FIELD_SPARE_COVER, names.covers())),
                field.flatMap(section -> section.oneOf(BowlerKeys.FIELD_SECOND_COVER, names.covers())));
    }

    private static <T> TraitShare<T> drawn(
            Trait trait,
            Optional<Section> field,
            Key<Map<String, Double>> key,
            Map<String, T> known,
            Map<String, Double> usual) {
        List<Share<T>> stated = field.filter(section -> section.has(key))
                .map(section -> shares(section, key, known, trait.id()))
                .orElse(List.of());
        List<Share<T>> kinds = stated.isEmpty()
                ? usual.entrySet().stream()
                        .map(share -> new Share<>(known.get(share.getKey()), share.getValue()))
                        .toList()
                : stated;
        return new TraitShare<>(trait, kinds, kind -> nameOf(kind, known), !stated.isEmpty());
    }

    private static <T> String nameOf(T kind, Map<String, T> known) {
        return known.keySet().stream()
                .filter(name -> known.get(name).equals(kind))
                .findFirst()
                .orElseThrow();
    }

    /** The cover of a spare ball, in a field or an entry. */
    Optional<Coverstock> spareCover(Section section, Key<String> key) {
        if (section.has(key)) {
            return section.oneOf(key, names.covers());
        }
        section.notices().assumptions().add(key.name(), BowlerKeys.SPARE_BALL, "common practice, no source");
        return Optional.ofNullable(names.covers().get(BowlerKeys.SPARE_BALL));
    }

    private static List<Share<Double>> tempos(Section section) {
        double slow = section.get(BowlerKeys.SLOW);
        double slowTempo = section.get(BowlerKeys.SLOW_TEMPO);
        if (slow > 0 && !section.has(BowlerKeys.SLOW_TEMPO)) {
            section.assume(BowlerKeys.SLOW_TEMPO, BowlerKeys.SLOW_TEMPO.otherwise(), "assumption");
        }
        return List.of(new Share<>(Bowler.DEFAULT_TEMPO, 1 - slow), new Share<>(slowTempo, slow));
    }

    /** Shares of known things, scaled to 100 %; none, with a notice, if something is wrong. */
    private static <T> List<Share<T>> shares(
            Section section, Key<Map<String, Double>> key, Map<String, T> known, String kind) {
        Map<String, NamedValue> written =
                section.value(key).flatMap(Value::named).orElse(Map.of());
        List<Share<T>> shares = new ArrayList<>();
        for (NamedValue each : written.values()) {
            Optional<Double> share = each.value().read(BowlerKeys.SHARE);
            each.oneOf(known, kind).ifPresent(thing -> share.ifPresent(part -> shares.add(new Share<>(thing, part))));
        }
        return section.value(key)
                .filter(value -> value.isBlock() && shares.size() == written.size())
                .map(value -> scaled(shares, value))
                .orElse(List.of());
    }

    private static <T> List<Share<T>> scaled(List<Share<T>> shares, Value value) {
        double sum = shares.stream().mapToDouble(Share::share).sum();
        double miss = Math.abs(sum - 1);
        String total = Range.round(100 * sum) + " %";
        if (miss > ROUNDING) {
            value.say(
                    NoticeCode.SHARES_NOT_100,
                    total,
                    "The shares of " + value.path() + " add up to " + total
                            + "; they must add up to 100 %. Correct one of them.");
            return List.of();
        }
        if (miss > EXACT) {
            value.say(
                    NoticeCode.SHARES_ROUNDED,
                    total,
                    "The shares of " + value.path() + " add up to " + total
                            + "; they should add up to 100 % and have been scaled to it. Correct one to choose yourself.");
        }
        return shares.stream()
                .map(share -> new Share<>(share.kind(), Math.min(1, share.share() / sum)))
                .toList();
    }
}
