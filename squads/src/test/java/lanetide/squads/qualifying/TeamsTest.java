package lanetide.squads.qualifying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Levels;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.model.TieRule;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.SquadResult;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.TeamStatistics;
import org.junit.jupiter.api.Test;

/** Totals of teams on a table worked by hand. */
class TeamsTest {
    /** A bowler, his team, his handicap, and his games. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Line(String name, String team, int handicap, int... games) {
        Bowler bowler() {
            return Fixtures.bowler(name, Hand.RIGHT, "tweener", Levels.shipped().get("league"), "urethane")
                    .withHandicap(handicap)
                    .with(team.isEmpty() ? Optional.empty() : Optional.of(team));
        }
    }

    /** Foxes 750 + 30, Hares 770, Voles 780 without handicap; who has no team counts for none. */
    private static final List<Line> SQUAD_A = List.of(
            new Line("Ash", "Foxes", 10, 200, 180),
            new Line("Birch", "Foxes", 5, 190, 180),
            new Line("Cedar", "Hares", 0, 200, 170),
            new Line("Dogwood", "Hares", 0, 190, 210),
            new Line("Elm", "", 0, 300, 300),
            new Line("Fir", "Voles", 0, 200, 190),
            new Line("Ginkgo", "Voles", 0, 190, 200));

    private static Squad squad(String id, int hour, List<Line> lines) {
        List<Bowler> bowlers = lines.stream().map(Line::bowler).toList();
        return Fixtures.squad(
                id, hour * 3_600_000L, Conditioning.STRIP_AND_OIL, 600_000, List.of(new Group("1", bowlers)));
    }

    private static SquadResult bowled(String id, List<Line> lines) {
        List<BowlerResult> results = lines.stream()
                .map(line -> new BowlerResult(
                        line.bowler(),
                        "1",
                        0,
                        IntStream.of(line.games()).boxed().toList(),
                        List.of(),
                        0))
                .toList();
        return new SquadResult(id, 0, 1, results, PaceKept.NOTHING);
    }

    private static Event event(Squad... squads) {
        return Fixtures.event(
                "test",
                Fixtures.centre(1, Fixtures.machines(1, 45_000, 45_000)),
                OilPattern.of("p", 12, 24, 4),
                List.of(squads),
                java.util.Collections.nCopies(squads.length, new Stay().plan(1, 1, 2)),
                PaceOfPlay.USUAL);
    }

    private static Event with(Event event, TieRule ties, boolean handicap, Counting counting) {
        return event.withCut(Optional.of(new Cut(OptionalInt.of(2), OptionalDouble.empty(), ties, handicap, counting)));
    }

    @Test
    void thePinsOfPartnersAreAddedGameByGameWithHandicap() {
        Teams teams = new Teams(event(squad("A", 9, SQUAD_A)));

        assertThat(teams.names()).containsExactly("Foxes", "Hares", "Voles");
        assertThat(teams.bowlers()).containsExactly(2, 2, 2);
        assertThat(teams.bowled(List.of(bowled("A", SQUAD_A))))
                .containsExactly(Entrant.of(405, 375), Entrant.of(390, 380), Entrant.of(390, 390));
        assertThat(teams.standing(List.of(bowled("A", SQUAD_A))).teams())
                .containsExactly(
                        new TeamsPlayed.Team(780, 0.5, 1.5),
                        new TeamsPlayed.Team(770, 0, 3),
                        new TeamsPlayed.Team(780, 0.5, 1.5));
    }

    @Test
    void theCutOfTheEventSaysWhetherHandicapCountsAndWhatPartsATie() {
        Event event = event(squad("A", 9, SQUAD_A));
        List<SquadResult> bowled = List.of(bowled("A", SQUAD_A));

        assertThat(new Teams(with(event, TieRule.LAST_GAME, true, Counting.BEST))
                        .standing(bowled)
                        .teams())
                .extracting(TeamsPlayed.Team::place)
                .containsExactly(2.0, 3.0, 1.0);
        assertThat(new Teams(with(event, TieRule.HIGH_GAME, true, Counting.BEST))
                        .standing(bowled)
                        .teams())
                .extracting(TeamsPlayed.Team::place)
                .containsExactly(1.0, 3.0, 2.0);
        assertThat(new Teams(with(event, TieRule.LOT, false, Counting.BEST))
                        .standing(bowled)
                        .teams())
                .extracting(TeamsPlayed.Team::totalPins)
                .containsExactly(750, 770, 780);
    }

    @Test
    void aTeamThatIsEnteredTwiceCountsByItsBestSquadOrBySum() {
        List<Line> again =
                List.of(new Line("Ash (B)", "Foxes", 10, 200, 200), new Line("Birch (B)", "Foxes", 5, 190, 190));
        Event event = event(squad("A", 9, SQUAD_A), squad("B", 15, again));
        List<SquadResult> bowled = List.of(bowled("A", SQUAD_A), bowled("B", again));

        assertThat(new Teams(event).standing(bowled).teams())
                .extracting(TeamsPlayed.Team::totalPins)
                .containsExactly(810, 770, 780);
        assertThat(new Teams(with(event, TieRule.LOT, true, Counting.SUM))
                        .standing(bowled)
                        .teams())
                .extracting(TeamsPlayed.Team::totalPins)
                .containsExactly(780 + 810, 770, 780);
    }

    @Test
    void aSubstituteBowlsForTheTeamOfWhomHeReplacesAndWhoIsAbsentAddsNothing() {
        Bowler guest = new Line("Guest", "", 0).bowler();
        Squad planned = squad("A", 9, SQUAD_A);
        Squad changed = planned.withArrangements(new Arrangements(
                List.of(), List.of(new LineUpChange.Substitution("Ash", 2, guest)), OptionalInt.empty()));
        List<BowlerResult> results = new ArrayList<>(List.of(
                new BowlerResult(SQUAD_A.get(0).bowler(), "1", 0, List.of(200), List.of(), 0),
                new BowlerResult(guest, "1", 1, List.of(150), List.of(), 0),
                new BowlerResult(SQUAD_A.get(2).bowler(), "1", 0, List.of(200, 170), List.of(), 0)));

        assertThat(new Teams(event(changed)).bowled(List.of(new SquadResult("A", 0, 1, results, PaceKept.NOTHING))))
                .containsExactly(Entrant.of(210, 150), Entrant.of(200, 170), new Entrant(List.of()));
    }

    /** Played, so that totals are those of the bowlers themselves. */
    @Test
    void relabellingTeamsChangesLabelsOnly() {
        Event event = event(squad("A", 9, SQUAD_A.subList(0, 4)));
        StudyResult played = EventStudy.run(event, 3, 4, 1, done -> {});
        StudyResult renamed =
                EventStudy.run(event(renamed(event.squads().get(0), name -> "new " + name)), 3, 4, 1, done -> {});

        assertThat(played.teams()).hasSize(2);
        assertThat(played.teams().stream()
                        .mapToDouble(TeamStatistics::firstShare)
                        .sum())
                .isEqualTo(1);
        assertThat(played.teams().stream().mapToDouble(TeamStatistics::place).sum())
                .isEqualTo(3);
        assertThat(renamed.teams()).extracting(TeamStatistics::name).containsExactly("new Foxes", "new Hares");
        assertThat(renamed.teams())
                .usingRecursiveComparison()
                .ignoringFields("name")
                .isEqualTo(played.teams());
        assertThat(played.teams().get(0).totalPins()).isGreaterThan(2 * 2 * 50).isLessThan(2 * 2 * 300);
    }

    private static Squad renamed(Squad squad, UnaryOperator<String> change) {
        return squad.withGroups(squad.groups().stream()
                .map(group -> new Group(
                        group.id(),
                        group.bowlers().stream()
                                .map(bowler -> bowler.with(bowler.partners().map(change)))
                                .toList()))
                .toList());
    }

    @Test
    void whereEverybodyBowlsForHimselfThereIsNoTeam() {
        Event event = event(squad("A", 9, List.of(SQUAD_A.get(4))));
        assertThat(new Teams(event).names()).isEmpty();
        assertThat(new Teams(event).standing(List.of(bowled("A", SQUAD_A))).teams())
                .isEmpty();
    }
}
