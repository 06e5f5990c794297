package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.BallPath;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/** Rows of the validation table about single shots on a fresh lane. */
final class ShotRows {
    private static final double MPH_MPS = 0.44704;
    private static final long SEED = 20_261;

    private final List<ValidationRow> rows = new ArrayList<>();
    private final LineFinder finder = Lanes.finder();
    private final RowMarch march = new RowMarch(LaneGrid.DEFAULT);

    private ShotRows() {
        lengthRule();
        gridAfterManyGames();
        shots();
        window();
        surfaces();
        houseVersusSport();
        oldOil();
    }

    static List<ValidationRow> rows() {
        return new ShotRows().rows;
    }

    private void lengthRule() {
        for (int feet : new int[] {33, 35, 36, 37, 38, 39, 40, 41, 42, 43, 45}) {
            OilPattern pattern = Lanes.pattern(feet);
            OilFilm film = Lanes.fresh(pattern);
            double sum = 0;
            for (String style : Lanes.STYLES) {
                Player player = Lanes.player(style);
                sum += finder.exitBoard(player, film, Lanes.start(player, pattern), feet * FOOT_M);
            }
            double mean = sum / Lanes.STYLES.size();
            add(
                    "Exit board at " + feet + " ft, mean of four styles on a fresh 26 mL 3:1 pattern",
                    "length less 31 (USBC technique page, US Bowler, July 2011)",
                    (feet - 31) + " ± 2",
                    ValidationRow.format("%.1f", mean),
                    Math.abs(mean - (feet - 31)) <= 2,
                    Use.FITTED);
        }
    }

    /** The same 1200 balls on grids of both fineness; then where the average shot of each style leaves the pattern. */
    private void gridAfterManyGames() {
        double worst = 0;
        OilFilm usual = wornOn(LaneGrid.DEFAULT);
        OilFilm fine = wornOn(new LaneGrid(2 * LaneGrid.DEFAULT.columnsPerBoard(), 2 * LaneGrid.DEFAULT.rowsPerFoot()));
        for (String style : Lanes.STYLES) {
            Player player = Lanes.player(style);
            Line line = Lanes.start(player, Lanes.pattern(39));
            worst = Math.max(worst, Math.abs(exitOn(usual, player, line) - exitOn(fine, player, line)));
        }
        add(
                "Exit board after 100 games on a lane (1200 balls), rows and columns halved against usual, worst of four styles",
                "our own demand",
                "within 0.05 board",
                ValidationRow.format("%.3f board", worst),
                worst < 0.05,
                Use.CHECK);
    }

    private static double exitOn(OilFilm film, Player player, Line line) {
        LineFinder finder = new LineFinder(new RowMarch(film.grid()), new PinCarry());
        return finder.exitBoard(player, film, line, 39 * FOOT_M);
    }

    private static OilFilm wornOn(LaneGrid grid) {
        RandomGenerator random = new Well19937c(1);
        RowMarch march = new RowMarch(grid);
        List<Player> players = Lanes.field(Lanes.DEFAULT_COVER);
        List<Line> lines = players.stream()
                .map(player -> Lanes.start(player, Lanes.pattern(39)))
                .toList();
        OilFilm film = OilFilm.fresh(Lanes.pattern(39), grid);
        for (int ball = 0; ball < 1200; ball++) {
            Player player = players.get(ball % players.size());
            Line line = lines.get(ball % players.size());
            double laydownM = LaneGeometry.boardToMetres(line.laydownBoard())
                    + player.spread().laydownM() * random.nextGaussian();
            double launchRad = line.launchRad() + player.spread().launchRad() * random.nextGaussian();
            BallOil clean = new BallOil(player.contact().ball(), BallOil.NO_TOWEL);
            Delivery delivery = Delivery.of(
                    player.style().release(), player.contact().ball().radiusM(), laydownM, launchRad);
            march.wear(delivery, player.hand(), player.contact(), film, clean);
        }
        return film;
    }

    private void shots() {
        OilFilm film = Lanes.fresh(Lanes.pattern(39));
        for (String style : Lanes.STYLES) {
            Player player = Lanes.player(style);
            BallPath path = roll(player, film, Lanes.start(player, Lanes.pattern(39)));
            double lossMph = (player.style().release().speedMps() - path.speedAtPinsMps()) / MPH_MPS;
            double entryDeg = Math.toDegrees(path.entryAngleRad());
            add(
                    "Speed lost to the pins, " + style + ", 39 ft",
                    "Bowling This Month, Matching-up process, and two coaching pages",
                    "2 to 3.5 mph",
                    ValidationRow.format("%.1f mph", lossMph),
                    lossMph >= 2 && lossMph <= 3.5,
                    Use.FITTED);
            add(
                    "Time to the pins, " + style + ", 39 ft",
                    "the same",
                    "2.0 to 2.6 s",
                    ValidationRow.format("%.2f s", path.timeS()),
                    path.timeS() >= 2 && path.timeS() <= 2.6,
                    Use.IDLE);
            add(
                    "Entry angle, " + style + ", 39 ft",
                    "best strikers enter at 4 to 6 degrees (Ridenour, USBC)",
                    "4 to 6°",
                    ValidationRow.format("%.1f°", entryDeg),
                    entryDeg >= 4 && entryDeg <= 6,
                    Use.FITTED);
        }
    }

    private void window() {
        OilFilm film = Lanes.fresh(Lanes.pattern(39, 23, 5));
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (String style : Lanes.STYLES) {
            Player player = Lanes.player(style);
            ExitWindow window = finder.movedWindow(
                            player, film, Lanes.start(player, Lanes.pattern(39, 23, 5)), 39 * FOOT_M)
                    .orElseThrow();
            low = Math.min(low, window.lowBoard());
            high = Math.max(high, window.highBoard());
        }
        add(
                "Exit window of a mixed field, 39 ft, 23 mL, 5:1, fresh",
                "boards 7 to 11 about the length rule's 8 (common practice, no source)",
                "holds 7 to 11",
                ValidationRow.format("%.1f to %.1f", low, high),
                low <= 7 && high >= 11,
                Use.FITTED);
    }

    private void surfaces() {
        OilFilm film = Lanes.fresh(Lanes.pattern(39));
        double sum = 0;
        for (String style : Lanes.STYLES) {
            Line hard = Lanes.start(Lanes.player(style), Lanes.pattern(39));
            Player textured = Lanes.player(style, Lanes.DEFAULT_COVER, "textured-synthetic");
            sum += finder.moveToPocket(textured, film, hard).orElseThrow().laydownBoard() - hard.laydownBoard();
        }
        double mean = sum / Lanes.STYLES.size();
        add(
                "Feet from hard to textured synthetic, mean of four styles, 39 ft",
                "common practice, no source",
                "2 to 3 boards deeper",
                ValidationRow.format("%.1f deeper", mean),
                mean >= 2 && mean <= 3,
                Use.FITTED);
    }

    /**
     * Speeds, rev rates and results as printed; axis and scatter are not, so the styles' axis and the good player's
     * scatter.
     */
    private void houseVersusSport() {
        houseVersusSport("220 rpm at 19 mph", Release.ofTradeUnits(19, 220, 45, 10), "stroker", 50, 1.45, Use.FITTED);
        houseVersusSport("325 rpm at 18 mph", Release.ofTradeUnits(18, 325, 48, 12), "tweener", 55, 1.59, Use.HELD_OUT);
    }

    private void houseVersusSport(
            String band, Release release, String style, double publishedPocket, double publishedSpread, Use use) {
        double launchRad = Lanes.CATALOGUE.styles().get(style).naturalLaunchRad();
        PlayingStyle playing = new PlayingStyle(band, release, launchRad, "published band");
        Player player = Lanes.player(playing, Lanes.DEFAULT_COVER, Lanes.DEFAULT_SURFACE);
        OilFilm film = Lanes.fresh(Lanes.pattern(40, 23, 2));
        Line line = Lanes.start(player, Lanes.pattern(40, 23, 2));
        RandomGenerator random = new Well19937c(SEED);
        SummaryStatistics at37Ft = new SummaryStatistics();
        int pockets = 0;
        int shots = 4000;
        for (int i = 0; i < shots; i++) {
            rollScattered(player, film, line, random);
            at37Ft.addValue(LaneGeometry.metresToBoard(march.positionM(37 * FOOT_M)));
            pockets += PinCarry.isPocket(march.arrivalBoard()) ? 1 : 0;
        }
        double pocket = 100.0 * pockets / shots;
        double spread = at37Ft.getStandardDeviation();
        String source = "House versus Sport, US Bowler, Winter 2010, p. 27";
        add(
                "Pocket hits, fresh 40 ft 2:1, " + band,
                source,
                ValidationRow.format("%.0f ± 7 %%", publishedPocket),
                ValidationRow.format("%.0f %%", pocket),
                Math.abs(pocket - publishedPocket) <= 7,
                use);
        add(
                "Spread at 37 ft, fresh 40 ft 2:1, " + band,
                source,
                ValidationRow.format("%.2f boards ± 10 %%", publishedSpread),
                ValidationRow.format("%.2f boards", spread),
                Math.abs(spread / publishedSpread - 1) <= 0.10,
                use);
    }

    /**
     * The finder reads the lane with what a towel leaves on a ball; here ten shots have really been thrown and wiped.
     */
    private void oldOil() {
        for (String style : List.of("straight", "power")) {
            Player player = Lanes.player(style);
            OilFilm fresh = Lanes.fresh(Lanes.pattern(39));
            Delivery delivery = delivery(player, Lanes.start(player, Lanes.pattern(39)));
            BallOil oil = new BallOil(player.contact().ball(), BallOil.DEFAULT_TOWEL_SHARE);
            march.readInPlay(delivery, Hand.RIGHT, player.contact(), fresh);
            double expected = march.arrivalBoard();
            for (int shot = 0; shot < 10; shot++) {
                march.wear(delivery, Hand.RIGHT, player.contact(), fresh.copy(), oil);
                oil.rest(60);
            }
            march.wear(delivery, Hand.RIGHT, player.contact(), fresh.copy(), oil);
            double shift = march.arrivalBoard() - expected;
            add(
                    "Shift of a shot by the oil left from ten shots a minute apart, wiped, " + style
                            + ", medium reactive",
                    "our own demand: the line found must be the line in play",
                    "within 0.5 board",
                    ValidationRow.format("%+.1f boards", shift),
                    Math.abs(shift) <= 0.5,
                    Use.CHECK);
        }
    }

    private BallPath roll(Player player, OilFilm film, Line line) {
        march.read(delivery(player, line), Hand.RIGHT, player.contact(), film);
        return march.path(39 * FOOT_M);
    }

    private static Delivery delivery(Player player, Line line) {
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        BallSpec ball = player.contact().ball();
        return Delivery.of(player.style().release(), ball.radiusM(), laydownM, line.launchRad());
    }

    private void rollScattered(Player player, OilFilm film, Line line, RandomGenerator random) {
        ReleaseSpread spread = player.spread();
        Release release = player.style()
                .release()
                .scaled(
                        1 + spread.speedShare() * random.nextGaussian(),
                        1 + spread.spinShare() * random.nextGaussian());
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard()) + spread.laydownM() * random.nextGaussian();
        double launchRad = line.launchRad() + spread.launchRad() * random.nextGaussian();
        double radiusM = player.contact().ball().radiusM();
        march.read(Delivery.of(release, radiusM, laydownM, launchRad), player.hand(), player.contact(), film);
    }

    private void add(String check, String source, String published, String ours, boolean met, Use use) {
        rows.add(new ValidationRow(check, source, published, ours, met, use));
    }
}
