package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.film.LaidRatio;
import lanetide.oilflow.film.Levelling;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.Topography;
import org.junit.jupiter.api.Test;

class LaneInPlayTest {
    private static final int TRACK = 156;
    private static final long HOUR_MS = 3_600_000;

    /** Orchard (1962) with gravity: a lone track on 20 um keeps about half its depth for an hour. */
    @Test
    void aTrackInThickHeadsFillsWhileTheLaneRestsAndNoOilIsLost() {
        LaneInPlay lane = new LaneInPlay(1, LaneGrid.DEFAULT, Topography.FLAT, List.of());
        OilPattern heavy = OilPattern.of("heavy heads", 12, 60, 3).falling(2, 0.05);
        lane.oil(heavy, OilFilm.fresh(heavy, LaneGrid.DEFAULT), LaidRatio.WHOLE);
        double evenUm = lane.film().thicknessUm(TRACK, 0);
        lane.film().cellsUm()[TRACK * LaneGrid.DEFAULT.rows()] -= 4;
        double wornMl = lane.film().volumeMl();
        LaneInPlay.rest(List.of(lane), Levelling.usual(), HOUR_MS);
        assertThat(evenUm - lane.film().thicknessUm(TRACK, 0)).isBetween(1.0, 3.0);
        assertThat(lane.account().onLanesMl()).isCloseTo(wornMl, within(1e-9));
    }
}
