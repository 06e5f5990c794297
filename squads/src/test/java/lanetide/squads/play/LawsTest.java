package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.squads.model.Event;
import lanetide.squads.model.Laws;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.StudyResult;
import org.junit.jupiter.api.Test;

/** An event is played under the laws it names. */
class LawsTest {
    private static final long SEED = 5;
    private static final Event USUAL = Events.event(Events.centre(2), Events.stay(2, 2, 2), Events.groups(2, 2));

    @Test
    void whereBallsMoveNoOilEveryLaneStaysAsItWasLaid() {
        StudyResult result = play(new Laws(FrictionModel.MIXED_LUBRICATION, SplitModel.NONE));

        double laidMl = USUAL.pattern().volumeMl();
        assertThat(result.first().lanes()).allSatisfy(lane -> {
            assertThat(lane.volumeMl()).isEqualTo(result.first().lanes().get(0).volumeMl());
            assertThat(lane.volumeMl()).isCloseTo(laidMl, org.assertj.core.api.Assertions.within(1e-9));
            assertThat(lane.carrydownMl()).isZero();
        });
        assertThat(result.first().oil().wipedMl()).isZero();
    }

    @Test
    void everyLawGivesAnotherDayAndLosesNoOil() {
        StudyResult usual = play(Laws.USUAL);
        for (FrictionModel friction : FrictionModel.values()) {
            for (SplitModel split : SplitModel.values()) {
                Laws laws = new Laws(friction, split);
                StudyResult result = play(laws);

                assertThat(result.first().oil().relativeError()).as("%s", laws).isLessThan(1e-9);
                assertThat(result.equals(usual)).as("%s", laws).isEqualTo(laws.equals(Laws.USUAL));
            }
        }
    }

    private static StudyResult play(Laws laws) {
        return EventStudy.run(USUAL.withLaws(laws), SEED, 1, 1, done -> {});
    }
}
