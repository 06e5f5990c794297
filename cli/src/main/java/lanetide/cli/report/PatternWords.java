package lanetide.cli.report;

import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.film.TapePattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.model.Conditioning;

/** Patterns, and how they are laid, as a report names them. */
public final class PatternWords {
    /** What a pattern is called whose scenario does not name it. */
    private static final String UNNAMED = "pattern";

    private PatternWords() {}

    /** The pattern with its name, if it has one of its own. */
    public static String named(OilPattern pattern, boolean metric) {
        String name = pattern.id().equals(UNNAMED) ? "" : " \"" + pattern.id() + "\"";
        return "Pattern" + name + ": " + of(pattern, metric) + ".";
    }

    /** Length, volume, and the ratio or the tapes it was given by. */
    public static String of(OilPattern pattern, boolean metric) {
        String start = distance(pattern.lengthM(), metric) + ", " + Figures.plain(pattern.volumeMl(), 1) + " mL, ";
        return start
                + (pattern instanceof TapePattern taped
                        ? "by tapes at " + taped.tapes().distancesM().size() + " distances, give or take "
                                + Figures.plain(taped.tapes().errorUnits(), 1) + " units"
                        : ratio((SheetPattern) pattern));
    }

    public static String distance(double metres, boolean metric) {
        return metric ? Figures.plain(metres, 2) + " m" : Figures.plain(metres / LaneGeometry.FOOT_M, 1) + " ft";
    }

    /** What is done to the lanes before a squad. */
    public static String conditioning(Conditioning conditioning) {
        return switch (conditioning) {
            case STRIP_AND_OIL -> "cleaned and oiled";
            case OIL_OVER -> "oiled over";
            case CLEAN_ENDS -> "cleaned past the end";
            case NONE -> "left as they are";
        };
    }

    /** Where the inside begins, such as {@code 14}, or {@code 14 from the right and 12 from the left}. */
    public static String flatFrom(OilPattern pattern) {
        String right = Figures.plain(pattern.flatFromBoard(Hand.RIGHT), 1);
        return pattern.isSymmetric()
                ? right
                : right + " from the right and " + Figures.plain(pattern.flatFromBoard(Hand.LEFT), 1)
                        + " from the left";
    }

    private static String ratio(SheetPattern pattern) {
        String right = Figures.plain(pattern.right().ratio(), 2) + ":1";
        String left = Figures.plain(pattern.left().ratio(), 2) + ":1";
        return pattern.isSymmetric() ? right : right + " on the right and " + left + " on the left";
    }
}
