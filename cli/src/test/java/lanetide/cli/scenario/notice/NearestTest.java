package lanetide.cli.scenario.notice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    /** Source: worked examples of the edit distance (Wagner and Fischer, Journal of the ACM 21, 1974), from memory. */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "sunday, saturday, 3", "length, length, 0", "lenght, length, 2", "'', abc, 3"})
    void theDistanceIsThatOfTheTextbook(String from, String to, int distance) {
        assertThat(Nearest.distance(from, to)).isEqualTo(distance);
        assertThat(Nearest.distance(to, from)).isEqualTo(distance);
    }

    @Test
    void aNameFarFromAllOthersHasNoNearest() {
        assertThat(Nearest.to("zebra", List.of("length", "volume"))).isEmpty();
    }

    @Test
    void capitalsMakeNoDifference() {
        assertThat(Nearest.to("PERSQUAD", List.of("hands", "perSquad"))).contains("perSquad");
    }

    @Test
    void atMostHalfOfTheLettersOfANameMayBeOthers() {
        assertThat(Nearest.to("stxx", List.of("stay"))).contains("stay");
        assertThat(Nearest.to("sxxx", List.of("stay"))).isEmpty();
        assertThat(Nearest.to("xxops", List.of("stops"))).contains("stops");
        assertThat(Nearest.to("xxxps", List.of("stops"))).isEmpty();
    }

    @Test
    void ofSeveralNamesTheNearestIsMeantAndOfEqualOnesTheFirst() {
        assertThat(Nearest.to("games", List.of("gates", "gamer", "games"))).contains("games");
        assertThat(Nearest.to("gamex", List.of("gates", "gamer", "games"))).contains("gamer");
        assertThat(Nearest.question("gamex", List.of("gates", "games"))).isEqualTo(" Did you mean `games`?");
        assertThat(Nearest.question("zebra", List.of("gates", "games"))).isEmpty();
    }
}
