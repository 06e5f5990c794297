package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Break;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.LineUpChange.Absence;
import lanetide.squads.model.LineUpChange.LateArrival;
import lanetide.squads.model.LineUpChange.Substitution;
import lanetide.squads.model.Squad;
import lanetide.squads.play.WatchedSquad.Shot;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.result.TimetableEntry.Activity;
import org.junit.jupiter.api.Test;

/** Who bowls when it is not as listed, and breaks. */
class LineUpTest {
    private static final int GAMES = 4;

    private static Event event(List<Break> breaks, LineUpChange... changes) {
        return event(Events.groups(3, 2), breaks, changes);
    }

    private static Event event(List<Group> groups, List<Break> breaks, LineUpChange... changes) {
        Squad squad = Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, groups)
                .withArrangements(new Arrangements(breaks, List.of(changes), OptionalInt.empty()));
        return Events.event(Events.centre(2), Events.stay(groups.size(), 2, GAMES), squad);
    }

    private static BowlerResult of(EventResult result, String bowler) {
        return result.squads().get(0).bowlers().stream()
                .filter(one -> one.bowler().id().equals(bowler))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anAbsentBowlerHasNoScoresAndHisGroupGoesOnWithoutHim() {
        EventResult result = Events.play(event(List.of(), new Absence("1-2", 1)), 1);

        assertThat(result.squads().get(0).bowlers())
                .extracting(bowler -> bowler.bowler().id())
                .containsExactly("1-1", "1-3", "2-1", "2-2");
        assertThat(result.squads().get(0).pace().bowlerGames()).isEqualTo(4 * GAMES);
        assertThat(result.oil().relativeError()).isLessThan(1e-9);
    }

    @Test
    void aBowlerWhoLeavesKeepsTheGamesHeBowled() {
        EventResult result = Events.play(event(List.of(), new Absence("1-2", 3)), 1);

        assertThat(of(result, "1-2").scores()).hasSize(2);
        assertThat(of(result, "1-2").score(1)).isPresent();
        assertThat(of(result, "1-2").score(2)).isEmpty();
        assertThat(of(result, "1-1").scores()).hasSize(GAMES);
    }

    @Test
    void aSubstituteTakesOverThePlaceInTheBowlingOrderWithScoresOfHisOwn() {
        Bowler guest = Events.bowler("guest");

        WatchedSquad watched = WatchedSquad.play(event(List.of(), new Substitution("1-2", 3, guest)), 1);
        EventResult result = Events.play(event(List.of(), new Substitution("1-2", 3, guest)), 1);

        assertThat(of(result, "guest").firstGame()).isEqualTo(2);
        assertThat(of(result, "guest").scores()).hasSize(GAMES - 2);
        assertThat(of(result, "guest").score(1)).isEmpty();
        assertThat(of(result, "1-2").scores()).hasSize(2);
        List<String> order = watched.game().stream()
                .filter(shot ->
                        shot.lane() == 1 && shot.game() == (shot.bowler().equals("guest") ? 0 : 2))
                .filter(shot -> shot.frame() == 1)
                .map(Shot::bowler)
                .distinct()
                .toList();
        assertThat(order).containsExactly("1-1", "guest");
        assertThat(result.squads().get(0).meanScore(3)).isBetween(0.0, 300.0);
    }

    @Test
    void whoComesLateJoinsAtTheNextGameWithoutPractice() {
        long arrivesMs = Events.START_MS + Events.PRACTICE_MS + 5 * Events.MINUTE_MS;

        WatchedSquad watched = WatchedSquad.play(event(List.of(), new LateArrival("1-1", arrivesMs)), 1);
        EventResult result = Events.play(event(List.of(), new LateArrival("1-1", arrivesMs)), 1);

        assertThat(watched.practice()).extracting(Shot::bowler).doesNotContain("1-1");
        assertThat(of(result, "1-1").firstGame()).isEqualTo(1);
        assertThat(of(result, "1-1").scores()).hasSize(GAMES - 1);
        assertThat(watched.game().stream().filter(shot -> shot.bowler().equals("1-1")))
                .allSatisfy(shot -> assertThat(shot.timeMs()).isGreaterThan(arrivesMs));
    }

    @Test
    void aGroupOfWhichNobodyIsThereWaitsForTheFirst() {
        long arrivesMs = Events.START_MS + 60 * Events.MINUTE_MS;

        EventResult result = Events.play(
                event(
                        List.of(),
                        new LateArrival("2-1", arrivesMs + 12 * Events.MINUTE_MS),
                        new LateArrival("2-2", arrivesMs)),
                1);

        assertThat(of(result, "2-2").firstGame()).isZero();
        assertThat(of(result, "2-2").scores()).hasSize(GAMES);
        assertThat(of(result, "2-1").firstGame()).isGreaterThan(0);
    }

    @Test
    void aGroupThatHasGoneHomeHoldsNobodyUp() {
        EventResult result = Events.play(event(List.of(), new Absence("2-1", 2), new Absence("2-2", 2)), 1);

        assertThat(of(result, "2-1").scores()).hasSize(1);
        assertThat(of(result, "1-1").scores()).hasSize(GAMES);
    }

    @Test
    void aBreakAfterAGameHoldsEveryGroupForItsLength() {
        long lengthMs = 15 * Events.MINUTE_MS;

        EventResult with = Events.play(event(Events.groups(3), List.of(new Break(2, 0, lengthMs))), 1);
        EventResult without = Events.play(event(Events.groups(3), List.of()), 1);

        TimetableEntry pause = with.timetable().stream()
                .filter(entry -> entry.what() == Activity.BREAK)
                .findFirst()
                .orElseThrow();
        assertThat(pause.endMs() - pause.startMs()).isEqualTo(lengthMs);
        assertThat(pause.startMs()).isEqualTo(game(without, 2).endMs());
        assertThat(game(with, 3).startMs()).isEqualTo(game(without, 3).startMs() + lengthMs);
        assertThat(without.timetable()).extracting(TimetableEntry::what).doesNotContain(Activity.BREAK);
    }

    @Test
    void aBreakAtATimeComesAfterTheGameThatIsPlayedThen() {
        EventResult without = Events.play(event(Events.groups(3), List.of()), 1);
        long inGameTwoMs = game(without, 2).startMs() + 5 * Events.MINUTE_MS;

        EventResult with = Events.play(event(Events.groups(3), List.of(new Break(1, inGameTwoMs, 600_000))), 1);

        assertThat(game(with, 2).endMs()).isEqualTo(game(without, 2).endMs());
        assertThat(game(with, 3).startMs()).isEqualTo(game(without, 3).startMs() + 600_000);
    }

    @Test
    void afterTheLastGameNobodyTakesABreak() {
        EventResult with = Events.play(event(Events.groups(3), List.of(new Break(GAMES, 0, 600_000))), 1);

        assertThat(with).isEqualTo(Events.play(event(Events.groups(3), List.of()), 1));
    }

    private static TimetableEntry game(EventResult result, int game) {
        return result.timetable().stream()
                .filter(entry -> entry.game() == game && entry.what() == Activity.GAME)
                .findFirst()
                .orElseThrow();
    }
}
