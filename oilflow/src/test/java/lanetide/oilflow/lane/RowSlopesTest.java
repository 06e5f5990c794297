package lanetide.oilflow.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class RowSlopesTest {
    @Test
    void aSurveyedLaneRisesInTheMiddleOfARowAsTheSurveySays() {
        Random random = new Random(3);
        LaneSurvey lane = LaneSurvey.drawn(0.0005, LaneSurvey.LIMIT_M, random::nextGaussian);
        LaneGrid grid = LaneGrid.DEFAULT;
        RowSlopes slopes = new RowSlopes(lane, grid);
        for (int row = 0; row < grid.rows(); row++) {
            double alongM = (row + 0.5) * grid.rowLengthM();
            for (int i = 0; i < 20; i++) {
                double fromRightM = random.nextDouble() * LaneGeometry.WIDTH_M;
                assertThat(slopes.across(row, fromRightM))
                        .isCloseTo(lane.riseAcross(fromRightM, alongM), within(1e-15));
                assertThat(slopes.along(row, fromRightM)).isCloseTo(lane.riseAlong(fromRightM, alongM), within(1e-15));
            }
        }
    }
}
