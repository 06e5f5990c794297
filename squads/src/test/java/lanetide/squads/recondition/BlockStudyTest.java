package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Laws;
import lanetide.squads.play.Events;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Playing;
import lanetide.squads.study.PossibleEvents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The smallest blocks there are: two bowlers on a pair, one game a squad. */
class BlockStudyTest {
    private static final int GAMES = 2;
    private static final long SEED = 7;

    private static Event event(SplitModel split) {
        return Events.onePair(
                        1,
                        Events.bowler("a", Hand.RIGHT, "tweener", Events.level("league"), "medium-reactive"),
                        Events.bowler("b", Hand.LEFT, "straight", Events.level("league"), "plastic"))
                .withLaws(new Laws(Laws.USUAL.friction(), split));
    }

    private static BlockStudy study(SplitModel split, boolean looks) {
        Event event = event(split);
        return new BlockStudy(new PossibleEvents(event, 2), LongBlock.onOneOiling(event, GAMES), GAMES, looks, SEED);
    }

    private static List<BlockPlaying> played(BlockStudy study, int times) {
        return study.run(times, Execution.on(1), done -> {});
    }

    /** Sets of values come in turn; each luck is played on lanes that change, then on those that do not. */
    @ParameterizedTest
    @CsvSource({"0, 0, 1, 0", "1, 0, 1, 1", "2, 1, 2, 0", "3, 1, 2, 1", "4, 2, 1, 0"})
    void everyLuckIsMetTwice(int number, int luck, int set, int lanes) {
        assertThat(study(SplitModel.FORWARD_ROLL, false).playing(number))
                .isEqualTo(new Playing(number, luck, set, lanes));
    }

    @Test
    void everyStyleIsCountedAtEveryAgeOfTheOil() {
        BlockStudy study = study(SplitModel.FORWARD_ROLL, true);

        List<BlockPlaying> all = played(study, 1);

        assertThat(study.styles()).containsExactly("straight", "tweener");
        assertThat(all).hasSize(1);
        assertThat(all.get(0).games()).isEqualTo(new int[][] {{1, 1}, {1, 1}});
        assertThat(all.get(0).looks()).hasDimensions(2, GAMES + 1);
        assertThat(all.get(0).looks()[0][0]).doesNotContainNull().hasSize(2);
        assertThat(all.get(0).looks()[1][GAMES]).doesNotContainNull();
    }

    /** What a game on older oil is worth differs from playing to playing; lanes that stay are the same for both. */
    @Test
    void whereBallsMoveNoOilNoScoreChangesAndWhereTheyDoSomeDo() {
        List<BlockPlaying> still = played(study(SplitModel.NONE, false), 3);
        List<BlockPlaying> moved = played(study(SplitModel.FORWARD_ROLL, false), 6);

        assertThat(still).hasSize(3).allMatch(one -> Arrays.deepEquals(one.changePins(), new double[GAMES][2]));
        assertThat(moved).anyMatch(one -> !Arrays.deepEquals(one.changePins(), new double[GAMES][2]));
    }

    @Test
    void lanesAreLookedAtOnlyIfThatIsAskedFor() {
        BlockPlaying one = played(study(SplitModel.FORWARD_ROLL, false), 1).get(0);

        assertThat(one.looks()).hasDimensions(2, GAMES + 1);
        assertThat(Arrays.stream(one.looks()).flatMap(Arrays::stream).flatMap(Arrays::stream))
                .containsOnlyNulls();
    }

    @Test
    void howFarItIsIsToldOncePerLuck() {
        List<Integer> told = new ArrayList<>();

        study(SplitModel.NONE, false).run(3, Execution.on(1), told::add);

        assertThat(told).containsExactly(1, 2, 3);
    }

    @Test
    void gamesOnOlderOilThanIsAskedForAreNotCounted() {
        Event event = event(SplitModel.NONE);
        BlockStudy study =
                new BlockStudy(new PossibleEvents(event, 1), LongBlock.onOneOiling(event, 3), 2, false, SEED);

        assertThat(played(study, 1).get(0).games()).isEqualTo(new int[][] {{1, 1}, {1, 1}});
    }

    @Test
    void aSquadThatIsNotLookedAtIsNotCounted() {
        Event event = event(SplitModel.NONE);
        LongBlock block = LongBlock.repeated(event, Conditioning.STRIP_AND_OIL).withoutTheFirst();

        BlockPlaying one = played(new BlockStudy(new PossibleEvents(event, 1), block, 1, false, SEED), 1)
                .get(0);

        assertThat(one.games()).isEqualTo(new int[][] {{2, 2}});
    }
}
