package lanetide.squads.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.film.ByStretch;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.play.Events;
import lanetide.squads.study.WearStudy.Wear;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class WearStudyTest {
    private static final int SETS = 2;
    private static final List<Group> FOUR = Events.oneGroup(
            Events.bowler("a", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"),
            Events.bowler("b", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"),
            Events.bowler("c", Hand.LEFT, "stroker", Events.level("league"), "medium-reactive"),
            Events.bowler("d", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"));

    private static List<Wear> onOldOil;

    @BeforeAll
    static void look() {
        onOldOil = wear(Conditioning.NONE, SETS, 2);
    }

    private static List<Wear> wear(Conditioning beforeSecond, int sets, int threads) {
        Event event = Events.event(
                Events.centre(1),
                Events.stay(1, 1, 4),
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, FOUR),
                Events.squad("B", 2 * Events.START_MS, beforeSecond, FOUR));
        return WearStudy.run(new PossibleEvents(event, sets), 5, Execution.on(threads), done -> {});
    }

    @Test
    void aLateSquadOnOldOilHasMoreWearThanTheOneBeforeAndOnFreshOilAsMuch() {
        List<Wear> old = onOldOil;
        assertThat(old).extracting(Wear::squad).containsExactly("A", "A", "B", "B");
        assertThat(old).extracting(Wear::hand).containsExactly(Hand.LEFT, Hand.RIGHT, Hand.LEFT, Hand.RIGHT);
        ByStretch first = old.get(1).boards();
        ByStretch second = old.get(3).boards();
        assertThat(second.midLane()).isGreaterThan(first.midLane() + 0.2);
        assertThat(second.pastEnd()).isLessThan(first.pastEnd());

        ByStretch fresh = wear(Conditioning.STRIP_AND_OIL, SETS, 2).get(3).boards();
        assertThat(fresh.midLane()).isCloseTo(first.midLane(), within(0.3));
    }

    @Test
    void thePartsMakeTheWholeAndTheIntervalHoldsTheMean() {
        for (Wear one : onOldOil) {
            for (ByStretch parts : List.of(one.boards(), one.strikes())) {
                assertThat(parts.heads() + parts.midLane() + parts.pastEnd() + parts.together())
                        .isCloseTo(parts.all(), within(1e-9));
            }
            assertThat(one.allStrikesCi90().orElseThrow().low())
                    .isLessThanOrEqualTo(one.strikes().all());
            assertThat(one.allStrikesCi90().orElseThrow().high())
                    .isGreaterThanOrEqualTo(one.strikes().all());
        }
    }

    @Test
    void itDoesNotHangOnTheThreadsAndOnePlayingHasNoInterval() {
        assertThat(wear(Conditioning.NONE, SETS, 1)).isEqualTo(onOldOil);
        assertThat(wear(Conditioning.NONE, 1, 1))
                .allSatisfy(one -> assertThat(one.allStrikesCi90()).isEmpty());
    }
}
