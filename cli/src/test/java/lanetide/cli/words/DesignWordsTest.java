package lanetide.cli.words;

import static lanetide.cli.words.DesignWords.describe;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lanetide.squads.rotation.design.Counter;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.Patterson;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.Searched;
import lanetide.squads.rotation.design.Shuffled;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.rotation.design.Turning;
import org.junit.jupiter.api.Test;

class DesignWordsTest {
    @Test
    void everyDesignIsToldInWords() {
        assertThat(describe(new Ring(2, 1))).isEqualTo("After every game everybody moves 2 pairs right.");
        assertThat(describe(new Ring(-1, 2))).isEqualTo("After every 2 games everybody moves 1 pair left.");
        assertThat(describe(new Counter(1))).contains("2nd, 4th, 6th", "move 1 pair right", "others 1 pair left");
        assertThat(describe(new Stay())).contains("stays");
        assertThat(describe(new Turning(2))).contains("moves 2 pairs right", "turns back");
        assertThat(describe(new Patterson())).contains("another distance");
        assertThat(describe(new Searched(7))).contains("search", "seed 7");
        assertThat(describe(new RowComplete())).contains("1 pair left, then 2 right");
        assertThat(describe(new Shuffled(7))).contains("seed 7");
        assertThat(describe(new Explicit(List.of(List.of(0))))).endsWith("game by game, 1 game in all.");
    }
}
