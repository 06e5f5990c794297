package lanetide.cli.simulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.words.UnknownWords;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.oilflow.film.OilAccount;
import lanetide.squads.model.Event;
import lanetide.squads.result.WaitCause;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.TimeSpread;
import lanetide.squads.study.TimetableStatistics;

/** Tables about a whole event, as text answers and pages show them: rows of cells, the first of them the head. */
public final class StudyTables {
    /** Relative error up to which the oil account counts as closed. */
    private static final double CLOSED = 1e-9;

    /** What the columns of {@link #pace} mean. */
    public static final String PACE_WORDS =
            "A lane stands still for a neighbour on the approach (lane courtesy); for a partner who still bowls on the other"
                    + " lane of the pair; for the group or the squad before that is still there; for a fault; for lane"
                    + " machines. Only causes that occurred are shown.";

    private StudyTables() {}

    /** What happens when: mean times and, for several playings, between which nine of ten lie. */
    public static List<List<String>> timetable(StudyResult study) {
        boolean several = study.replications() > 1;
        List<String> head = several
                ? List.of("Squad", "What", "From", "between", "To", "between")
                : List.of("Squad", "What", "From", "To");
        return Table.rows(head, study.timetable(), entry -> {
            List<String> row = new ArrayList<>(List.of(entry.squad(), what(entry)));
            row.addAll(several ? spread(entry.start()) : mean(entry.start()));
            row.addAll(several ? spread(entry.end()) : mean(entry.end()));
            return row;
        });
    }

    private static List<String> mean(TimeSpread time) {
        return List.of(TimeOfDay.write(time.meanMs()));
    }

    /** A dash where the time is sure to the minute. */
    private static List<String> spread(TimeSpread time) {
        String low = TimeOfDay.write(time.lowMs());
        String high = TimeOfDay.write(time.highMs());
        return List.of(TimeOfDay.write(time.meanMs()), low.equals(high) ? "-" : low + " and " + high);
    }

    /** How fast squads bowl, and how long lanes stood still for each cause that occurred. */
    public static List<List<String>> pace(StudyResult study) {
        List<WaitCause> causes = Arrays.stream(WaitCause.values())
                .filter(cause -> study.squads().stream()
                        .anyMatch(squad -> squad.pace().waitedMs().containsKey(cause)))
                .toList();
        List<String> head = new ArrayList<>(List.of("Squad", "Pace"));
        causes.forEach(cause -> head.add(ConstantName.of(cause).replace('_', ' ')));
        return Table.rows(head, study.squads(), squad -> {
            List<String> row = new ArrayList<>(
                    List.of(squad.squad(), Figures.fixed(squad.pace().minutesPerBowlerGame(), 2)));
            causes.forEach(cause -> row.add(Figures.fixed(squad.pace().minutesWaited(cause), 2)));
            return row;
        });
    }

    /** When a squad is done over all playings, in a sentence. */
    public static String ends(SquadStatistics squad) {
        return "Squad " + squad.squad() + " was done " + when(squad) + " in all playings.";
    }

    /** When all squads were done, in one sentence. */
    public static String allEnds(StudyResult study) {
        if (study.squads().size() == 1) {
            return ends(study.squads().get(0));
        }
        String squads = study.squads().stream()
                .map(squad -> squad.squad() + " " + when(squad))
                .collect(Collectors.joining("; "));
        return "Squads were done in all playings: " + squads + ".";
    }

    private static String when(SquadStatistics squad) {
        String earliest = TimeOfDay.write(squad.earliestEndMs());
        String latest = TimeOfDay.write(squad.latestEndMs());
        return earliest.equals(latest) ? "at " + earliest : "between " + earliest + " and " + latest;
    }

    /** What squads score. */
    public static List<List<String>> scores(StudyResult study, Event event) {
        boolean oneSet = study.sets() == 1;
        return Table.rows(
                oneSet
                        ? List.of("Squad", "Mean", "95 % interval")
                        : List.of(
                                "Squad", "Mean", "95 % interval", "luck alone", UnknownWords.values(event) + ", once"),
                study.squads(),
                squad -> {
                    List<String> row = new ArrayList<>(List.of(
                            squad.squad(),
                            Figures.fixed(squad.meanScore(), 1),
                            squad.meanScoreCi95().map(StudyTables::words).orElse("not known from one playing")));
                    if (!oneSet) {
                        row.add(squad.luckCi95().map(StudyTables::words).orElseThrow());
                        row.add(Figures.fixed(usual(study, squad.squad()), 1));
                    }
                    return row;
                });
    }

    /** What a squad scores in the playing with the usual values. */
    private static double usual(StudyResult study, String squad) {
        return study.first().squads().stream()
                .filter(one -> one.squad().equals(squad))
                .findFirst()
                .orElseThrow()
                .meanScore();
    }

    /** Where the oil went. */
    public static List<List<String>> oil(OilAccount oil) {
        return List.of(
                List.of("", "mL", "share"),
                entry("laid by the lane machines", oil.appliedMl(), oil),
                entry("still on the lanes", oil.onLanesMl(), oil),
                entry("wiped off balls", oil.wipedMl(), oil),
                entry("taken in by ball covers", oil.absorbedMl(), oil),
                entry("on balls", oil.onBallsMl(), oil),
                entry("cleaned off the lanes", oil.strippedMl(), oil));
    }

    /** Whether the oil account closes, in a sentence. */
    public static String oilCloses(OilAccount oil) {
        return oil.relativeError() <= CLOSED
                ? "Every millilitre laid is found again, to one part in a thousand million."
                : "Of what was laid, " + Figures.plain(100 * oil.relativeError(), 9)
                        + " % is not found again: do not rely on this answer, and please report it.";
    }

    /** What an entry of the timetable is called. */
    static String what(TimetableStatistics entry) {
        return switch (entry.what()) {
            case CONDITIONING -> "lanes made ready";
            case PRACTICE -> "practice";
            case GAME -> "game " + entry.game();
            case BREAK -> "break " + entry.game();
        };
    }

    private static String words(ConfidenceInterval interval) {
        return Figures.fixed(interval.low(), 1) + " to " + Figures.fixed(interval.high(), 1);
    }

    private static List<String> entry(String what, double ml, OilAccount oil) {
        return List.of(what, Figures.fixed(ml, 1), Figures.fixed(100 * ml / oil.appliedMl(), 1) + " %");
    }
}
