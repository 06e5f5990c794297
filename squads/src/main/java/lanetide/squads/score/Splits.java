package lanetide.squads.score;

import java.util.BitSet;

/**
 * Which leaves are splits: the head pin is down, and at least one pin is down between two or more that stand, as in the
 * 7-9 and the 3-10, or immediately ahead of two or more that stand, as in the 5-6 (USBC Playing Rules, from memory). A
 * set of pins is an integer whose bit 0 stands for pin 1 and whose bit 9 stands for pin 10.
 *
 * <p>Two pins stand together if no place lies between them: neighbours twelve inches apart, and one right behind
 * another, as in the 2-8. A leave is a split if it falls apart into groups of pins that stand together, or if two
 * neighbours side by side stand without the pin ahead of both.
 */
public final class Splits {
    private static final int PINS = 10;
    private static final int[] ROW = {0, 1, 1, 2, 2, 2, 3, 3, 3, 3};

    /** Place across the lane, in half spaces. */
    private static final int[] ACROSS = {0, -1, 1, -2, 0, 2, -3, -1, 1, 3};

    private static final BitSet SPLITS = splits();

    private Splits() {}

    /**
     * Whether a leave is a split.
     *
     * @param standing pins left by a ball at a full rack
     * @return whether they are a split
     */
    public static boolean isSplit(int standing) {
        return SPLITS.get(standing);
    }

    private static BitSet splits() {
        BitSet splits = new BitSet(1 << PINS);
        for (int standing = 1; standing < 1 << PINS; standing++) {
            boolean headPinStands = has(standing, 0);
            splits.set(standing, !headPinStands && (fallsApart(standing) || pinAheadIsDown(standing)));
        }
        return splits;
    }

    private static boolean fallsApart(int standing) {
        int reached = Integer.lowestOneBit(standing);
        int before = 0;
        while (reached != before) {
            before = reached;
            for (int pin = 0; pin < PINS; pin++) {
                if (has(standing, pin) && standsWithAny(pin, before)) {
                    reached |= 1 << pin;
                }
            }
        }
        return reached != standing;
    }

    private static boolean standsWithAny(int pin, int others) {
        for (int other = 0; other < PINS; other++) {
            if (has(others, other) && standTogether(pin, other)) {
                return true;
            }
        }
        return false;
    }

    private static boolean standTogether(int pin, int other) {
        int rows = Math.abs(ROW[pin] - ROW[other]);
        int across = Math.abs(ACROSS[pin] - ACROSS[other]);
        return switch (rows) {
            case 0 -> across <= 2;
            case 1 -> across == 1;
            case 2 -> across == 0;
            default -> false;
        };
    }

    private static boolean pinAheadIsDown(int standing) {
        for (int pin = 1; pin + 1 < PINS; pin++) {
            boolean sideBySide = ROW[pin] == ROW[pin + 1] && has(standing, pin) && has(standing, pin + 1);
            if (sideBySide && !has(standing, ahead(pin))) {
                return true;
            }
        }
        return false;
    }

    /** The pin ahead of a pin and its right-hand neighbour. */
    private static int ahead(int pin) {
        return pin - ROW[pin];
    }

    private static boolean has(int pins, int pin) {
        return ((pins >> pin) & 1) != 0;
    }
}
