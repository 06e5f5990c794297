package lanetide.cli.pattern;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.OilUnits;
import lanetide.cli.report.Page;
import lanetide.cli.report.PatternWords;
import lanetide.cli.report.Table;
import lanetide.cli.report.WindowWords;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.PatternBands;
import lanetide.oilflow.film.PatternMeasures;
import lanetide.oilflow.film.TapeReading;
import lanetide.oilflow.lane.Hand;

/** What {@code pattern} answers, for people. */
public final class PatternText {
    private static final List<Integer> TAPED_BOARDS = List.of(2, 3, 5, 7, 8, 10, 12, 15, 18, 20);

    private static final String ASSUMED_FALL = "pattern." + PatternKeys.DECAY.name();

    private final Scenario scenario;
    private final PatternFacts facts;
    private final boolean metric;
    private final Page page = new Page();

    private PatternText(Scenario scenario, PatternFacts facts, boolean metric) {
        this.scenario = scenario;
        this.facts = facts;
        this.metric = metric;
    }

    /**
     * Writes the answer.
     *
     * @param scenario the scenario
     * @param facts its pattern
     * @param metric whether lengths are written in metres and films in micrometres
     * @return the page
     */
    public static String write(Scenario scenario, PatternFacts facts, boolean metric) {
        return new PatternText(scenario, facts, metric).write();
    }

    private String write() {
        page.line(scenario.event().name());
        page.line(PatternWords.named(facts.pattern(), metric));
        page.heading("What it means for play (common practice, no source)");
        new PatternMeaning(facts, scenario.names(), metric).sentences().forEach(page::item);
        exits();
        measured();
        tapes();
        sources();
        Ending.add(page, scenario, PatternAssumptions.of(scenario));
        return page.text();
    }

    private void exits() {
        page.heading("Where the ball should leave the pattern");
        page.item(
                facts.exitBoardByRule().isPresent()
                        ? "By the length rule, board "
                                + Figures.plain(facts.exitBoardByRule().getAsDouble(), 1)
                                + ": the length in feet less 31. A rule of thumb that knows neither ball nor surface."
                        : "The length rule (length in feet less 31) names no board for a pattern of this length.");
        page.item(
                "By the model, for each style on " + facts.surface().id() + " with a " + PatternFacts.COVER + " ball:");
        page.table(Table.rows(List.of("Style", "Exit board", "Window"), facts.exits(), this::row), 1);
        page.paragraph("Exit board: on the line the style starts with. Window: " + WindowWords.MEANING
                + " Boards are counted from the bowler's own gutter. - where the style finds no line to the pocket.");
    }

    private List<String> row(PatternFacts.StyleExit exit) {
        String hand = facts.pattern().isSymmetric() ? "" : exit.hand() == Hand.RIGHT ? " (right)" : " (left)";
        return List.of(
                exit.style() + hand,
                exit.window()
                        .map(window -> Figures.fixed(window.exitBoard(), 1))
                        .orElse("-"),
                exit.window()
                        .map(window ->
                                Figures.fixed(window.lowBoard(), 1) + " to " + Figures.fixed(window.highBoard(), 1))
                        .orElse("-"));
    }

    private void measured() {
        PatternMeasures measures = facts.measures();
        page.heading("Measured on the film");
        page.item(Figures.fixed(measures.volumeMl(), 2) + " mL, to " + PatternWords.distance(measures.lengthM(), metric)
                + ", " + film(measures.meanUnits()) + " " + new OilUnits(metric).name()
                + " on average over that length and the whole width.");
        page.item(ratio(measures.ratio())
                + ", middle five boards over boards 3 to 7 on both sides (USBC sport rule as published in 2005)"
                + (facts.pattern().isSymmetric()
                        ? "."
                        : "; over the right side alone " + ratio(measures.ratioRight()) + ", over the left "
                                + ratio(measures.ratioLeft()) + "."));
        page.item(ratio(measures.insideOutsideRatio())
                + ", boards 10 to 30 over the rest (USBC, Lane conditioning, about 2007).");
        if (isShapeAssumed()) {
            page.item("How the oil falls along the lane is assumed here. In " + new OilUnits(metric).name()
                    + ", on board 20 and on board 5 from the right, it means "
                    + String.join(", ", shape())
                    + ". If your sheet or tapes say otherwise, state decay and floor, or the tapes.");
        }
    }

    private boolean isShapeAssumed() {
        return scenario.assumptions().stream().anyMatch(taken -> taken.name().equals(ASSUMED_FALL));
    }

    private List<String> shape() {
        return facts.shape().stream()
                .filter(tape -> tape.board() == 20)
                .map(inside -> film(inside.units()) + " and " + film(outside(inside.distanceM())) + " at "
                        + PatternWords.distance(inside.distanceM(), metric))
                .toList();
    }

    private double outside(double distanceM) {
        return facts.shape().stream()
                .filter(tape -> tape.board() == 5 && tape.distanceM() == distanceM)
                .findFirst()
                .orElseThrow()
                .units();
    }

    private void tapes() {
        page.heading("What tapes would read on fresh oil (" + new OilUnits(metric).name() + ")");
        List<Double> distances =
                facts.tapes().stream().map(TapeReading::distanceM).distinct().toList();
        List<String> head = Table.row("Board", distances, distanceM -> PatternWords.distance(distanceM, metric));
        page.table(Table.rows(head, boards(), this::tapesOn), 0);
        page.paragraph("Boards from the right-hand gutter"
                + (facts.pattern().isSymmetric() ? "; the left half is the mirror image" : "")
                + ". Standard positions are 8 ft, 22 ft and 2 ft before the end (from memory); an association's inspector"
                + " named 15 ft, 25 to 30 ft and 2 ft past the end (2004).");
    }

    private List<String> tapesOn(int board) {
        List<TapeReading> tapes =
                facts.tapes().stream().filter(tape -> tape.board() == board).toList();
        return Table.row(String.valueOf(board), tapes, tape -> film(tape.units()));
    }

    private List<Integer> boards() {
        int last = facts.pattern().isSymmetric() ? 20 : 39;
        return IntStream.rangeClosed(1, last)
                .filter(board -> TAPED_BOARDS.contains(Math.min(board, 40 - board)))
                .boxed()
                .toList();
    }

    private void sources() {
        PatternBands bands = facts.bands();
        boolean published = bands.equals(PatternBands.PUBLISHED);
        page.heading("Bands and tiers" + (published ? "" : " (some of them this scenario's own)"));
        page.item("Length: short to " + PatternWords.distance(bands.shortToM(), metric) + ", long from "
                + PatternWords.distance(bands.longFromM(), metric)
                + source(published, PatternBands.LENGTH_SOURCE));
        page.item("Volume: low below " + Figures.plain(bands.lowBelowMl(), 1) + " mL, high above "
                + Figures.plain(bands.highAboveMl(), 1) + " mL" + source(published, PatternBands.VOLUME_SOURCE));
        page.item("Ratio: sport to " + ratio(bands.sportTo()) + ", house from " + ratio(bands.houseFrom())
                + ", challenge between" + source(published, PatternBands.RATIO_SOURCE));
    }

    private static String source(boolean published, String source) {
        return published ? " (" + source + ")." : ".";
    }

    private static String ratio(double ratio) {
        return Double.isInfinite(ratio) ? "no oil outside" : Figures.plain(ratio, 2) + ":1";
    }

    private String film(double units) {
        return metric ? Figures.fixed(units * OilFilm.UNIT_UM, 2) : Figures.fixed(units, 1);
    }
}
