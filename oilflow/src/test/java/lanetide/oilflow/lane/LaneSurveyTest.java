package lanetide.oilflow.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.lane.LaneSurvey.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LaneSurveyTest {
    private static final double WIDTH_M = LaneGeometry.WIDTH_M;
    private static final LaneSurvey LANE = new LaneSurvey(
            List.of(new Station(3, 0.0008, 0.0004), new Station(9, -0.0002, -0.0010), new Station(15, 0.0005, 0)));

    @Test
    void overTheWidthTheSlopesAddUpToTheTiltAndOverHalfOfItToTheCrownAsWell() {
        assertThat(rise(0, WIDTH_M, 3)).isCloseTo(0.0008, within(1e-12));
        assertThat(rise(0, WIDTH_M / 2, 3)).isCloseTo(0.0008 / 2 + 0.0004, within(1e-9));
        assertThat(rise(0, WIDTH_M / 2, 9)).isCloseTo(-0.0001 - 0.0010, within(1e-9));
    }

    @Test
    void betweenStationsTheShapeLiesOnStraightLinesAndBeyondThemItStays() {
        assertThat(rise(0, WIDTH_M, 6)).isCloseTo(0.0003, within(1e-12));
        assertThat(rise(0, WIDTH_M, 0)).isCloseTo(0.0008, within(1e-12));
        assertThat(rise(0, WIDTH_M, 18)).isCloseTo(0.0005, within(1e-12));
        assertThat(LANE.riseAlong(0.3, 1)).isZero();
        assertThat(LANE.riseAlong(0.3, 17)).isZero();
    }

    /** Both slopes are those of one surface: around a loop they add up to nothing. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.9, 4, 8", "0.2, 0.5, 5, 14", "0, 1.05, 3.5, 16"})
    void aroundALoopTheRisesAddUpToNothing(double fromM, double toM, double nearM, double farM) {
        double loop =
                rise(fromM, toM, nearM) + ahead(toM, nearM, farM) - rise(fromM, toM, farM) - ahead(fromM, nearM, farM);

        assertThat(loop).isCloseTo(0, within(1e-7));
        assertThat(Math.abs(ahead(toM, nearM, farM))).isGreaterThan(1e-5);
    }

    @Test
    void aLaneByChanceStaysWithinItsLimit() {
        double[] luck = {0, 1, -1, 3, -3, 0.5, 2, -0.1};
        int[] next = {0};
        LaneSurvey lane = LaneSurvey.drawn(0.0005, LaneSurvey.LIMIT_M, () -> luck[next[0]++]);

        assertThat(lane.stations()).hasSize(4);
        assertThat(lane.stations().get(0)).isEqualTo(new Station(0, 0, 0.0005));
        assertThat(lane.stations().get(1).crownM()).isEqualTo(LaneSurvey.LIMIT_M);
        assertThat(lane.stations().get(2).tiltM()).isEqualTo(-LaneSurvey.LIMIT_M);
        assertThat(lane.isFlat()).isFalse();
    }

    @Test
    void aSurveyWithoutOrderIsRefused() {
        assertThatThrownBy(() -> new LaneSurvey(List.of())).hasMessageContaining("no station");
        assertThatThrownBy(() -> new LaneSurvey(List.of(new Station(3, 0, 0), new Station(3, 0, 0))))
                .hasMessageContaining("distance (m) of station 2");
        assertThatThrownBy(() -> new Station(3, 0.01, 0)).hasMessageContaining("cross tilt (m) is 0.01");
    }

    private static double rise(double fromM, double toM, double alongM) {
        int steps = 2000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += LANE.riseAcross(fromM + (i + 0.5) * (toM - fromM) / steps, alongM) * (toM - fromM) / steps;
        }
        return sum;
    }

    private static double ahead(double fromRightM, double fromM, double toM) {
        int steps = 20_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += LANE.riseAlong(fromRightM, fromM + (i + 0.5) * (toM - fromM) / steps) * (toM - fromM) / steps;
        }
        return sum;
    }
}
