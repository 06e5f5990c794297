package lanetide.cli.reoil;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.squads.model.Costs;
import lanetide.squads.recondition.Basis;
import lanetide.squads.recondition.EventOiling;
import lanetide.squads.recondition.Interval;
import lanetide.squads.recondition.OilOver;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilResult;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReoilWordsTest {
    @ParameterizedTest
    @CsvSource({
        "CONDITION, 1, 'have moved by 1 board, on average after 1 game.'",
        "CONDITION, 1.5, 'have moved by 1.5 boards, on average after 1.5 games.'",
        "AGE, 1, 'have moved by 1 board, it is best oiled after 1 game at the latest.'",
        "AGE, 1.5, 'have moved by 1.5 boards, it is best oiled after 1.5 games at the latest.'"
    })
    void oneBoardAndOneGameAreNoneOfSeveral(Basis basis, double number, String end) {
        Interval interval = new Interval(
                basis,
                number,
                number,
                number,
                number,
                number,
                Optional.empty(),
                false,
                OptionalDouble.empty(),
                OptionalDouble.of(number));

        assertThat(ReoilWords.sentence(of(number), interval)).endsWith(end);
    }

    private static ReoilResult of(double limitBoards) {
        EventOiling once = new EventOiling(List.of(0), 1);
        return new ReoilResult(
                new ReoilPlan(1, 4, 24, 2, limitBoards, Costs.USUAL),
                1,
                List.of(),
                Optional.empty(),
                List.of(),
                new OilOver(1, 0, 0, 0, 0, 0, 0),
                once,
                once,
                1,
                1);
    }
}
