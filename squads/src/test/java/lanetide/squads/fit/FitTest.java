package lanetide.squads.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A twentieth of the study whose table stands in the README, with the same seeds; a tenth would take five minutes. */
@Tag("slow")
class FitTest {
    private static final int TWENTIETH = FitStudy.TRUTHS / 20;
    /** A right method holds fewer of five once in two thousand times (binomial, 0.9). */
    private static final int FEWEST_OF_FIVE = 2;
    /** As if five quantities of a truth were two: fewer than 16 of 25 once in 78 times. */
    private static final int FEWEST_OF_ALL = 16;

    @Test
    void fittedSetsHoldTheTruthAndTellMoreOfTheFilm() {
        List<FitStudy.Judged> judged =
                new FitStudy(Runtime.getRuntime().availableProcessors(), FitStudy.SEED).run(0, TWENTIETH);
        long all = 0;
        for (int q = 0; q < TwoPairs.QUANTITIES.size(); q++) {
            int at = q;
            long held = judged.stream().filter(one -> one.holds(at)).count();
            assertThat(held).as(TwoPairs.QUANTITIES.get(q)).isGreaterThanOrEqualTo(FEWEST_OF_FIVE);
            all += held;
        }
        assertThat(all).isGreaterThanOrEqualTo(FEWEST_OF_ALL);
        assertThat(judged.stream().mapToDouble(one -> one.narrowed(0)).average().orElseThrow())
                .isLessThan(1);
    }
}
