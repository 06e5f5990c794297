package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Event;
import lanetide.squads.model.Knowledge;
import lanetide.squads.model.Scoring;
import lanetide.squads.result.EventResult;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who learns lies between who never moves and who knows the oil. */
class StrategiesTest {
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"elite", "scratch", "league", "casual"})
    void onAverageWhoLearnsLiesBetweenTheBoundsAtEveryLevel(String level) {
        double[] sums = new double[3];
        for (String style : STYLES) {
            double[] scores = Strategies.scores(style, level, 24, 10);
            for (int i = 0; i < scores.length; i++) {
                sums[i] += scores[i];
            }
        }

        assertThat(sums).isSorted().doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(strings = {"stroker", "tweener", "power"})
    void onWornLanesLearningPaysAndKnowingMore(String style) {
        double[] scores = Strategies.scores(style, "elite", 24, 4);

        assertThat(scores).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void anEventIsPlayedByWhatItsBowlersGoBy() {
        Event usual = Events.onePair(8, Events.bowler("a"), Events.bowler("b"), Events.mixed("c", 1));

        EventResult learning = Events.play(playedBy(usual, Knowledge.SEEN_AND_TOLD), 1);
        EventResult knowing = Events.play(playedBy(usual, Knowledge.EVERYTHING), 1);
        EventResult staying = Events.play(playedBy(usual, Knowledge.NOTHING), 1);

        assertThat(List.of(learning.oil(), knowing.oil(), staying.oil())).doesNotHaveDuplicates();
        assertThat(learning).isEqualTo(Events.play(usual, 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"EVERYTHING", "NOTHING"})
    void theBoundsArePlayedToTheSameBytesToo(Knowledge knowledge) {
        Event event = playedBy(Events.onePair(2, Events.bowler("a"), Events.mixed("b", 3)), knowledge);

        assertThat(Events.play(event, 4)).isEqualTo(Events.play(event, 4));
    }

    private static Event playedBy(Event event, Knowledge knowledge) {
        return Fixtures.withBowling(event, new Bowling(knowledge, 0, Scoring.USUAL));
    }
}
