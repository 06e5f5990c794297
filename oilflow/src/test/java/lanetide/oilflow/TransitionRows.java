package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Player;

/** Rows of the validation table about lanes in play. */
final class TransitionRows {
    /** Blocks of play that a row is averaged over, with seeds 1, 2 and so on. */
    private static final int BLOCKS = 5;

    private final List<ValidationRow> rows = new ArrayList<>();

    private TransitionRows() {
        heads("the usual shape", Lanes.pattern(39), Use.CHECK);
        reactiveBlock();
        frontLoaded(5, 0.07);
        frontLoaded(6, 0.10);
        nonFlaringBlock();
    }

    static List<ValidationRow> rows() {
        return new TransitionRows().rows;
    }

    private void heads(String shape, OilPattern pattern, Use use) {
        OilFilm film = Lanes.fresh(pattern);
        double units = film.meanOnBoardUm(20, 0, FOOT_M) / OilFilm.UNIT_UM;
        add(
                "Head film of " + shape + ", first foot, middle board, 39 ft, 26 mL, 3:1",
                "Thompson, Bowlers Journal, August 2015, p. 17 (competitive patterns)",
                "70 to 120 units",
                ValidationRow.format("%.0f units", units),
                units >= 70 && units <= 120,
                use);
    }

    private void reactiveBlock() {
        losses("", Lanes.pattern(39));
        for (String cover : List.of("weak-reactive", "medium-reactive", "strong-reactive")) {
            for (int games : new int[] {9, 24}) {
                feetMoved("power", cover, games, "deeper", 1);
            }
        }
    }

    /** Two shapes whose heads hold what tapes on competitive patterns found, chosen for that alone. */
    private void frontLoaded(double decay, double floor) {
        SheetPattern pattern = Lanes.pattern(39).falling(decay, floor);
        String shape = ValidationRow.format("decay %.0f, floor %.0f %%", decay, 100 * floor);
        heads(shape, pattern, Use.CALIBRATION);
        losses(", " + shape, pattern);
        double sum = 0;
        for (String style : Lanes.STYLES) {
            Player player = Lanes.player(style);
            OilFilm film = Lanes.fresh(pattern);
            sum += Lanes.finder().exitBoard(player, film, Lanes.start(player, pattern), 39 * FOOT_M);
        }
        double mean = sum / Lanes.STYLES.size();
        add(
                "Exit board at 39 ft, mean of four styles, " + shape,
                "length less 31 (USBC technique page, US Bowler, July 2011)",
                "8 ± 2",
                ValidationRow.format("%.1f", mean),
                Math.abs(mean - 8) <= 2,
                Use.CHECK);
    }

    private void losses(String shape, OilPattern pattern) {
        OilFilm fresh = Lanes.fresh(pattern);
        for (int games = 12; games <= 15; games += 3) {
            double left = 100 * mean(pattern, Lanes.DEFAULT_COVER, games, block -> leastLeft(block.film, fresh, 0, 20));
            add(
                    "Film left in the first 20 ft of the most used board after " + games + " games on the lane" + shape,
                    "Thompson, Bowlers Journal, August 2015, p. 17",
                    "50 ± 15 % after 12 to 15",
                    ValidationRow.format("%.0f %%", left),
                    Math.abs(left - 50) <= 15,
                    Use.CHECK);
        }
        double heads = 100 * (1 - mean(pattern, Lanes.DEFAULT_COVER, 15, block -> leastLeft(block.film, fresh, 0, 20)));
        double middle =
                100 * (1 - mean(pattern, Lanes.DEFAULT_COVER, 15, block -> leastLeft(block.film, fresh, 20, 38)));
        add(
                "Largest loss of a board, first 20 ft against 20 to 38 ft, after 15 games" + shape,
                "patterns break down front to back (pro-shop article, October 2017)",
                "more in the first 20 ft",
                ValidationRow.format("%.0f %% against %.0f %%", heads, middle),
                heads > middle,
                Use.CHECK);
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
        return mean(Lanes.pattern(39), cover, games, measure);
    }

    private static double mean(OilPattern pattern, String cover, int games, ToDoubleFunction<Block> measure) {
        double sum = 0;
        for (long seed = 1; seed <= BLOCKS; seed++) {
            Block block = new Block(Lanes.field(cover), pattern, seed).play(games);
            block.moveAll();
            sum += measure.applyAsDouble(block);
        }
        return sum / BLOCKS;
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
                    "at least 3",
                    ValidationRow.format("%.1f", ratio),
                    ratio >= 3,
                    Use.CHECK);
            double head = mean(
                    cover,
                    15,
                    block -> takenBefore(fresh, block.film, 16) / (fresh.volumeMl() - block.film.volumeMl()));
            add(
                    "Share of the net removal before 16 ft in 15 games, " + cover
                            + " (over 100 %: the rest of the lane gains)",
                    "Thompson, Breakdown and carrydown, then and now (2012): first 8 to 16 ft",
                    "at least 80 %",
                    ValidationRow.format("%.0f %%", 100 * head),
                    head >= 0.8,
                    Use.CHECK);
        }
        double middle = 100 * (1 - mean("urethane", 24, block -> leastLeft(block.film, fresh, 20, 38)));
        add(
                "Largest loss of a board between 20 and 38 ft in 24 games, urethane",
                "Thompson (2012): the rest of the pattern unchanged until about 24 games",
                "under 10 %",
                ValidationRow.format("%.0f %%", middle),
                middle < 10,
                Use.CHECK);
        for (String cover : List.of("urethane", "plastic")) {
            feetMoved("straight", cover, 9, "toward the gutter", -1);
        }
    }

    /** Smallest share of its fresh film that a board has left over a stretch (feet). */
    static double leastLeft(OilFilm worn, OilFilm fresh, int fromFt, int toFt) {
        double least = Double.POSITIVE_INFINITY;
        for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
            double left = worn.meanOnBoardUm(board, fromFt * FOOT_M, toFt * FOOT_M)
                    / fresh.meanOnBoardUm(board, fromFt * FOOT_M, toFt * FOOT_M);
            least = Math.min(least, left);
        }
        return least;
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
