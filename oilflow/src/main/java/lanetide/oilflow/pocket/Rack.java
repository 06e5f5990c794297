package lanetide.oilflow.pocket;

import java.util.StringJoiner;
import lanetide.oilflow.lane.LaneGeometry;

/**
 * Where the ten pins stand, and sets of them as bits: bit 0 is pin 1.
 *
 * <p>Pins are named from the bowler's delivery side, so that a left-hander's corner pin is his 10: pins 3, 6, 9 and 10
 * lie toward his own gutter. Centres are 12 in apart, in rows 12 sin 60 in deep (USBC, Equipment Specifications
 * Manual).
 */
public final class Rack {
    /** All ten pins. */
    public static final int FULL = (1 << 10) - 1;

    /** Radius of a pin at its widest (m): 4.76 in across. */
    public static final double PIN_RADIUS_M = 4.76 / 2 * 0.0254;

    private static final double SPACING_M = 12 * 0.0254;
    private static final double ROW_DEPTH_M = SPACING_M * StrictMath.sqrt(3) / 2;
    /** Offset toward the far gutter, in half spacings, of pins 1 to 10. */
    private static final int[] HALF_SPACINGS = {0, 1, -1, 2, 0, -2, 3, 1, -1, -3};

    private static final int[] ROW = {0, 1, 1, 2, 2, 2, 3, 3, 3, 3};
    /** The pin that stands where the mirror image of this one would. */
    private static final int[] MIRROR = {1, 3, 2, 6, 5, 4, 10, 9, 8, 7};

    private Rack() {}

    /**
     * Where a pin stands across the lane.
     *
     * @param pin pin 1 to 10
     * @return board from the gutter on the delivery side
     */
    public static double board(int pin) {
        return LaneGeometry.CENTRE_BOARD + HALF_SPACINGS[pin - 1] * SPACING_M / 2 / LaneGeometry.BOARD_M;
    }

    /**
     * How far behind the head pin a pin stands.
     *
     * @param pin pin 1 to 10
     * @return metres
     */
    public static double depthM(int pin) {
        return ROW[pin - 1] * ROW_DEPTH_M;
    }

    /**
     * Distance between two pins.
     *
     * @param a pin 1 to 10
     * @param b pin 1 to 10
     * @return metres between centres
     */
    public static double distanceM(int a, int b) {
        return StrictMath.hypot((board(a) - board(b)) * LaneGeometry.BOARD_M, depthM(a) - depthM(b));
    }

    /**
     * A set of one pin.
     *
     * @param pin pin 1 to 10
     * @return its bit
     */
    public static int bit(int pin) {
        return 1 << (pin - 1);
    }

    /**
     * Whether a pin is in a set.
     *
     * @param pins the set
     * @param pin pin 1 to 10
     * @return whether its bit is set
     */
    public static boolean has(int pins, int pin) {
        return (pins & bit(pin)) != 0;
    }

    /**
     * The mirror image of a set.
     *
     * @param pins the set
     * @return the set seen from the other side
     */
    public static int mirrored(int pins) {
        int image = 0;
        for (int pin = 1; pin <= 10; pin++) {
            if (has(pins, pin)) {
                image |= bit(MIRROR[pin - 1]);
            }
        }
        return image;
    }

    /**
     * Reads a set as the trade writes it.
     *
     * @param text such as {@code 3-6-10}
     * @return the set
     * @throws IllegalArgumentException if a part is not a pin from 1 to 10
     */
    public static int parse(String text) {
        int pins = 0;
        for (String part : text.split("-", -1)) {
            int pin = Integer.parseInt(part.trim());
            if (pin < 1 || pin > 10) {
                throw new IllegalArgumentException("pin " + pin + " in " + text + " must be 1 to 10");
            }
            pins |= bit(pin);
        }
        return pins;
    }

    /**
     * Writes a set as the trade writes it.
     *
     * @param pins the set
     * @return such as {@code 3-6-10}; {@code none} for the empty set
     */
    public static String format(int pins) {
        StringJoiner names = new StringJoiner("-").setEmptyValue("none");
        for (int pin = 1; pin <= 10; pin++) {
            if (has(pins, pin)) {
                names.add(String.valueOf(pin));
            }
        }
        return names.toString();
    }
}
