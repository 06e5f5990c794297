package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.LaidRatio;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.LaneSurvey.Station;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
import lanetide.squads.model.LaneShapes;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.StudyResult;
import org.junit.jupiter.api.Test;

/** An event is played on the lanes as they are shaped. */
class TopographyTest {
    private static final long SEED = 5;
    private static final Centre LEVEL = Events.centre(2);
    private static final LaneSurvey STEEP =
            new LaneSurvey(List.of(new Station(0, -LaneSurvey.LIMIT_M, -LaneSurvey.LIMIT_M)));

    @Test
    void oneLaneOutOfLevelChangesTheDayAndLosesNoOil() {
        StudyResult level = play(LEVEL);
        StudyResult steep = play(shaped(Map.of(1, STEEP)));

        assertThat(steep).isNotEqualTo(level).isEqualTo(play(shaped(Map.of(1, STEEP))));
        assertThat(steep.first().oil().relativeError()).isLessThan(1e-9);
        assertThat(play(shaped(Map.of()))).isEqualTo(level);
    }

    @Test
    void aMeasuredLaneKeepsItsShapeAndChangesNoOther() {
        RandomStreams streams = new RandomStreams(SEED);
        double spreadM = 0.0003;
        Map<Integer, Topography> drawn = LaneShapes.of(LEVEL.pairs(), Map.of(), spreadM, LaneSurvey.LIMIT_M, streams);
        Map<Integer, Topography> oneMeasured =
                LaneShapes.of(LEVEL.pairs(), Map.of(2, STEEP), spreadM, LaneSurvey.LIMIT_M, streams);

        assertThat(drawn).containsOnlyKeys(1, 2, 3, 4);
        assertThat(drawn.get(1)).isNotEqualTo(drawn.get(2));
        assertThat(oneMeasured.get(2)).isEqualTo(STEEP);
        assertThat(List.of(oneMeasured.get(1), oneMeasured.get(3), oneMeasured.get(4)))
                .isEqualTo(List.of(drawn.get(1), drawn.get(3), drawn.get(4)));
        assertThat(LaneShapes.of(LEVEL.pairs(), Map.of(2, STEEP), 0, LaneSurvey.LIMIT_M, streams))
                .isEqualTo(Map.of(1, Topography.FLAT, 2, STEEP, 3, Topography.FLAT, 4, Topography.FLAT));
    }

    @Test
    void aMachineThatLaysLessOnALaneLeavesLessThereAndTheAccountKnows() {
        Centre short2 = LEVEL.withLanes(Map.of(), LEVEL.machines().laying(Map.of(2, LaidRatio.even(0.9))));
        StudyResult even = play(LEVEL);
        StudyResult uneven = play(short2);
        double lane = Events.PATTERN.volumeMl();
        assertThat(uneven.first().oil().appliedMl())
                .isCloseTo(even.first().oil().appliedMl() - 0.1 * lane, within(1e-9));
        assertThat(uneven.first().oil().relativeError()).isLessThan(1e-12);
    }

    private static Centre shaped(Map<Integer, Topography> shapes) {
        return new Centre(LEVEL.pairs(), LEVEL.surface(), LEVEL.machines(), shapes, List.of());
    }

    private static StudyResult play(Centre centre) {
        Event event = Events.event(centre, Events.stay(2, 2, 2), Events.groups(2, 2));
        return EventStudy.run(event, SEED, 1, 1, done -> {});
    }
}
