package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import lanetide.oilflow.film.OilAccount;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.model.Event;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.BrokenRuleException;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.Rules;
import lanetide.squads.result.SquadResult;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;
import org.junit.jupiter.api.Test;

/** What never may happen stops a playing. */
class BrokenRulesTest {
    @Test
    void oilThatIsNowhereIsABreach() {
        assertThatCode(() -> Rules.requireClosed(new OilAccount(100, 60, 10, 10, 10, 10)))
                .doesNotThrowAnyException();
        assertThatCode(() -> Rules.requireClosed(OilAccount.EMPTY)).doesNotThrowAnyException();
        for (OilAccount open : List.of(
                new OilAccount(100, 60, 10, 10, 10, 9.999999),
                new OilAccount(100, 60, 10, 10, 10, Double.NaN),
                new OilAccount(0, 1, 0, 0, 0, 0))) {
            assertThatThrownBy(() -> Rules.requireClosed(open))
                    .isInstanceOf(BrokenRuleException.class)
                    .hasMessageContaining("not accounted for");
        }
    }

    @Test
    void aScoreThatNoGameHasIsABreach() {
        assertThatCode(() -> Rules.requirePossible(squad(result("A-1", 0, 300)), 2))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> Rules.requirePossible(squad(result("A-1", 301)), 2))
                .hasMessageContaining("scored 301");
        assertThatThrownBy(() -> Rules.requirePossible(squad(result("A-1", -1)), 2))
                .isInstanceOf(BrokenRuleException.class);
    }

    @Test
    void aBowlerInTwoPlacesOrInAGameTooManyIsABreach() {
        assertThatThrownBy(() -> Rules.requirePossible(squad(result("A-1", 100), result("A-1", 100)), 2))
                .hasMessageContaining("two places");
        assertThatThrownBy(() -> Rules.requirePossible(squad(result("A-1", 100, 100, 100)), 2))
                .hasMessageContaining("more than the 2 games");
    }

    /** Oil that nobody laid, as a fault of the march would make it. */
    @Test
    void aPlayingInWhichOilComesFromNowhereIsStopped() {
        Event event = Events.onePair(1, Events.bowler("A-1"));
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        Setup sound = Events.setup(event, lines, 1).recording(LaneRecords.FILMS);
        Setup broken = Events.setup(event, lines, 1)
                .recording(LaneRecords.FILMS)
                .watchedBy(Observers.of((moment, film, typical) -> film.lay(event.pattern())));

        assertThatCode(() -> new TournamentSimulation(sound).play()).doesNotThrowAnyException();
        assertThatThrownBy(() -> new TournamentSimulation(broken).play())
                .isInstanceOf(BrokenRuleException.class)
                .hasMessageContaining("not accounted for");
    }

    private static SquadResult squad(BowlerResult... bowlers) {
        return new SquadResult("A", 0, 1, List.of(bowlers), PaceKept.NOTHING);
    }

    private static BowlerResult result(String id, Integer... scores) {
        return new BowlerResult(Events.bowler(id), "1", 0, List.of(scores), List.of(), 0);
    }
}
