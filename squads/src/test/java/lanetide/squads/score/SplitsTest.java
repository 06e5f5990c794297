package lanetide.squads.score;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The definition and its three examples (7-9, 3-10, 5-6) are those of the USBC Playing Rules, from memory; the rest is
 * trade use.
 */
class SplitsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "7-9",
                "3-10",
                "5-6",
                "7-10",
                "4-6",
                "5-7",
                "5-10",
                "2-7",
                "4-10",
                "6-7",
                "8-10",
                "4-5",
                "7-8",
                "9-10",
                "4-9",
                "6-8",
                "3-7",
                "2-10",
                "4-6-7-10",
                "4-6-7-8-10",
                "4-7-10",
                "6-7-10",
                "4-7-9",
                "3-6-7-10",
                "2-4-10",
                "2-4-8-10",
                "5-7-10",
                "8-9"
            })
    void leavesWithAGapAreSplits(String pins) {
        assertThat(Splits.isSplit(set(pins))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "10",
                "7",
                "2-8",
                "3-9",
                "2-4",
                "6-10",
                "4-7",
                "3-6-10",
                "2-4-5",
                "2-4-5-8",
                "3-5-6-9",
                "3-6",
                "2-4-7",
                "1-2-10",
                "1-7-10",
                "1-2-4-10",
                "1-5",
                "1-2-3-4-5-6-7-8-9-10",
                "3-5-6",
                "4-7-8"
            })
    void singlePinsClustersAndLeavesWithTheHeadPinAreNot(String pins) {
        assertThat(Splits.isSplit(set(pins))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {0})
    void anEmptyDeckIsNoSplit(int pins) {
        assertThat(Splits.isSplit(pins)).isFalse();
    }

    /** Every leave and its mirror image are alike. */
    @ParameterizedTest
    @ValueSource(ints = 1024)
    void aMirroredSplitIsASplit(int leaves) {
        for (int pins = 0; pins < leaves; pins++) {
            assertThat(Splits.isSplit(mirrored(pins)))
                    .as("pins %s", Integer.toBinaryString(pins))
                    .isEqualTo(Splits.isSplit(pins));
        }
    }

    private static int set(String text) {
        int pins = 0;
        for (String pin : text.split("-", -1)) {
            pins |= 1 << (Integer.parseInt(pin) - 1);
        }
        return pins;
    }

    private static int mirrored(int pins) {
        int[] image = {1, 3, 2, 6, 5, 4, 10, 9, 8, 7};
        int mirrored = 0;
        for (int pin = 0; pin < image.length; pin++) {
            if (((pins >> pin) & 1) != 0) {
                mirrored |= 1 << (image[pin] - 1);
            }
        }
        return mirrored;
    }
}
