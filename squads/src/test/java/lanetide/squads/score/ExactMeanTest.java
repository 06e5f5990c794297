package lanetide.squads.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * The mean score of a bowler each of whose balls knocks down any number of the standing pins with the same chance, in
 * exact rationals over the cards of this program. What a frame is worth does not depend on what came before it, so the
 * mean is nine times that of a first frame and once that of a tenth.
 */
class ExactMeanTest {
    private static final List<Integer> NINE_FRAMES_WITHOUT_PINS = java.util.Collections.nCopies(18, 0);

    /** 2787355/30492 was worked out in exact rationals apart from this program. */
    @Test
    void theMeanOfBallsThatFellAnyNumberOfPinsIsExact() {
        BigFraction first = frameWorth(List.of(), 1);
        BigFraction tenth = frameWorth(NINE_FRAMES_WITHOUT_PINS, 10);

        assertThat(first.multiply(9).add(tenth)).isEqualTo(new BigFraction(2_787_355, 30_492));
    }

    /** Mean worth of a frame, over all balls until it is decided. */
    private static BigFraction frameWorth(List<Integer> balls, int frame) {
        TenpinScore card = new TenpinScore();
        balls.forEach(card::roll);
        List<Integer> totals = card.frameTotals();
        if (totals.size() >= frame) {
            int before = frame == 1 ? 0 : totals.get(frame - 2);
            return new BigFraction(totals.get(frame - 1) - before);
        }
        BigFraction sum = BigFraction.ZERO;
        for (int pins = 0; pins <= card.pinsStanding(); pins++) {
            List<Integer> longer = new ArrayList<>(balls);
            longer.add(pins);
            sum = sum.add(frameWorth(longer, frame));
        }
        return sum.divide(card.pinsStanding() + 1);
    }
}
