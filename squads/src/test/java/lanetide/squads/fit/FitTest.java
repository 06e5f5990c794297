package lanetide.squads.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A tenth of the study whose table stands in the README, with the same seeds. */
@Tag("slow")
class FitTest {
    private static final int TENTH = FitStudy.TRUTHS / 10;
    /** A right method holds fewer of ten once in 600 times (binomial, 0.9). */
    private static final int FEWEST_OF_TEN = 6;
    /** As if five quantities of a truth were two: fewer than 36 of 50 once in 89 times (15 of 20). */
    private static final int FEWEST_OF_ALL = 36;

    @Test
    void fittedSetsHoldTheTruthAndTellMoreOfTheFilm() {
        List<FitStudy.Judged> judged =
                new FitStudy(Runtime.getRuntime().availableProcessors(), FitStudy.SEED).run(0, TENTH);
        long all = 0;
        for (int q = 0; q < TwoPairs.QUANTITIES.size(); q++) {
            int at = q;
            long held = judged.stream().filter(one -> one.holds(at)).count();
            assertThat(held).as(TwoPairs.QUANTITIES.get(q)).isGreaterThanOrEqualTo(FEWEST_OF_TEN);
            all += held;
        }
        assertThat(all).isGreaterThanOrEqualTo(FEWEST_OF_ALL);
        assertThat(judged.stream().mapToDouble(one -> one.narrowed(0)).average().orElseThrow())
                .isLessThan(1);
    }
}
