package lanetide.cli.lines;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.LengthRule;
import lanetide.cli.report.Page;
import lanetide.cli.report.PatternWords;
import lanetide.cli.report.Table;
import lanetide.cli.report.WindowWords;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.PlayedLine;

/** What {@code lines} answers, for people: a page a coach can read aloud from top to bottom. */
public final class LinesText {
    private final Scenario scenario;
    private final List<StartLine> lines;
    private final KindLabels labels;
    private final boolean metric;
    private final Page page = new Page();

    private LinesText(Scenario scenario, List<StartLine> lines, boolean metric) {
        this.scenario = scenario;
        this.lines = lines;
        this.labels = new KindLabels(lines);
        this.metric = metric;
    }

    /**
     * Writes the answer.
     *
     * @param scenario the scenario
     * @param lines the lines
     * @param metric whether distances are written in metres instead of feet
     * @return the page
     */
    public static String write(Scenario scenario, List<StartLine> lines, boolean metric) {
        return new LinesText(scenario, lines, metric).write();
    }

    private String write() {
        page.line(scenario.event().name());
        page.line("Where each style starts on the fresh pattern.");
        page.item(PatternWords.named(scenario.event().pattern(), metric) + rule());
        page.item(
                "Boards are counted from the bowler's own gutter; laydown and arrows are where the ball is, not the feet.");
        players();
        labels.surfaces().forEach(this::natural);
        free();
        otherTracks();
        LinesWords words = new LinesWords(labels);
        section("What differs between the surfaces", words.surfaces());
        section("What differs between the balls", words.comparedBalls());
        section("Worth a look", words.remarks());
        section("Another ball", words.balls());
        howToRead();
        Ending.add(page, scenario, LinesAssumptions.of(scenario, lines));
        return page.text();
    }

    private String rule() {
        OptionalDouble board = LengthRule.exitBoard(scenario.event().pattern());
        return board.isEmpty()
                ? ""
                : " By the length rule shots leave it at board " + Figures.plain(board.getAsDouble(), 1) + ".";
    }

    private void players() {
        page.heading("Players");
        for (StartLine line : labels.shown(labels.surfaces().get(0), LineBasis.NATURAL)) {
            Kind kind = line.kind();
            page.item(labels.ofBowler(kind) + ": " + kind.cover().id() + " ball, level "
                    + kind.level().id() + ".");
        }
    }

    private void natural(String surface) {
        boolean own = surface.equals(scenario.event().centre().surface().id());
        page.heading("On " + surface + (own ? ", the surface of this scenario" : ""));
        List<String> head = List.of(
                "Style", "Laydown", "Arrows", "Leaves", "Window", "Turns at", "Enters", "Pocket", "Strike", "Room");
        page.table(Table.rows(head, labels.shown(surface, LineBasis.NATURAL), this::row), 1);
    }

    private List<String> row(StartLine start) {
        return List.of(
                labels.of(start.kind()),
                cell(start, line -> Figures.fixed(line.line().laydownBoard(), 1)),
                cell(start, line -> Figures.fixed(line.line().arrowsBoard(), 1)),
                cell(start, line -> Figures.fixed(line.path().exitBoard(), 1)),
                cell(start, LinesText::window),
                cell(start, this::breakpoint),
                cell(
                        start,
                        line -> Figures.fixed(StrictMath.toDegrees(line.path().entryAngleRad()), 1)),
                cell(start, line -> percent(line.quality().pocketShare())),
                cell(start, line -> percent(line.quality().strikeShare())),
                cell(start, LinesText::room));
    }

    private static String cell(StartLine start, Function<PlayedLine, String> of) {
        return start.line().map(of).orElse("-");
    }

    private static String window(PlayedLine line) {
        return Figures.fixed(line.window().lowBoard(), 1) + "-"
                + Figures.fixed(line.window().highBoard(), 1);
    }

    private static String room(PlayedLine line) {
        return Figures.fixed(line.missRoom().outsideBoards(), 1) + "/"
                + Figures.fixed(line.missRoom().insideBoards(), 1);
    }

    private String breakpoint(PlayedLine line) {
        double distanceM = line.path().breakpointM();
        return Figures.fixed(line.path().breakpointBoard(), 1) + ", "
                + (metric
                        ? Figures.fixed(distanceM, 1) + " m"
                        : Figures.fixed(distanceM / LaneGeometry.FOOT_M, 0) + " ft");
    }

    /** How many of a hundred first balls. */
    static String inHundred(double share) {
        return Figures.fixed(100 * share, 0);
    }

    private static String percent(double share) {
        return Figures.fixed(100 * share, 0) + " %";
    }

    private void free() {
        page.heading("Best line, for those who can change their launch angle");
        List<StartLine> free = labels.surfaces().stream()
                .flatMap(surface -> labels.shown(surface, LineBasis.FREE).stream())
                .toList();
        List<String> head =
                List.of("Surface", "Style", "Laydown", "Arrows", "Turn by", "Leaves", "Strikes", "More in 100");
        page.table(Table.rows(head, free, this::freeRow), 2);
    }

    private void otherTracks() {
        List<StartLine> others = labels.surfaces().stream()
                .flatMap(surface -> labels.shown(surface, LineBasis.OTHER_TRACK).stream())
                .toList();
        if (others.isEmpty()) {
            return;
        }
        page.heading("The other track, where there is an outside and an inside line");
        List<String> head = List.of("Surface", "Style", "Track", "Laydown", "Arrows", "Leaves", "Strikes", "Gains");
        page.table(Table.rows(head, others, this::otherRow), 3);
    }

    private List<String> otherRow(StartLine start) {
        double natural = labels.natural(start).orElseThrow().line().laydownBoard();
        return List.of(
                start.surface().id(),
                labels.of(start.kind()),
                cell(start, line -> line.line().laydownBoard() < natural ? "outside" : "inside"),
                cell(start, line -> Figures.fixed(line.line().laydownBoard(), 1)),
                cell(start, line -> Figures.fixed(line.line().arrowsBoard(), 1)),
                cell(start, line -> Figures.fixed(line.path().exitBoard(), 1)),
                cell(start, line -> percent(line.quality().strikeShare())),
                cell(start, line -> signedGain(start, line)));
    }

    private String signedGain(StartLine start, PlayedLine line) {
        double natural = labels.natural(start).orElseThrow().quality().strikeShare();
        return Figures.signed(100 * (line.quality().strikeShare() - natural), 0);
    }

    private List<String> freeRow(StartLine start) {
        return List.of(
                start.surface().id(),
                labels.of(start.kind()),
                cell(start, line -> Figures.fixed(line.line().laydownBoard(), 1)),
                cell(start, line -> Figures.fixed(line.line().arrowsBoard(), 1)),
                cell(start, line -> turn(start, line)),
                cell(start, line -> Figures.fixed(line.path().exitBoard(), 1)),
                cell(start, line -> percent(line.quality().strikeShare())),
                gain(start));
    }

    /** How far the free line is turned from the natural one; positive toward the own gutter. */
    private String turn(StartLine start, PlayedLine line) {
        return labels.natural(start)
                .map(natural -> Figures.signed(
                                StrictMath.toDegrees(
                                        line.line().launchRad() - natural.line().launchRad()),
                                1)
                        + " deg")
                .orElse("-");
    }

    private String gain(StartLine start) {
        return start.line()
                .flatMap(line -> labels.natural(start)
                        .map(natural -> inHundred(
                                line.quality().strikeShare() - natural.quality().strikeShare())))
                .orElse("-");
    }

    private void section(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            page.heading(heading);
            sentences.forEach(page::item);
        }
    }

    private void howToRead() {
        page.heading("How to read it");
        page.item("The first tables show natural lines: what a style is at home with on this pattern, known at "
                + Figures.plain(HomeLines.KNOWN_ML, 0) + " mL on " + Catalogue.REFERENCE_SURFACE + " with a "
                + Catalogue.REFERENCE_COVER
                + " ball, moved two boards with the"
                + " feet to one at the arrows until an average shot meets the pocket here."
                + (labels.hasSmoothBalls()
                        ? " Where no such move brings a plastic or urethane ball to the pocket, its own home line"
                                + " is taken instead."
                        : ""));
        page.item(
                "Leaves: the board at the end of the pattern. Window: " + WindowWords.MEANING
                        + " Turns at: the outermost board and how far down the lane. Enters: the angle at the pins in degrees.");
        page.item(
                "Room: by how many boards an average shot can miss its board at the arrows toward the gutter / toward the"
                        + " middle and still hit the pocket. Without the lane's help that would be 0.3 / 0.3.");
        page.item(
                "Turn by: how the best line is turned from the natural one; + toward the own gutter. More in 100: strikes"
                        + " in 100 first balls that it gains. The choice is flat: fewer than two are no reason to change.");
        page.item(
                "The other track: at some angles two lines meet the pocket, one outside and one inside. Gains: strikes in 100"
                        + " first balls against the natural line; - if it loses them. Lines that strike less than half as often are not told.");
        page.item(
                "Strikes and pocket hits count the scatter of the level's release. Styles are shown with the ball and level"
                        + " commonest in this field; to compare styles, give all the same with --cover and --level.");
        page.item(
                "The natural angles are fitted, not measured, and a large gain of the best line may say no more than that one does not"
                        + " fit: give your own under styles, as naturalLaunch.");
        page.item("A lane in play changes with every ball: these lines are for the start.");
    }
}
