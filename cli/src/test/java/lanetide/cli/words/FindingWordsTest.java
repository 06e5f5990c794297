package lanetide.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lanetide.squads.rotation.Collision;
import lanetide.squads.rotation.RepeatedVisit;
import lanetide.squads.rotation.SolePredecessor;
import org.junit.jupiter.api.Test;

class FindingWordsTest {
    private static final FindingWords WORDS = new FindingWords(
            group -> "ABCD".substring(group, group + 1), pair -> "lanes " + (2 * pair + 1) + "-" + (2 * pair + 2));

    @Test
    void aFindingNamesGamesFromOneAndPairsAndGroupsAsTheyAreCalled() {
        assertThat(WORDS.sentence(new Collision(1, 2, List.of(0, 2, 3))))
                .isEqualTo("Game 2: A and C and D are sent to lanes 5-6 together.");
        assertThat(WORDS.sentence(new RepeatedVisit(1, 0, 0, 3)))
                .isEqualTo("Game 4: B is back on lanes 1-2, where it bowled in game 1.");
        assertThat(WORDS.sentence(new SolePredecessor(0, 1, 3)))
                .isEqualTo("Each of the 3 times A takes over a pair from another group, it is from B.");
    }
}
