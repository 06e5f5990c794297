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
        FaultStudy study = new FaultStudy(Runtime.getRuntime().availableProcessors());
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
}
