package lanetide.cli.scenario.entries;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.entries.DrawnTraits.Who;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Level;

/** Reads one bowler, listed or a substitute; no two have the same name. */
public final class BowlerReader {
    private final Names names;
    private final FieldReader fields;
    private final LevelLimits limits;
    private final Blanks blanks;
    private final Set<String> taken = new HashSet<>();
    private final Map<Who, Integer> lineOf = new HashMap<>();
    private final Map<String, String> firstSquadOf = new HashMap<>();
    private final Set<String> again = new LinkedHashSet<>();
    /** Under which names each person bowls. */
    private final Map<String, Set<String>> namesOf = new HashMap<>();

    BowlerReader(Names names, FieldReader fields, LevelLimits limits, Blanks blanks) {
        this.names = names;
        this.fields = fields;
        this.limits = limits;
        this.blanks = blanks;
    }

    /** What is said of a bowler, or drawn where nothing is; empty where it is wrong. */
    private record Traits(
            Optional<Hand> hand,
            Optional<PlayingStyle> style,
            Optional<Level> level,
            Optional<Coverstock> cover,
            Optional<Coverstock> spareCover,
            Optional<Coverstock> secondCover,
            Optional<Double> tempo) {}

    /** Takes a name, so that no other bowler may have it. */
    public void take(String name) {
        taken.add(name);
    }

    /** Reads a substitute, of whom everything must be said; empty, with notices, if something of him is wrong. */
    public Optional<Bowler> substitute(Section section) {
        List.of(BowlerKeys.HAND, BowlerKeys.STYLE, BowlerKeys.LEVEL, BowlerKeys.COVER)
                .forEach(section::require);
        Optional<String> id = section.find(BowlerKeys.ID);
        id.filter(name -> !taken.add(name))
                .flatMap(name -> section.value(BowlerKeys.ID))
                .ifPresent(BowlerReader::twice);
        return read(
                section,
                id,
                new Traits(
                        section.find(BowlerKeys.HAND),
                        section.oneOf(BowlerKeys.STYLE, names.styles()),
                        section.oneOf(BowlerKeys.LEVEL, names.levels()),
                        section.oneOf(BowlerKeys.COVER, names.covers()),
                        fields.spareCover(section, BowlerKeys.SPARE_COVER),
                        section.oneOf(BowlerKeys.SECOND_COVER, names.covers()),
                        section.find(BowlerKeys.TEMPO)));
    }

    /**
     * Reads a listed bowler, of whom what is not said is told by his average (pins) or drawn; empty, with notices, if
     * something of him is wrong.
     */
    Optional<Bowler> listed(Section section, Optional<String> inSquad, Optional<Integer> average) {
        blanks.addBowler();
        String squad = inSquad.orElse("");
        Optional<String> name = section.find(BowlerKeys.ID);
        Optional<String> id = inSquad.isEmpty() ? name : name.flatMap(written -> alone(section, written, squad));
        // Who bowls again is the bowler that he was in his first squad.
        Blanks.Person who = new Blanks.Person(
                new Who(squad, id.orElse("")), name.map(firstSquadOf::get).orElse(squad), name.orElse(""));
        TraitShares shares = blanks.shares();
        return read(
                section,
                id,
                new Traits(
                        section.has(BowlerKeys.HAND)
                                ? section.find(BowlerKeys.HAND)
                                : Optional.of(blanks.draw(who, shares.hands())),
                        named(section, BowlerKeys.STYLE, names.styles(), who, shares.styles()),
                        level(section, who, average),
                        named(section, BowlerKeys.COVER, names.covers(), who, shares.covers()),
                        section.has(BowlerKeys.SPARE_COVER)
                                        || shares.spareCover().isEmpty()
                                ? fields.spareCover(section, BowlerKeys.SPARE_COVER)
                                : shares.spareCover(),
                        section.has(BowlerKeys.SECOND_COVER)
                                ? section.oneOf(BowlerKeys.SECOND_COVER, names.covers())
                                : shares.secondCover(),
                        section.has(BowlerKeys.TEMPO) || shares.tempos().kinds().isEmpty()
                                ? section.find(BowlerKeys.TEMPO)
                                : Optional.of(blanks.draw(who, shares.tempos()))));
    }

    /** The name under which a listed bowler bowls, alone in the event; empty, with a notice, if it is taken. */
    private Optional<String> alone(Section section, String name, String squad) {
        int line = section.place().line();
        Integer earlier = lineOf.putIfAbsent(new Who(squad, name), line);
        if (earlier != null) {
            section.refuse(
                    BowlerKeys.ID,
                    NoticeCode.DUPLICATE_NAME,
                    ", the name of an earlier entry of squad " + squad + ", on line " + earlier
                            + "; each bowler must have a name alone in his squad. Add an initial"
                            + " or a number, or remove one of the two.");
            return Optional.empty();
        }
        Set<String> his = namesOf.computeIfAbsent(name, key -> new LinkedHashSet<>());
        if (firstSquadOf.putIfAbsent(name, squad) == null && taken.add(name)) {
            his.add(name);
            return Optional.of(name);
        }
        String id = name + " (" + squad + ")";
        his.add(id);
        again.add(id);
        if (!taken.add(id)) {
            section.value(BowlerKeys.ID).ifPresent(BowlerReader::twice);
        }
        return Optional.of(id);
    }

    /** The persons who are listed in several squads, by each of the names under which they bowl. */
    Map<String, String> people() {
        Map<String, String> people = new HashMap<>();
        namesOf.forEach((person, his) -> {
            if (his.size() > 1) {
                his.forEach(name -> people.put(name, person));
            }
        });
        return people;
    }

    /** Says that bowlers are listed in more than one squad, if any are, where their list stands. */
    void tellWhoBowlsAgain(Value list) {
        if (!again.isEmpty()) {
            boolean one = again.size() == 1;
            list.say(
                    NoticeCode.BOWLS_AGAIN,
                    "",
                    again.size() + (one ? " entry names" : " entries name")
                            + " a bowler of an earlier squad, who bowls again; in the later one he is called by his squad"
                            + " too, such as `" + Notices.quote(again.iterator().next()) + "`.");
        }
    }

    private Optional<Bowler> read(Section section, Optional<String> id, Traits traits) {
        return section.build(() -> new Bowler(
                id.orElseThrow(),
                traits.hand().orElseThrow(),
                traits.style().orElseThrow(),
                traits.level().orElseThrow(),
                traits.cover().orElseThrow(),
                traits.spareCover().orElseThrow(),
                traits.tempo().orElseThrow(),
                traits.secondCover(),
                0));
    }

    private <T> Optional<T> named(
            Section section, Key<String> key, Map<String, T> known, Blanks.Person who, TraitShare<T> shares) {
        return section.has(key) ? section.oneOf(key, known) : Optional.of(blanks.draw(who, shares));
    }

    private Optional<Level> level(Section section, Blanks.Person who, Optional<Integer> average) {
        if (section.has(BowlerKeys.LEVEL)) {
            return section.oneOf(BowlerKeys.LEVEL, names.levels());
        }
        if (average.isPresent()) {
            blanks.addByAverage();
            return average.map(limits::of);
        }
        if (!blanks.shares().levels().kinds().isEmpty()) {
            return Optional.of(blanks.draw(who, blanks.shares().levels()));
        }
        if (!section.has(BowlerKeys.AVERAGE)) {
            noLevel(section);
        }
        return Optional.empty();
    }

    private static void noLevel(Section section) {
        section.notices()
                .add(
                        NoticeCode.MISSING_KEY,
                        section.place(),
                        section.pathOf(BowlerKeys.LEVEL),
                        "",
                        section.path()
                                + " has no `level` and no `average`; one of them must tell how good the bowler is."
                                + " Add his average, or a level such as " + BowlerKeys.LEVEL.typical()
                                + "; or give `levels` under `field` beside the entries, to have levels drawn.");
    }

    private static void twice(Value id) {
        id.refuse(
                NoticeCode.DUPLICATE_NAME,
                ", the name of an earlier entry; each bowler must have a name alone in the event. Add an initial or a"
                        + " number.");
    }
}
