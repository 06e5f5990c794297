package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.play.Events;
import lanetide.squads.rotation.design.Ring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Events that are played on and on, by hand: nothing of them is played here. */
class LongBlockTest {
    private static final long START_MS = 36_000_000;

    /** Squad A moves round two pairs for two games, squad B stays on them for one. */
    private static Event event() {
        return Fixtures.event(
                "week",
                Events.centre(2),
                Events.PATTERN,
                List.of(
                        squad("A", START_MS, Conditioning.STRIP_AND_OIL),
                        squad("B", 2 * START_MS, Conditioning.OIL_OVER)),
                List.of(new Ring(1, 1).plan(2, 2, 2), Events.stay(2, 2, 1)),
                PaceOfPlay.USUAL);
    }

    private static Squad squad(String id, long startMs, Conditioning conditioning) {
        List<Group> groups = IntStream.rangeClosed(1, 2)
                .mapToObj(group -> new Group(String.valueOf(group), List.of(Events.bowler(id + group))))
                .toList();
        return Events.squad(id, startMs, conditioning, groups);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 2", "4, 3", "5, 3", "6, 4"})
    void squadsComeInTurnUntilAPairHasSeenSoManyGames(int games, int squads) {
        assertThat(LongBlock.onOneOiling(event(), games).event().squads()).hasSize(squads);
    }

    @Test
    void onOneOilingOnlyTheFirstSquadHasItsLanesOiled() {
        Event block = LongBlock.onOneOiling(event(), 5).event();

        assertThat(block.squads())
                .extracting(Squad::conditioning)
                .containsExactly(Conditioning.STRIP_AND_OIL, Conditioning.NONE, Conditioning.NONE);
        assertThat(block.squads()).extracting(Squad::id).containsExactly("1", "2", "3");
        assertThat(block.squads()).extracting(Squad::startMs).containsExactly(START_MS, START_MS + 1, START_MS + 2);
        assertThat(block.plans()).extracting(plan -> plan.rotation().games()).containsExactly(2, 1, 2);
    }

    /** Each has luck of his own, since luck goes by names. */
    @Test
    void whoComesAgainIsAnother() {
        Event block = LongBlock.onOneOiling(event(), 5).event();

        assertThat(block.squads().stream().flatMap(squad -> squad.everybody().stream()))
                .extracting(Bowler::id)
                .containsExactly("1/A/A1", "1/A/A2", "2/B/B1", "2/B/B2", "3/A/A1", "3/A/A2");
        assertThat(block.squads().get(2).groups()).extracting(Group::id).containsExactly("1", "2");
    }

    @Test
    void anAgeCountsTheGamesOfAllSquadsOnThePair() {
        LongBlock block = LongBlock.onOneOiling(event(), 5);

        assertThat(ages(block, 0)).containsExactly(0, 1);
        assertThat(ages(block, 1)).containsExactly(2);
        assertThat(ages(block, 2)).containsExactly(3, 4);
    }

    @ParameterizedTest
    @CsvSource({"STRIP_AND_OIL, 0, 0", "OIL_OVER, 0, 0", "NONE, 2, 4"})
    void theFirstSquadComesThreeTimesAndOilMakesThePairNew(Conditioning how, int second, int third) {
        LongBlock block = LongBlock.repeated(event(), how);

        assertThat(block.event().squads())
                .extracting(Squad::conditioning)
                .containsExactly(Conditioning.STRIP_AND_OIL, how, how);
        assertThat(block.event().squads().get(2).everybody())
                .extracting(Bowler::id)
                .containsExactly("3/A/A1", "3/A/A2");
        assertThat(ages(block, 0)).containsExactly(0, 1);
        assertThat(ages(block, 1)).containsExactly(second, second + 1);
        assertThat(ages(block, 2)).containsExactly(third, third + 1);
    }

    @Test
    void theFirstSquadCanBeLeftOut() {
        LongBlock block = LongBlock.repeated(event(), Conditioning.OIL_OVER).withoutTheFirst();

        assertThat(ages(block, 0)).containsExactly(Integer.MAX_VALUE, Integer.MAX_VALUE);
        assertThat(ages(block, 1)).containsExactly(0, 1);
        assertThat(ages(block, 2)).containsExactly(0, 1);
    }

    /** What a squad's two groups meet in their games, which is the same, each on a pair. */
    private static List<Integer> ages(LongBlock block, int squad) {
        List<List<Integer>> byGroup = IntStream.range(0, 2)
                .mapToObj(group -> IntStream.range(
                                0, block.event().plans().get(squad).rotation().games())
                        .mapToObj(game -> block.age(squad, group, game))
                        .toList())
                .toList();
        assertThat(byGroup.get(0)).isEqualTo(byGroup.get(1));
        return byGroup.get(0);
    }
}
