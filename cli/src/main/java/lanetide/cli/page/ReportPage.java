package lanetide.cli.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.cli.fairness.FairnessJson;
import lanetide.cli.reoil.ReoilJson;
import lanetide.cli.report.Cautions;
import lanetide.cli.report.Figures;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.report.OilUnits;
import lanetide.cli.report.PatternWords;
import lanetide.cli.report.ProgramFiles;
import lanetide.cli.report.ProgramVersion;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.simulate.LaneChanges;
import lanetide.cli.simulate.LaneTables;
import lanetide.cli.simulate.SimulateJson;
import lanetide.cli.simulate.SquadLanes;
import lanetide.cli.simulate.StudyTables;
import lanetide.cli.simulate.TeamTables;
import lanetide.cli.simulate.WindowMoves;
import lanetide.cli.words.LaidWords;
import lanetide.cli.words.UnknownWords;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;

/**
 * The whole answer as one page for a browser, which needs nothing else: it can be sent, opened from a mail and printed.
 */
public final class ReportPage {
    private final Reading reading;
    private final Scenario scenario;
    private final PageAnswers answers;
    private final StudyResult study;
    private final List<SquadLanes> squads;
    private final FilmReel reel;
    private final OilUnits units;
    private final List<PageModel.SquadLinks> bowlers;

    private ReportPage(
            Reading reading, PageAnswers answers, FilmReel reel, boolean metric, List<PageModel.SquadLinks> bowlers) {
        this.bowlers = bowlers;
        this.reading = reading;
        this.scenario = reading.scenario().orElseThrow();
        this.answers = answers;
        this.study = answers.study();
        this.squads = SquadLanes.of(study.first().lanes());
        this.reel = reel;
        this.units = new OilUnits(metric);
    }

    /**
     * Writes the page.
     *
     * @param reading the scenario as it was read, without errors
     * @param answers what came of studying it
     * @param reel the lanes of its first playing
     * @param metric whether film is written in micrometres instead of units of oil
     * @param bowlers the pages of the bowlers that lie beside it; empty if there are none
     * @return HTML
     */
    public static String write(
            Reading reading, PageAnswers answers, FilmReel reel, boolean metric, List<PageModel.SquadLinks> bowlers) {
        StringOutput html = new StringOutput(1 << 20);
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render("report.jte", new ReportPage(reading, answers, reel, metric, bowlers).model(), html);
        return html.toString();
    }

    private PageModel model() {
        return new PageModel(
                scenario.event().name(),
                subtitle(),
                new InShort(answers, squads).lines(),
                verdict(),
                timetable(),
                answers.fairness().map(fairness -> new FairnessSection(scenario, fairness).section()),
                answers.reoil().map(ReoilSection::of),
                scores(),
                lane(),
                windows(),
                RotationSection.of(scenario),
                bowlers,
                basis(),
                assets());
    }

    private String subtitle() {
        return "What to expect, estimated from " + playings() + " of the event with seed " + scenario.seed() + ".";
    }

    private String playings() {
        return study.replications() == 1 ? "one playing" : study.replications() + " playings";
    }

    /** What a reader in a hurry must know; all of it is told in full further down. */
    private List<String> verdict() {
        List<String> sentences = new ArrayList<>(scenario.doubts());
        answers.fairness().ifPresent(fairness -> sentences.addAll(new FairnessSection(scenario, fairness).inShort()));
        answers.reoil().map(ReoilSection::of).ifPresent(reoil -> sentences.add(reoil.recommendation()));
        scenario.event().patterns().forEach(pattern -> sentences.add(PatternWords.named(pattern, units.metric())));
        sentences.addAll(LaidWords.laid(scenario.event()));
        sentences.addAll(LaidWords.lanes(scenario.event()));
        if (study.replications() > 1) {
            sentences.add(StudyTables.allEnds(study));
        }
        LaneChanges changes = new LaneChanges(squads, units);
        sentences.addAll(changes.sentences(changes.mostWorn()));
        return sentences;
    }

    private PageModel.Timetable timetable() {
        List<List<String>> all = StudyTables.timetable(study);
        List<Table> tables = new ArrayList<>();
        for (SquadStatistics squad : study.squads()) {
            List<List<String>> rows = new ArrayList<>(List.of(all.get(0)));
            all.stream().skip(1).filter(row -> row.get(0).equals(squad.squad())).forEach(rows::add);
            tables.add(Table.of(
                    "timetable-" + (tables.size() + 1),
                    "Squad " + squad.squad()
                            + (study.replications() == 1
                                    ? ""
                                    : ": means, and between which times in nine playings of ten"),
                    rows.stream().map(row -> row.subList(1, row.size())).toList(),
                    all.get(0).size() - 1));
        }
        return new PageModel.Timetable(
                tables,
                study.replications() == 1
                        ? List.of()
                        : study.squads().stream().map(StudyTables::ends).toList());
    }

    private PageModel.Scores scores() {
        return new PageModel.Scores(
                Table.of(
                        "scores",
                        "Pins a game, mean over all bowlers of a squad",
                        StudyTables.scores(study, scenario.event()),
                        1),
                Table.of("scores-by-game", "Pins, mean over all bowlers, game by game", scoresByGame(), 1),
                study.replications() > 1
                        ? UnknownWords.intervals(study.sets(), scenario.event())
                        : "One playing tells nothing of the luck of play; ask for more with --replications.",
                study.teams().isEmpty()
                        ? Optional.empty()
                        : Optional.of(Table.of(
                                "teams",
                                TeamTables.HEADING + ". " + TeamTables.rule(scenario.event()),
                                TeamTables.standing(study, Integer.MAX_VALUE),
                                1)));
    }

    private List<List<String>> scoresByGame() {
        int games = study.squads().stream()
                .mapToInt(squad -> squad.meanByGame().size())
                .max()
                .orElse(0);
        return Table.rows(
                Table.row("Game", study.squads(), squad -> "Squad " + squad.squad()),
                IntStream.range(0, games).boxed().toList(),
                game -> Table.row(String.valueOf(game + 1), study.squads(), squad -> meanIn(squad, game)));
    }

    private static String meanIn(SquadStatistics squad, int game) {
        return game < squad.meanByGame().size()
                ? Figures.fixed(squad.meanByGame().get(game), 1)
                : "";
    }

    private PageModel.Lane lane() {
        return new PageModel.Lane(Table.of(
                "lane-by-lane",
                "Every lane when each squad has left: oil on it (mL), oil left on the most worn board of the heads ("
                        + units.name() + "), oil past the end of the pattern (mL)",
                new LaneTables(units).laneByLane(squads),
                1));
    }

    private PageModel.Windows windows() {
        List<PageModel.SquadWindows> all = new ArrayList<>();
        for (int i = 0; i < squads.size(); i++) {
            SquadLanes squad = squads.get(i);
            all.add(new PageModel.SquadWindows(
                    squad.squad(),
                    new LaneChanges(squads, units).sentences(squad),
                    Table.of(
                            "oil-" + (i + 1),
                            "Squad " + squad.squad()
                                    + ": oil by game, means over its lanes; heads and most worn board in "
                                    + units.name(),
                            new LaneTables(units).oil(squad),
                            1),
                    Table.of(
                            "windows-" + (i + 1),
                            "Squad " + squad.squad()
                                    + ": exit windows by game, from the outer to the inner board,"
                                    + " the middle value over its lanes",
                            LaneTables.windows(squad, squad.games()),
                            1)));
        }
        List<List<String>> moves = WindowMoves.rows(study);
        return new PageModel.Windows(
                all,
                moves.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Table.of("line-moves", WindowMoves.HEADING, moves, 2)));
    }

    private PageModel.Grounds basis() {
        List<List<String>> assumptions = Table.rows(
                List.of("What", "Value", "Source"),
                scenario.assumptions(),
                taken -> List.of(taken.name(), taken.value(), taken.source()));
        List<List<String>> marks = new ArrayList<>();
        marks.add(List.of("Mark", "Value"));
        marks.add(List.of("Program", "Lanetide " + ProgramVersion.text()));
        marks.add(List.of("Scenario", scenario.fileName()));
        marks.add(List.of("SHA-256 of the scenario", scenario.sha256()));
        reading.namedFiles().forEach((file, hash) -> marks.add(List.of("SHA-256 of " + file, hash)));
        marks.add(List.of("Seed", String.valueOf(scenario.seed())));
        marks.add(List.of("Playings", String.valueOf(study.replications())));
        return new PageModel.Grounds(
                Table.of("assumptions", "Values the scenario does not state", assumptions, 3),
                Table.of(
                        "oil-account",
                        "Where the oil went (" + UnknownWords.example(study.sets(), scenario.event()) + ")",
                        StudyTables.oil(study.first().oil()),
                        1),
                Table.of("marks", "What this page was made from", marks, 2),
                Cautions.ALL);
    }

    private PageModel.Assets assets() {
        return new PageModel.Assets(
                ProgramFiles.text("/lanetide/cli/page/page.css"),
                charts(),
                ProgramFiles.text("/lanetide/cli/page/charts.js")
                        + ProgramFiles.text("/lanetide/cli/page/save.js")
                        + ProgramFiles.text("/lanetide/cli/page/lane.js"),
                JsonAnswer.inPage(SimulateJson.tree(reading, study)),
                answers.fairness()
                        .map(fairness -> JsonAnswer.inPage(FairnessJson.tree(reading, fairness)))
                        .orElse("null"),
                answers.reoil()
                        .map(reoil -> JsonAnswer.inPage(ReoilJson.tree(reading, reoil)))
                        .orElse("null"),
                JsonAnswer.inPage(PageData.tree(scenario, study, reel, units)));
    }

    /** The chart library (d3), as its WebJar has it, after its licence, which must go wherever it goes. */
    private static String charts() {
        String jar = "/META-INF/resources/webjars/d3/" + ProgramVersion.of("d3");
        return "/*\n" + ProgramFiles.text(jar + "/LICENSE") + "*/\n" + ProgramFiles.text(jar + "/dist/d3.min.js");
    }
}
