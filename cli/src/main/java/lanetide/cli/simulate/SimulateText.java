package lanetide.cli.simulate;

import java.util.Comparator;
import java.util.List;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.OilUnits;
import lanetide.cli.report.Page;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.words.UnknownWords;
import lanetide.oilflow.film.OilAccount;
import lanetide.squads.result.LaneStop;
import lanetide.squads.study.CutStatistics;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;

/** What {@code simulate} answers, for people: a page that can be read aloud from top to bottom. */
public final class SimulateText {
    /** Stops of lanes that a page lists. */
    private static final int MAX_STOPS = 20;

    /** Teams that a page lists. */
    private static final int MAX_TEAMS = 20;

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
        pace();
        stops();
        scores();
        study.cut().ifPresent(this::cut);
        teams();
        new LanesText(page, study, units, scenario.event()).add(choice);
        oil();
        Ending.add(page, scenario, scenario.assumptions());
        return page.text();
    }

    private void timetable() {
        boolean several = study.replications() > 1;
        page.heading("Timetable" + (several ? " (means; in nine playings of ten between)" : ""));
        page.table(StudyTables.timetable(study), 6);
        if (several) {
            study.squads().forEach(squad -> page.paragraph(StudyTables.ends(squad)));
        }
    }

    private void stops() {
        List<LaneStop> all = study.first().stops();
        if (all.isEmpty()) {
            return;
        }
        page.heading("Lanes out of order"
                + (study.replications() == 1 ? "" : " (" + UnknownWords.example(study.sets(), scenario.event()) + ")"));
        List<LaneStop> shown = all.stream()
                .sorted(Comparator.comparingLong(LaneStop::startMs))
                .limit(MAX_STOPS)
                .toList();
        page.table(
                Table.rows(
                        List.of("Lane", "What", "From", "To"),
                        shown,
                        stop -> List.of(
                                String.valueOf(stop.lane()),
                                ConstantName.of(stop.kind()),
                                TimeOfDay.write(stop.startMs()),
                                TimeOfDay.write(stop.endMs()))),
                4);
        if (all.size() > MAX_STOPS) {
            page.paragraph("And " + (all.size() - MAX_STOPS) + " more; --format json lists them all.");
        }
    }

    private void pace() {
        page.heading("Pace (minutes of a pair for one game of one bowler), and what of it lanes stood still");
        page.table(StudyTables.pace(study), 1);
        page.paragraph(StudyTables.PACE_WORDS);
    }

    private void scores() {
        page.heading("Scores (pins a game, mean over all bowlers)");
        page.table(StudyTables.scores(study, scenario.event()), 3);
        study.squads().forEach(this::byGame);
        study.first()
                .squads()
                .forEach(squad -> page.paragraph(BowlerResults.words(squad, study.sets(), scenario.event())));
        study.precision()
                .ifPresent(precision -> page.paragraph(
                        precision.met() ? PrecisionWords.reached(precision) : PrecisionWords.notReached(precision)));
        if (study.replications() > 1) {
            page.paragraph(UnknownWords.intervals(study.sets(), scenario.event()));
        }
    }

    private void cut(CutStatistics cut) {
        page.heading("The cut" + (cut.seeds().isEmpty() ? "" : " and the finals"));
        CutOutcome.sentences(cut, scenario.withFinals()).forEach(page::item);
        if (!cut.seeds().isEmpty()) {
            page.table(CutOutcome.seeds(cut), 1);
        }
    }

    private void teams() {
        if (study.teams().isEmpty()) {
            return;
        }
        page.heading(TeamTables.HEADING);
        page.paragraph(TeamTables.rule(scenario.event()));
        page.table(TeamTables.standing(study, MAX_TEAMS), 1);
        if (study.teams().size() > MAX_TEAMS) {
            page.paragraph("And " + (study.teams().size() - MAX_TEAMS) + " more; --format json lists them all.");
        }
    }

    private void byGame(SquadStatistics squad) {
        List<String> means =
                squad.meanByGame().stream().map(mean -> Figures.fixed(mean, 0)).toList();
        page.paragraph("Squad " + squad.squad() + " by game: " + String.join(" ", means) + ".");
    }

    private void oil() {
        OilAccount oil = study.first().oil();
        page.heading("Where the oil went"
                + (study.replications() == 1 ? "" : " (" + UnknownWords.example(study.sets(), scenario.event()) + ")"));
        page.table(StudyTables.oil(oil), 1);
        page.paragraph(StudyTables.oilCloses(oil));
    }
}
