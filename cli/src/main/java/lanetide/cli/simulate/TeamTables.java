package lanetide.cli.simulate;

import java.util.Comparator;
import java.util.List;
import lanetide.cli.report.CsvColumns;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.TeamStatistics;

/** How doubles, trios and teams stand, in words and tables. */
public final class TeamTables {
    /** What the table is about. */
    public static final String HEADING = "Teams (pins of all their games together; the best place first)";

    private TeamTables() {}

    /**
     * What counts, in a sentence.
     *
     * @param event the event
     * @return the sentence
     */
    public static String rule(Event event) {
        boolean handicap = event.cut().map(Cut::withHandicap).orElse(true)
                && event.squads().stream()
                        .flatMap(squad -> squad.everybody().stream())
                        .anyMatch(bowler -> bowler.handicapPins() > 0);
        boolean sum =
                event.cut().map(Cut::counting).filter(Counting.SUM::equals).isPresent();
        return "The pins of partners are added game by game, " + (handicap ? "with" : "without")
                + " handicap; of a team that is entered in several squads "
                + (sum ? "all count." : "the best squad counts.");
    }

    /**
     * The standing, with a head.
     *
     * @param study what came of the event
     * @param most how many teams to list
     * @return the rows, the best mean place first
     */
    public static List<List<String>> standing(StudyResult study, int most) {
        return Table.rows(
                List.of("Team", "bowlers", "total", "95 % interval", "place", "first in 100", "95 % interval"),
                inOrder(study).stream().limit(most).toList(),
                team -> List.of(
                        team.name(),
                        String.valueOf(team.bowlers()),
                        Figures.fixed(team.totalPins(), 0),
                        team.totalCi95()
                                .map(interval -> Figures.interval(interval, 0))
                                .orElse("-"),
                        Figures.fixed(team.place(), 1),
                        Figures.fixed(100 * team.firstShare(), 1),
                        team.firstCi95()
                                .map(interval -> Figures.fixed(100 * interval.low(), 1) + " to "
                                        + Figures.fixed(100 * interval.high(), 1))
                                .orElse("-")));
    }

    /**
     * The standing as a table for programs: one row for each team.
     *
     * @param study what came of the event
     * @return the table with its head
     */
    public static String csv(StudyResult study) {
        return new CsvColumns<TeamStatistics>()
                .add("team", TeamStatistics::name)
                .add("bowlers", TeamStatistics::bowlers)
                .add("totalPins", TeamStatistics::totalPins, 2)
                .add("place", TeamStatistics::place, 2)
                .add("firstShare", TeamStatistics::firstShare, 4)
                .table(inOrder(study));
    }

    private static List<TeamStatistics> inOrder(StudyResult study) {
        return study.teams().stream()
                .sorted(Comparator.comparingDouble(TeamStatistics::place))
                .toList();
    }
}
