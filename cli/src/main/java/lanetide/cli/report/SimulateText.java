package lanetide.cli.report;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.TimeOfDay;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.oilflow.film.OilAccount;
import lanetide.squads.play.SquadStatistics;
import lanetide.squads.play.StudyResult;
import lanetide.squads.play.TimetableEntry;

/** What {@code simulate} answers, for people: a page that can be read aloud from top to bottom. */
public final class SimulateText {
    /** Relative error up to which the oil account counts as closed. */
    private static final double CLOSED = 1e-9;

    private final Scenario scenario;
    private final StudyResult study;
    private final LaneChoice choice;
    private final OilUnits units;
    private final Page page = new Page();

    private SimulateText(Scenario scenario, StudyResult study, LaneChoice choice, boolean metric) {
        this.scenario = scenario;
        this.study = study;
        this.choice = choice;
        this.units = new OilUnits(metric);
    }

    /**
     * Writes the answer.
     *
     * @param scenario what was played
     * @param study what came of it
     * @param choice which lanes to show one by one
     * @param metric whether lengths of oil are written in micrometres instead of units of oil
     * @return the page
     */
    public static String write(Scenario scenario, StudyResult study, LaneChoice choice, boolean metric) {
        return new SimulateText(scenario, study, choice, metric).write();
    }

    private String write() {
        String playings = study.replications() == 1 ? "one playing" : study.replications() + " playings";
        page.line(scenario.event().name());
        page.line("What to expect, estimated from " + playings + " of the event with seed " + scenario.seed() + ".");
        timetable();
        scores();
        new LanesText(page, study.first().lanes(), units, scenario.event().pattern()).add(choice);
        oil();
        ScenarioSummary.assumptions(page, scenario.assumptions());
        page.heading("Please keep in mind");
        Cautions.ALL.forEach(page::item);
        return page.text();
    }

    private void timetable() {
        page.heading("Timetable" + (study.replications() == 1 ? "" : " (first playing)"));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Squad", "What", "From", "To"));
        for (TimetableEntry entry : study.first().timetable()) {
            rows.add(List.of(
                    entry.squad(), what(entry), TimeOfDay.write(entry.startMs()), TimeOfDay.write(entry.endMs())));
        }
        page.table(rows, 4);
        if (study.replications() > 1) {
            study.squads().forEach(this::ends);
        }
    }

    private void ends(SquadStatistics squad) {
        String earliest = TimeOfDay.write(squad.earliestEndMs());
        String latest = TimeOfDay.write(squad.latestEndMs());
        page.paragraph("Squad " + squad.squad() + " was done "
                + (earliest.equals(latest) ? "at " + earliest : "between " + earliest + " and " + latest)
                + " in all playings.");
    }

    private static String what(TimetableEntry entry) {
        return switch (entry.what()) {
            case CONDITIONING -> "lanes made ready";
            case PRACTICE -> "practice";
            case GAME -> "game " + entry.game();
        };
    }

    private void scores() {
        page.heading("Scores (pins a game, mean over all bowlers)");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Squad", "Mean", "95 % interval"));
        for (SquadStatistics squad : study.squads()) {
            rows.add(List.of(
                    squad.squad(),
                    Figures.fixed(squad.meanScore(), 1),
                    squad.meanScoreCi95().map(SimulateText::words).orElse("not known from one playing")));
        }
        page.table(rows, 3);
        study.squads().forEach(this::byGame);
        if (study.replications() > 1) {
            page.paragraph("The interval covers the luck of play by these bowlers, not the choice of the bowlers.");
        }
    }

    private void byGame(SquadStatistics squad) {
        List<String> means =
                squad.meanByGame().stream().map(mean -> Figures.fixed(mean, 0)).toList();
        page.paragraph("Squad " + squad.squad() + " by game: " + String.join(" ", means) + ".");
    }

    private static String words(ConfidenceInterval interval) {
        return Figures.fixed(interval.low(), 1) + " to " + Figures.fixed(interval.high(), 1);
    }

    private void oil() {
        OilAccount oil = study.first().oil();
        page.heading("Where the oil went" + (study.replications() == 1 ? "" : " (first playing)"));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "mL", "share"));
        entry(rows, "laid by the lane machines", oil.appliedMl(), oil);
        entry(rows, "still on the lanes", oil.onLanesMl(), oil);
        entry(rows, "wiped off balls", oil.wipedMl(), oil);
        entry(rows, "taken in by ball covers", oil.absorbedMl(), oil);
        entry(rows, "on balls", oil.onBallsMl(), oil);
        entry(rows, "cleaned off the lanes", oil.strippedMl(), oil);
        page.table(rows, 1);
        page.paragraph(
                oil.relativeError() <= CLOSED
                        ? "Every millilitre laid is found again, to one part in a thousand million."
                        : "Of what was laid, " + Figures.plain(100 * oil.relativeError(), 9)
                                + " % is not found again: do not rely on this answer, and please report it.");
    }

    private static void entry(List<List<String>> rows, String what, double ml, OilAccount oil) {
        rows.add(List.of(what, Figures.fixed(ml, 1), Figures.fixed(100 * ml / oil.appliedMl(), 1) + " %"));
    }
}
