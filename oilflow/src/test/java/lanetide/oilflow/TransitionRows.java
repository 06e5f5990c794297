package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/** Rows of the validation table about lanes in play. */
final class TransitionRows {
    /** Blocks of play that a row is averaged over, with seeds 1, 2 and so on. */
    private static final int BLOCKS = 6;

    /** Blocks that two places of a lane are compared over. */
    private static final int PAIRED_BLOCKS = 20;

    /** 95th percentile of Student's distribution with 19 degrees of freedom (tables). */
    private static final double STUDENT_19 = 1.729;

    private final List<ValidationRow> rows = new ArrayList<>();

    private TransitionRows() {
        heads();
        losses();
        frontToBack();
        headsAlone();
        powerDeeper();
        nonFlaringBlock();
    }

    static List<ValidationRow> rows() {
        return new TransitionRows().rows;
    }

    private void heads() {
        double units = Lanes.fresh(Lanes.pattern(39)).meanOnBoardUm(20, 0, FOOT_M) / OilFilm.UNIT_UM;
        add(
                "Head film, first foot, middle board, 39 ft, 26 mL, 3:1",
                "Thompson, Bowlers Journal, August 2015, p. 17 (competitive patterns)",
                "70 to 120 units",
                ValidationRow.format("%.0f units", units),
                units >= 70 && units <= 120,
                Use.FITTED);
    }

    private void losses() {
        OilFilm fresh = Lanes.fresh(Lanes.pattern(39));
        for (int games = 12; games <= 15; games += 3) {
            double left = 100 * mean(Lanes.DEFAULT_COVER, games, block -> leastLeft(block.film, fresh, 0, 20));
            add(
                    "Film left in the first 20 ft of the most used board after " + games + " games on the lane",
                    "Thompson, Bowlers Journal, August 2015, p. 17",
                    "50 ± 15 % after 12 to 15",
                    ValidationRow.format("%.0f %%", left),
                    Math.abs(left - 50) <= 15,
                    games == 12 ? Use.FITTED : Use.HELD_OUT);
        }
    }

    private void frontToBack() {
        OilFilm fresh = Lanes.fresh(Lanes.pattern(39));
        SummaryStatistics more = new SummaryStatistics();
        SummaryStatistics front = new SummaryStatistics();
        for (long seed = 1; seed <= PAIRED_BLOCKS; seed++) {
            Block block = block(Lanes.DEFAULT_COVER, seed).play(15);
            double lost = 100 * (1 - leastLeft(block.film, fresh, 0, 20));
            front.addValue(lost);
            more.addValue(lost - 100 * (1 - leastLeft(block.film, fresh, 20, 38)));
        }
        double half = STUDENT_19 * more.getStandardDeviation() / Math.sqrt(PAIRED_BLOCKS);
        add(
                "Largest loss of a board after 15 games, first 20 ft less 20 to 38 ft, 20 paired seeds, 90 % interval",
                "patterns break down front to back (pro-shop article, October 2017)",
                "above 0",
                ValidationRow.format(
                        "%.1f to %.1f points of %.0f %%",
                        more.getMean() - half, more.getMean() + half, front.getMean()),
                more.getMean() - half > 0,
                Use.FITTED);
    }

    /** How far a line that nobody moves goes off, and how far it would if only the heads had worn. */
    private void headsAlone() {
        OilFilm fresh = Lanes.fresh(Lanes.pattern(39));
        double whole = 0;
        double heads = 0;
        for (long seed = 1; seed <= PAIRED_BLOCKS; seed++) {
            Block block = block(Lanes.DEFAULT_COVER, seed);
            List<Line> starts = List.copyOf(block.lines);
            block.play(15);
            OilFilm onlyHeads = wornTo(20, fresh, block.film);
            for (int i = 0; i < starts.size(); i++) {
                Player player = block.players.get(i);
                double before = Lanes.finder().arrivalBoard(player, fresh, starts.get(i));
                whole += Lanes.finder().arrivalBoard(player, block.film, starts.get(i)) - before;
                heads += Lanes.finder().arrivalBoard(player, onlyHeads, starts.get(i)) - before;
            }
        }
        add(
                "Shift of a fixed line after 15 games made by the first 20 ft alone, share of the whole, 20 seeds",
                "the heads cost 1.8 times as much for a unit of friction (computed on two zones, `HookTest`); the share is"
                        + " our own demand",
                "at least 33 %",
                ValidationRow.format("%.0f %%", 100 * heads / whole),
                heads / whole >= 1.0 / 3,
                Use.FITTED);
    }

    /** A lane worn to a distance and fresh beyond. */
    private static OilFilm wornTo(int feet, OilFilm fresh, OilFilm worn) {
        OilFilm film = fresh.copy();
        int rows = film.grid().rows();
        int wornRows = (int) Math.round(feet * FOOT_M / film.grid().rowLengthM());
        for (int column = 0; column < film.grid().columns(); column++) {
            System.arraycopy(worn.cellsUm(), column * rows, film.cellsUm(), column * rows, wornRows);
        }
        return film;
    }

    private void powerDeeper() {
        for (String cover : List.of("weak-reactive", "medium-reactive", "strong-reactive")) {
            for (int games : new int[] {9, 24}) {
                feetMoved("power", cover, games, "deeper", 1);
            }
        }
    }

    private void feetMoved(String style, String cover, int games, String published, int sign) {
        int i = Lanes.STYLES.indexOf(style);
        double start = Lanes.start(Lanes.player(style, cover, Lanes.DEFAULT_SURFACE), Lanes.pattern(39))
                .laydownBoard();
        double moved = mean(cover, games, block -> block.lines.get(i).laydownBoard() - start);
        add(
                "Feet of the " + style + " player after " + games + " games on the lane ("
                        + games * Block.FIRST_BALLS_A_GAME + " balls), all " + cover,
                "common practice, no source",
                published,
                ValidationRow.format("%+.1f boards", moved),
                moved * sign > 0,
                Use.CHECK);
    }

    /** Mean over seeded blocks of a mixed field with one cover, after all have moved to the lane they then find. */
    private static double mean(String cover, int games, ToDoubleFunction<Block> measure) {
        double sum = 0;
        for (long seed = 1; seed <= BLOCKS; seed++) {
            Block block = block(cover, seed).play(games);
            block.moveAll();
            sum += measure.applyAsDouble(block);
        }
        return sum / BLOCKS;
    }

    private static Block block(String cover, long seed) {
        return new Block(Lanes.field(cover), Lanes.pattern(39), seed);
    }

    private void nonFlaringBlock() {
        OilFilm fresh = Lanes.fresh(Lanes.pattern(39));
        double endM = 39 * FOOT_M;
        double reactive = mean(Lanes.DEFAULT_COVER, 15, block -> block.film.volumePastMl(endM));
        for (String cover : List.of("urethane", "plastic")) {
            double ratio = mean(cover, 15, block -> block.film.volumePastMl(endM)) / reactive;
            add(
                    "Oil carried past the end in 15 games, " + cover + " over medium reactive",
                    "Rose, Bowling This Month, September 2022 (direction; the factor is ours)",
                    "3 to 50",
                    ValidationRow.format("%.0f", ratio),
                    ratio >= 3 && ratio <= 50,
                    Use.FITTED);
            double head = mean(
                    cover,
                    15,
                    block -> takenBefore(fresh, block.film, 16) / (fresh.volumeMl() - block.film.volumeMl()));
            add(
                    "Share of the net removal before 16 ft in 15 games, " + cover
                            + " (over 100 %: the rest of the lane gains)",
                    "Thompson, Breakdown and carrydown, then and now (2012): first 8 to 16 ft",
                    "80 to 120 %",
                    ValidationRow.format("%.0f %%", 100 * head),
                    head >= 0.8 && head <= 1.2,
                    Use.FITTED);
        }
        double lost = 100 * (1 - mean("urethane", 24, block -> leastLeft(block.film, fresh, 20, 38)));
        double gained = 100 * (mean("urethane", 24, block -> mostLeft(block.film, fresh, 20, 38)) - 1);
        add(
                "Largest loss and largest gain of a board between 20 and 38 ft in 24 games, urethane",
                "Thompson (2012): the rest of the pattern unchanged until about 24 games",
                "under 10 % either way",
                ValidationRow.format("%.0f %% and %.0f %%", lost, gained),
                lost < 10 && gained < 10,
                Use.FITTED);
        for (String cover : List.of("urethane", "plastic")) {
            feetMoved("straight", cover, 9, "toward the gutter", -1);
        }
    }

    /** Smallest share of its fresh film that a board has left over a stretch (feet). */
    static double leastLeft(OilFilm worn, OilFilm fresh, int fromFt, int toFt) {
        return left(worn, fresh, fromFt, toFt).min().orElseThrow();
    }

    private static double mostLeft(OilFilm worn, OilFilm fresh, int fromFt, int toFt) {
        return left(worn, fresh, fromFt, toFt).max().orElseThrow();
    }

    private static DoubleStream left(OilFilm worn, OilFilm fresh, int fromFt, int toFt) {
        return IntStream.rangeClosed(1, LaneGeometry.BOARDS)
                .mapToDouble(board -> worn.meanOnBoardUm(board, fromFt * FOOT_M, toFt * FOOT_M)
                        / fresh.meanOnBoardUm(board, fromFt * FOOT_M, toFt * FOOT_M));
    }

    /** Oil that the stretch before a distance has lost (mL). */
    static double takenBefore(OilFilm fresh, OilFilm worn, int feet) {
        double freshMl = fresh.volumeMl() - fresh.volumePastMl(feet * FOOT_M);
        return freshMl - (worn.volumeMl() - worn.volumePastMl(feet * FOOT_M));
    }

    private void add(String check, String source, String published, String ours, boolean met, Use use) {
        rows.add(new ValidationRow(check, source, published, ours, met, use));
    }
}
