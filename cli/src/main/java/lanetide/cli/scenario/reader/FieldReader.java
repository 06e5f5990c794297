package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.key.Default;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
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
final class FieldReader {
    /** Most bowlers in one squad: as many as the largest centre holds. */
    static final int MOST_BOWLERS = 1000;

    /** Shares whose sum misses 100 % by this at most were rounded (33.3 % three times), and are scaled. */
    private static final double ROUNDING = 0.005;

    private static final double EXACT = 1e-9;

    private static final Range TEMPO = Range.between(0.2, 5);

    private final Notices notices;
    private final Names names;
    private final Assumptions assumptions;

    FieldReader(Notices notices, Names names, Assumptions assumptions) {
        this.notices = notices;
        this.names = names;
        this.assumptions = assumptions;
    }

    Optional<FieldMix> read(Section section) {
        int before = notices.errors();
        int perSquad = section.whole("perSquad", 1, MOST_BOWLERS);
        List<Share<Hand>> hands = shares(section, "hands", Names.HANDS, "hand");
        List<Share<PlayingStyle>> styles = shares(section, "styles", names.styles(), "style");
        List<Share<Level>> levels = shares(section, "levels", names.levels(), "level");
        List<Share<Coverstock>> covers = shares(section, "covers", names.covers(), "cover");
        Optional<Coverstock> spareCover = spareCover(section);
        List<Share<Double>> tempos = tempos(section);
        Optional<Coverstock> secondCover = secondCover(section);
        return section.build(
                before,
                () -> new FieldMix(
                        perSquad, hands, styles, levels, covers, spareCover.orElseThrow(), tempos, secondCover));
    }

    /** The cover of a spare ball, in a field or an entry. */
    Optional<Coverstock> spareCover(Section section) {
        if (section.has("spareCover")) {
            return section.get("spareCover").flatMap(value -> value.oneOf(names.covers(), "cover"));
        }
        assumptions.add("spareCover", Defaults.SPARE_COVER, "common practice, no source");
        return Optional.ofNullable(names.covers().get(Defaults.SPARE_COVER));
    }

    /** How long a bowler takes over his shots, as a share of the usual, in a field or an entry; NaN, with a notice, if it is wrong. */
    static double tempo(Section section, String key, Default otherwise) {
        return section.get(key)
                .map(value -> value.quantity(Measure.SHARE, TEMPO).orElse(Double.NaN))
                .orElse(otherwise.base());
    }

    private List<Share<Double>> tempos(Section section) {
        double slow = section.get("slow")
                .map(value -> value.quantity(Measure.SHARE, Range.between(0, 1)).orElse(Double.NaN))
                .orElse(Defaults.SLOW.base());
        double slowTempo = tempo(section, "slowTempo", Defaults.SLOW_TEMPO);
        if (slow > 0 && !section.has("slowTempo")) {
            assumptions.add(section.pathOf("slowTempo"), Defaults.SLOW_TEMPO);
        }
        return Double.isNaN(slow) || Double.isNaN(slowTempo)
                ? List.of()
                : List.of(new Share<>(Bowler.DEFAULT_TEMPO, 1 - slow), new Share<>(slowTempo, slow));
    }

    /** The cover of another ball for full racks, in a field or an entry. */
    Optional<Coverstock> secondCover(Section section) {
        return section.get("secondCover").flatMap(value -> value.oneOf(names.covers(), "cover"));
    }

    private <T> List<Share<T>> shares(Section section, String key, Map<String, T> known, String kind) {
        int before = notices.errors();
        Optional<Value> value = section.require(key);
        Map<String, NamedValue> written = value.flatMap(Value::named).orElse(Map.of());
        List<Share<T>> shares = new ArrayList<>();
        written.values().forEach(share -> share(share, known, kind).ifPresent(shares::add));
        return notices.errors() > before || value.isEmpty() ? List.of() : scaled(shares, value.get());
    }

    private static <T> Optional<Share<T>> share(NamedValue written, Map<String, T> kinds, String kind) {
        OptionalDouble share = written.value().quantity(Measure.SHARE, Range.between(0, 1));
        Optional<T> thing = written.oneOf(kinds, kind);
        return share.isEmpty() ? Optional.empty() : thing.map(known -> new Share<>(known, share.getAsDouble()));
    }

    private <T> List<Share<T>> scaled(List<Share<T>> shares, Value value) {
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
