package lanetide.cli.sheets;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.preview.GameForecast;
import lanetide.cli.preview.Seating;
import lanetide.cli.report.Cautions;
import lanetide.cli.report.Figures;
import lanetide.cli.report.MadeFrom;
import lanetide.cli.report.ProgramFiles;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.model.Event;
import lanetide.squads.study.StudyResult;

/** All that is printed and handed out, by the name of its file. */
public final class Sheets {
    private static final String ASSIGNMENTS = "assignments.html";
    private static final String OILING = "oiling.html";
    private static final String CARDS = "cards.html";
    private static final String TABLE = "assignments.csv";
    /** Margins of a page (12 mm each) and the head of its first one (mm). */
    private static final double HEAD_MM = 42;

    private static final String CALENDAR = "calendar.ics";

    private final Scenario scenario;
    private final Paper paper;
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

    private Sheets(Scenario scenario, Paper paper) {
        this.scenario = scenario;
        this.paper = paper;
    }

    /**
     * What the files will be called, in the order in which they are written.
     *
     * @param calendar whether a calendar is among them
     * @return the names
     */
    public static List<String> names(boolean calendar) {
        List<String> always = List.of(ASSIGNMENTS, OILING, CARDS, TABLE);
        return calendar ? Stream.concat(always.stream(), Stream.of(CALENDAR)).toList() : always;
    }

    /**
     * Writes the sheets.
     *
     * @param scenario the scenario
     * @param study what came of playing it
     * @param starts where each bowler starts in each of his games
     * @param paper the paper they are printed on
     * @param firstDay date of the event's first day, for the calendar; empty for none
     * @return contents by file name
     */
    public static Map<String, String> write(
            Scenario scenario,
            StudyResult study,
            Map<Seating, List<GameForecast>> starts,
            Paper paper,
            Optional<LocalDate> firstDay) {
        Sheets sheets = new Sheets(scenario, paper);
        Map<String, String> files = new LinkedHashMap<>();
        Event event = scenario.event();
        List<SheetModel.Part> assignments = Stream.concat(
                        Assignments.parts(event, scenario.waiting()).stream(),
                        FinalsSheet.parts(scenario.withFinals()).stream())
                .toList();
        files.put(ASSIGNMENTS, sheets.html("sheet.jte", "Lane assignments", assignments, ""));
        files.put(
                OILING,
                sheets.html(
                        "sheet.jte",
                        "Oiling plan",
                        new OilingPlan(FinalsSheet.withOiling(scenario.withFinals())).parts(),
                        ""));
        files.put(
                CARDS,
                sheets.html(
                        "cards.jte",
                        "Cards",
                        new Cards(event, scenario.drawn(), starts, study.timetable()).parts(),
                        sheets.cardHeight()));
        files.put(TABLE, AssignmentsCsv.write(scenario.event(), scenario.drawn()));
        firstDay.ifPresent(day -> files.put(CALENDAR, EventCalendar.write(scenario, study, day)));
        return files;
    }

    /** How high a card is, as a style sheet has it: that of the squad with most games. */
    private String cardHeight() {
        Event event = scenario.event();
        int games = IntStream.range(0, event.squads().size())
                .map(event::games)
                .max()
                .orElseThrow();
        return ":root { --card: " + Figures.fixed(Cards.heightMm(games, paper.heightMm() - HEAD_MM), 1) + "mm; }\n";
    }

    private String html(String template, String title, List<SheetModel.Part> parts, String style) {
        List<String> footer = new ArrayList<>(Cautions.ALL);
        scenario.changes().forEach(words -> footer.add("Changed on the day: " + words));
        footer.add(MadeFrom.of(scenario));
        StringOutput html = new StringOutput();
        engine.render(
                template,
                new SheetModel(
                        title,
                        scenario.event().name(),
                        "@page { size: " + paper + "; } " + style + ProgramFiles.text("/lanetide/cli/sheets/sheet.css"),
                        scenario.doubts(),
                        parts,
                        footer),
                html);
        return html.toString();
    }
}
