package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import lanetide.squads.model.Conditioning;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.PaceOfPlay;
import org.junit.jupiter.api.Test;

class PlayEstimateTest {
    private final PlayEstimate estimate = new PlayEstimate(PaceOfPlay.USUAL);

    /** By hand: 2 bowlers, 1 game: (10 x 36 s + 2 x 28 s) x 2 bowlers / 2 lanes = 416 s, after 600 s of practice. */
    @Test
    void theFastestSquadThrowsStrikesOnly() {
        assertThat(estimate.fastestMs(2, 1, 600_000)).isEqualTo(1_016_000);
    }

    /**
     * Source: the governing body's tournament of 2013 started squads of six bowlers a pair and six games every four hours,
     * oiling included (7:00, 11:00, 15:00, 19:00), so that the play itself takes less.
     */
    @Test
    void aUsualSquadOfSixOnAPairPlaysSixGamesWithinThePublishedFourHours() {
        long usualMs = estimate.usualMs(6, 6, 600_000);

        assertThat(usualMs).isBetween(3 * 3_600_000L, 4 * 3_600_000L);
        assertThat(estimate.fastestMs(6, 6, 600_000)).isLessThan(usualMs);
    }

    @Test
    void twoMachinesHalveTheTimeToOil() {
        assertThat(new LaneMachines(1, 40_000, 50_000).durationMs(8, Conditioning.STRIP_AND_OIL))
                .isEqualTo(8 * 90_000);
        assertThat(new LaneMachines(2, 40_000, 50_000).durationMs(8, Conditioning.OIL_OVER))
                .isEqualTo(4 * 50_000);
    }
}
