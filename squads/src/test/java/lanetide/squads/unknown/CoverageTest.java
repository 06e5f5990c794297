package lanetide.squads.unknown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.squads.unknown.CoverageStudy.Judged;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A tenth of the study whose table stands in the README, with the same seeds. */
@Tag("slow")
class CoverageTest {
    private static final int TENTH = 20;
    /** A right method holds fewer of twenty once in 400 times (binomial, 0.9). */
    private static final int FEWEST_OF_TWENTY = 14;

    @Test
    void intervalsForNineInTenHoldNineInTenTruthsAndThoseOfLuckAloneDoNot() {
        List<Judged> judged = new CoverageStudy(FrictionModel.MIXED_LUBRICATION, true).run(0, TENTH);
        for (int q = 0; q < SmallEvent.QUANTITIES.size(); q++) {
            int at = q;
            assertThat(judged.stream().filter(one -> one.holds(at)).count())
                    .as(SmallEvent.QUANTITIES.get(q))
                    .isGreaterThanOrEqualTo(FEWEST_OF_TWENTY);
        }
        // Four quantities of a truth are not independent: as if they were two.
        assertThat(held(judged, false)).isBetween(64L, 80L);
        assertThat(held(judged, true)).isLessThan(40);
    }

    @Test
    void theyHoldTruthsUnderTheOtherLawOfFrictionToo() {
        List<Judged> judged = new CoverageStudy(FrictionModel.EXPONENTIAL_STRIBECK, true)
                .run(CoverageStudy.TRUTHS, CoverageStudy.TRUTHS + CoverageStudy.OTHER_TRUTHS / 10);
        assertThat(held(judged, false)).isGreaterThanOrEqualTo(12);
    }

    private static long held(List<Judged> judged, boolean luckAlone) {
        return judged.stream()
                .flatMap(one -> IntStream.range(0, SmallEvent.QUANTITIES.size())
                        .mapToObj(q -> luckAlone ? one.luckAloneHolds(q) : one.holds(q)))
                .filter(held -> held)
                .count();
    }
}
