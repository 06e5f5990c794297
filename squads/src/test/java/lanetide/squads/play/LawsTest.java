package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.model.Knowledge;
import lanetide.squads.model.Laws;
import lanetide.squads.result.ShotBowled;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.StudyResult;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.Observers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    /**
     * On oil that hardly anybody has played on, lanes that stay are no other lanes: ball by ball, with the same luck.
     */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"plastic", "urethane", "strong-reactive"})
    void theFirstBallsRunOnLanesThatStayAsOnLanesThatChange(String cover) {
        Event event = Events.onePair(1, Events.bowler("a", Hand.RIGHT, "tweener", Events.level("scratch"), cover));
        List<ShotBowled> changing = shots(event);
        List<ShotBowled> staying = shots(event.withLaws(Laws.USUAL.withLanesThatStay()));

        List<Double> apart = new ArrayList<>();
        for (ShotBowled shot : changing) {
            // A ball is clean once: the first that is thrown on the changing lanes runs otherwise.
            staying.stream()
                    .filter(other -> shot.frame() > 2
                            && shot.frame() < 10
                            && other.frame() == shot.frame()
                            && other.standing() == Rack.FULL
                            && shot.standing() == Rack.FULL
                            && shot.path().reachedPins())
                    .findFirst()
                    .ifPresent(other -> apart.add(
                            Math.abs(shot.path().arrivalBoard() - other.path().arrivalBoard())));
        }
        System.out.println("APART " + cover + " " + apart);
        assertThat(apart).hasSizeGreaterThan(4);
        assertThat(apart).allSatisfy(boards -> assertThat(boards).isLessThan(0.4));
    }

    private static List<ShotBowled> shots(Event event) {
        List<ShotBowled> shots = new ArrayList<>();
        Physics physics = Physics.under(event.laws());
        StartingLines lines = new StartingLines(event, physics);
        Setup setup = Setup.of(
                event.withKnowledge(Knowledge.NOTHING),
                physics,
                lines,
                LuckSource.byFrame(new RandomStreams(SEED).forReplication(0)));
        new TournamentSimulation(setup.watchedBy(new Observers(LaneObserver.NONE, shots::add, List.of()))).play();
        return shots;
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
