package lanetide.squads.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.play.Events;
import lanetide.squads.study.WindowStudy.Move;
import lanetide.squads.watch.Observers;
import org.junit.jupiter.api.Test;

class WindowStudyTest {
    private static final int SETS = 6;
    private static final List<Group> FOUR = Events.oneGroup(
            Events.bowler("a", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"),
            Events.bowler("b", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"),
            Events.bowler("c", Hand.RIGHT, "tweener", Events.level("league"), "medium-reactive"),
            Events.bowler("d", Hand.RIGHT, "tweener", Events.level("scratch"), "medium-reactive"));

    private static Event event(Conditioning beforeSecond) {
        return Events.event(
                Events.centre(1),
                Events.stay(1, 1, 6),
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, FOUR),
                Events.squad("B", 2 * Events.START_MS, beforeSecond, FOUR));
    }

    private static List<Move> moves(Event event, int sets, int threads) {
        Execution execution = Execution.on(threads);
        return EventStudy.run(
                        new PossibleEvents(event, sets),
                        5,
                        Playings.fixed(2 * SETS),
                        execution,
                        done -> {},
                        Observers.NONE)
                .moves();
    }

    @Test
    void linesGoInAsGamesArePlayedAndAreBackOnFreshOil() {
        List<Move> worn = moves(event(Conditioning.NONE), SETS, 1);
        assertThat(worn).extracting(move -> move.moment().afterGame()).containsExactly(0, 6, 0, 6);
        assertThat(worn).extracting(Move::hand).containsOnly(Hand.RIGHT);
        double[] boards = boards(worn);
        assertThat(boards[0]).isCloseTo(0, within(0.5));
        assertThat(boards[1]).isGreaterThan(boards[0] + 0.1);
        assertThat(boards[2]).isCloseTo(boards[1], within(0.2));

        double[] oiled = boards(moves(event(Conditioning.STRIP_AND_OIL), SETS, 1));
        assertThat(oiled[1]).isEqualTo(boards[1]);
        assertThat(oiled[2]).isCloseTo(0, within(0.5));
    }

    private static double[] boards(List<Move> moves) {
        return moves.stream()
                .flatMapToDouble(move -> DoubleStream.of(move.boards().orElseThrow()))
                .toArray();
    }

    @Test
    void whatIsNotKnownWidensTheIntervalAsGamesGoOn() {
        List<Move> worn = moves(event(Conditioning.NONE), SETS, 1);
        assertThat(worn).allSatisfy(move -> {
            double boards = move.boards().orElseThrow();
            assertThat(move.ci90().orElseThrow().low()).isLessThan(boards);
            assertThat(move.ci90().orElseThrow().high()).isGreaterThan(boards);
        });
        assertThat(width(worn.get(1))).isGreaterThan(width(worn.get(0)));
    }

    private static double width(Move move) {
        return move.ci90().orElseThrow().high() - move.ci90().orElseThrow().low();
    }

    @Test
    void anyNumberOfThreadsSeesTheSame() {
        assertThat(moves(event(Conditioning.NONE), SETS, 3)).isEqualTo(moves(event(Conditioning.NONE), SETS, 1));
    }

    @Test
    void withTheUsualValuesAloneNobodyLooks() {
        WindowStudy windows = new WindowStudy(new PossibleEvents(event(Conditioning.NONE), 1));
        assertThat(windows.watching(0)).isEmpty();
        assertThat(windows.moves(List.of())).isEmpty();
    }
}
