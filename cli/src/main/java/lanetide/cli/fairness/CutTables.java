package lanetide.cli.fairness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.cli.words.CutWords;
import lanetide.cli.words.UnknownWords;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.model.Event;
import lanetide.squads.qualifying.CutChances;
import lanetide.squads.qualifying.CutChances.Found;
import lanetide.squads.qualifying.CutChances.InSquad;
import lanetide.squads.qualifying.CutChances.OfLevel;

/** What a cut does to whom, in words and tables; chances are told in a hundred playings. */
public final class CutTables {
    /** What stands over it. */
    public static final String HEADING = "The cut: what a place in a squad does to the chance to go on";

    /** What the second table has. */
    public static final String CAPTION =
            "In a hundred playings more than the same bowler on his mean over the squads, with the same luck";

    /** What is said where late changes let a squad go on in two parts. */
    static final String IN_PARTS =
            "Not told: a squad goes on in two parts after the change, and totals by squad are no totals of people.";

    private static final String ALL = "all";
    private static final String AGAIN = "entered again";

    private CutTables() {}

    /** The rule, the expected score and what the squad costs that costs most. */
    public static List<String> sentences(CutChances cut, Event event) {
        List<String> sentences = new ArrayList<>();
        sentences.add(CutWords.rule(cut.cut(), event) + ".");
        sentences.add("The last who goes on is expected to have "
                + Figures.fixed(cut.score().value(), 0)
                + " pins, 90 % interval " + Figures.interval(cut.score().ci90(), 0) + ", luck alone "
                + Figures.interval(cut.score().luck90(), 0) + "." + more(cut));
        worst(cut).ifPresent(sentences::add);
        cut.again()
                .ifPresent(again -> sentences.add("Who is entered more than once goes on in "
                        + inHundred(again.chance().value()) + " of a hundred playings, "
                        + Figures.fixed(100 * again.worth().value(), 1)
                        + " more than with one of his entries alone (90 % interval of the difference "
                        + signed(again.worth().ci90()) + ")."));
        return sentences;
    }

    private static String more(CutChances cut) {
        return cut.goingOn() > cut.places()
                ? " As all who tie go on, it is " + Figures.fixed(cut.goingOn(), 1) + " on the mean."
                : "";
    }

    private static Optional<String> worst(CutChances cut) {
        if (cut.levels().isEmpty()) {
            return Optional.empty();
        }
        OfLevel all = cut.levels().get(0);
        return all.squads().stream()
                .min(Comparator.comparingDouble(squad -> squad.more().value()))
                .filter(squad -> squad.more().value() < 0)
                .map(squad -> "Placed in squad " + squad.squad() + " a bowler goes on in "
                        + inHundred(there(all, squad)) + " of a hundred playings, "
                        + Figures.fixed(-100 * squad.more().value(), 1)
                        + " fewer than on his mean over the squads (90 % interval of the difference "
                        + signed(squad.more().ci90()) + ").");
    }

    /** The chance of a level in a squad. */
    static double there(OfLevel level, InSquad squad) {
        return level.chance().value() + squad.more().value();
    }

    /** What a level is called in a table. */
    static String name(OfLevel level) {
        return level.level().orElse(ALL);
    }

    /** The chances by level, with a head. */
    public static List<List<String>> levels(CutChances cut) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("level", "people", "go on in 100", "90 % interval", "luck alone"));
        cut.levels().forEach(level -> rows.add(row(name(level), level.people(), level.chance())));
        cut.again().ifPresent(again -> rows.add(row(AGAIN, again.people(), again.chance())));
        return rows;
    }

    private static List<String> row(String name, int people, Found chance) {
        return List.of(
                name,
                String.valueOf(people),
                inHundred(chance.value()),
                Figures.fixed(100 * chance.ci90().low(), 1) + " to "
                        + Figures.fixed(100 * chance.ci90().high(), 1),
                Figures.fixed(100 * chance.luck90().low(), 1) + " to "
                        + Figures.fixed(100 * chance.luck90().high(), 1));
    }

    private record Row(OfLevel level, InSquad squad) {}

    /** What each squad is worth to whom, with a head; the head alone for a single squad. */
    public static List<List<String>> squads(CutChances cut) {
        List<Row> rows = cut.levels().stream()
                .flatMap(level -> level.squads().stream().map(squad -> new Row(level, squad)))
                .toList();
        return Table.rows(
                List.of("level", "squad", "go on in 100", "more", "90 % interval", "luck alone", "same sign in"),
                rows,
                row -> List.of(
                        name(row.level()),
                        row.squad().squad(),
                        inHundred(there(row.level(), row.squad())),
                        Figures.signed(100 * row.squad().more().value(), 1),
                        signed(row.squad().more().ci90()),
                        signed(row.squad().more().luck90()),
                        UnknownWords.share(row.squad().more().signShare())));
    }

    private static String inHundred(double chance) {
        return Figures.fixed(100 * chance, 1);
    }

    private static String signed(ConfidenceInterval interval) {
        return Figures.signed(100 * interval.low(), 1) + " to " + Figures.signed(100 * interval.high(), 1);
    }
}
