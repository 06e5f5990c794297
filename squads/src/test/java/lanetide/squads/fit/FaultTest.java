package lanetide.squads.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The study whose table stands in the README, with the same seeds: the whole of the clean days, a half of the faults.
 */
@Tag("slow")
class FaultTest {
    private static final int HALF = FaultStudy.FAULTY / 2;

    @Test
    void faultyTapesAreNamedAndCleanOnesLeftAlone() {
        FaultStudy study = FaultStudy.ofWornTapes(Runtime.getRuntime().availableProcessors());
        assertThat(study.accused(FaultStudy.CLEAN)).isBetween(1, FaultStudy.CLEAN / 50);
        Map<String, FaultStudy.Tally> faults = study.faults(HALF);
        for (String kind : new String[] {"OneReading", "OtherTime", "OtherUnit", "SidesSwapped"}) {
            FaultStudy.Tally tally = faults.get(kind);
            assertThat(tally.tellable()).as(kind).isGreaterThan(HALF * 4 / 5);
            // Nine tenths are asked; a right method names fewer than four fifths of forty once in fifty tries.
            assertThat(tally.named()).as(kind).isGreaterThanOrEqualTo(tally.tellable() * 4 / 5);
            assertThat(tally.accusedOfAnother()).as(kind).isLessThanOrEqualTo(2);
        }
    }

    @Test
    void anotherPatternUnderFreshTapesIsToldLongerOrShorterAndCleanOnesAreLeftAlone() {
        FaultStudy study = FaultStudy.ofFreshTapes(Runtime.getRuntime().availableProcessors());
        assertThat(study.accused(FaultStudy.CLEAN)).isBetween(0, FaultStudy.CLEAN / 50);
        Map<String, FaultStudy.Tally> patterns = study.otherPatterns(HALF);
        FaultStudy.Tally direction = patterns.get("OtherPattern, longer or shorter");
        assertThat(direction.tellable()).isBetween(HALF * 7 / 10, HALF - 1);
        assertThat(direction.named()).isGreaterThanOrEqualTo(direction.tellable() * 9 / 10);
        // By its length it was named in 55 of 87; two deviations of a binomial of forty are six to either side.
        FaultStudy.Tally length = patterns.get("OtherPattern");
        assertThat(length.named()).isBetween(19, 33);
    }
}
