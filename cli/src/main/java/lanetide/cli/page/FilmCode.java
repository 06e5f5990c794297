package lanetide.cli.page;

import java.io.ByteArrayOutputStream;
import java.util.Base64;
import java.util.Collection;
import java.util.List;

/**
 * Films and paths as text that a page can carry: one byte a value, each frame after a lane's first as its difference
 * from the one before (modulo 256), in runs ({@link PackBits}), in base 64 (RFC 4648).
 */
final class FilmCode {
    /** The largest film of an event is written as this. */
    static final int MAX = 250;

    /** Steps of a path in a board. */
    static final double STEPS_A_BOARD = 6;

    /** Stands for a path that does not exist. */
    static final int NONE = 255;

    private FilmCode() {}

    /** The thickest film of all frames (units of oil), at least 1. */
    static double mostUnits(Collection<List<FilmReel.Frame>> lanes) {
        double most = 1;
        for (List<FilmReel.Frame> lane : lanes) {
            for (FilmReel.Frame frame : lane) {
                for (double units : frame.filmUnits()) {
                    most = Math.max(most, units);
                }
            }
        }
        return most;
    }

    static String films(Collection<List<FilmReel.Frame>> lanes, double unitsAStep) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (List<FilmReel.Frame> lane : lanes) {
            double[] before = new double[lane.get(0).filmUnits().length];
            for (FilmReel.Frame frame : lane) {
                for (int i = 0; i < before.length; i++) {
                    bytes.write(step(frame.filmUnits()[i], unitsAStep) - step(before[i], unitsAStep));
                }
                before = frame.filmUnits();
            }
        }
        return packed(bytes.toByteArray());
    }

    static String paths(Collection<List<FilmReel.Frame>> lanes) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (List<FilmReel.Frame> lane : lanes) {
            for (FilmReel.Frame frame : lane) {
                for (double[] path : frame.paths()) {
                    for (int i = 0; i < FilmReel.PATH_POINTS; i++) {
                        bytes.write(path.length == 0 ? NONE : step(path[i], 1 / STEPS_A_BOARD));
                    }
                }
            }
        }
        return packed(bytes.toByteArray());
    }

    private static int step(double value, double size) {
        return (int) Math.max(0, Math.min(MAX, Math.rint(value / size)));
    }

    private static String packed(byte[] bytes) {
        return Base64.getEncoder().encodeToString(PackBits.pack(bytes));
    }
}
