package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.machines.MachineTours;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.LanePatterns;
import lanetide.squads.model.OilTime;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.Observers;
import org.junit.jupiter.api.Test;

/** Squads with patterns, lanes and times of oiling of their own. */
class OwnLanesTest {
    private static final OilPattern SPORT = OilPattern.of("sport", 42 * LaneGeometry.FOOT_M, 27, 2);
    private static final long LATER_MS = Events.START_MS + 4 * 60 * Events.MINUTE_MS;

    private static Squad squad(String id, long startMs) {
        return Events.squad(id, startMs, Conditioning.STRIP_AND_OIL, Events.groups(2, 1));
    }

    /** Groups that move over some of the pairs of a centre with four. */
    private static SquadPlan plan(Centre centre, OilPattern pattern, int... own) {
        List<LanePair> pairs = Arrays.stream(own).mapToObj(centre.pairs()::get).toList();
        return new SquadPlan(centre.keeping(pairs).plan(new Ring(1, 1), 2, 2), LanePatterns.everywhere(pattern), pairs);
    }

    private static Event event(Centre centre, List<Squad> squads, List<SquadPlan> plans) {
        return Events.event(centre, Events.stay(2, centre.pairs().size(), 2), squads.get(0))
                .withSquads(squads, plans);
    }

    private static SquadResult of(EventResult result, String squad) {
        return result.squads().stream()
                .filter(one -> one.squad().equals(squad))
                .findFirst()
                .orElseThrow();
    }

    private static List<LaneState> lanesOf(EventResult result, String squad) {
        return result.lanes().stream()
                .filter(state -> state.squad().equals(squad))
                .toList();
    }

    @Test
    void aSquadOnAPatternOfItsOwnPlaysAsIfItWereTheOnlyOneOfTheEvent() {
        Centre centre = Events.centre(2);
        Squad second = squad("B", LATER_MS);
        SquadPlan onSport = plan(centre, SPORT, 0, 1);
        Event both = event(
                centre, List.of(squad("A", Events.START_MS), second), List.of(plan(centre, Events.PATTERN), onSport));

        EventResult result = Events.play(both, 3);
        EventResult alone = Events.play(event(centre, List.of(second), List.of(onSport)), 3);

        assertThat(of(result, "B")).isEqualTo(of(alone, "B"));
        assertThat(lanesOf(result, "B")).isEqualTo(lanesOf(alone, "B"));
        assertThat(both.patterns()).containsExactly(Events.PATTERN, SPORT);
    }

    @Test
    void aLaneWithAPatternOfItsOwnHasTheFilmOfThatPattern() {
        Centre centre = Events.centre(2);
        SquadPlan plan =
                plan(centre, Events.PATTERN).withPatterns(new LanePatterns(Events.PATTERN, Map.of(2, SPORT, 3, SPORT)));
        Map<Integer, double[]> films = found(event(centre, List.of(squad("A", Events.START_MS)), List.of(plan)));

        for (int lane = 1; lane <= 4; lane++) {
            OilPattern laid = lane == 2 || lane == 3 ? SPORT : Events.PATTERN;
            assertThat(films.get(lane))
                    .containsExactly(OilFilm.fresh(laid, Events.PHYSICS.grid()).cellsUm());
        }
    }

    /** The films as the first squad finds them. */
    private static Map<Integer, double[]> found(Event event) {
        Map<Integer, double[]> films = new HashMap<>();
        new TournamentSimulation(Events.setup(event, new StartingLines(event, Events.PHYSICS), 1)
                        .watchedBy(Observers.of((moment, film, lines) -> {
                            if (moment.afterGame() == 0) {
                                films.put(moment.lane(), film.cellsUm().clone());
                            }
                        })))
                .play();
        return films;
    }

    @Test
    void oilThatRestsBeforePracticeIsDoneEarlierAndLevelsMeanwhile() {
        long restMs = 20 * Events.MINUTE_MS;
        Centre centre = Events.centre(2);
        Squad rests = squad("A", Events.START_MS).withArrangements(oiled(new OilTime(OptionalLong.empty(), restMs)));
        Event event = event(centre, List.of(rests), List.of(plan(centre, Events.PATTERN)));
        OilFilm levelled = OilFilm.fresh(Events.PATTERN, Events.PHYSICS.grid());
        Events.PHYSICS.model().levelling().relax(List.of(levelled), restMs / 1000.0);

        TimetableEntry first = Events.play(event, 1).timetable().get(0);

        // Four lanes, two machines, 90 s a lane.
        assertThat(first.startMs()).isEqualTo(Events.START_MS - restMs - 180_000);
        assertThat(first.endMs()).isEqualTo(Events.START_MS - restMs);
        assertThat(found(event).get(3)).containsExactly(levelled.cellsUm());
    }

    private static Arrangements oiled(OilTime time) {
        return new Arrangements(List.of(), List.of(), OptionalInt.empty(), time);
    }

    @Test
    void machinesBeginAtTheirTimeAndASquadThatTheyOrItsOilHoldUpStartsLate() {
        long fromMs = Events.START_MS - 10 * Events.MINUTE_MS;
        Centre centre = Events.centre(2);
        Squad early = squad("A", Events.START_MS).withArrangements(oiled(new OilTime(OptionalLong.of(fromMs), 0)));
        Squad late = squad("A", Events.START_MS)
                .withArrangements(oiled(new OilTime(OptionalLong.of(fromMs), 9 * Events.MINUTE_MS)));
        SquadPlan plan = plan(centre, Events.PATTERN);

        EventResult inTime = Events.play(event(centre, List.of(early), List.of(plan)), 1);
        EventResult heldUp = Events.play(event(centre, List.of(late), List.of(plan)), 1);

        assertThat(inTime.timetable().get(0).startMs()).isEqualTo(fromMs);
        assertThat(inTime.squads().get(0).startMs()).isEqualTo(Events.START_MS);
        // Done after 3 min, then 9 min of rest: 2 min after the planned start.
        assertThat(heldUp.squads().get(0).startMs()).isEqualTo(Events.START_MS + 2 * Events.MINUTE_MS);
    }

    @Test
    void squadsWithLanesOfTheirOwnPlayAtOneTimeAndEachAsIfItWereAlone() {
        Centre centre = Events.centre(4);
        Squad left = squad("A", Events.START_MS);
        Squad right = squad("B", Events.START_MS + 10 * Events.MINUTE_MS);
        SquadPlan onLeft = plan(centre, Events.PATTERN, 0, 1);
        SquadPlan onRight = plan(centre, SPORT, 2, 3);

        EventResult both = Events.play(event(centre, List.of(left, right), List.of(onLeft, onRight)), 5);

        assertThat(of(both, "A").endMs()).isGreaterThan(of(both, "B").startMs());
        assertThat(of(both, "A")).isEqualTo(of(Events.play(event(centre, List.of(left), List.of(onLeft)), 5), "A"));
        assertThat(of(both, "B")).isEqualTo(of(Events.play(event(centre, List.of(right), List.of(onRight)), 5), "B"));
        assertThat(lanesOf(both, "A")).extracting(LaneState::lane).containsOnly(1, 2, 3, 4);
        assertThat(both.timetable())
                .extracting(TimetableEntry::squad)
                .containsExactly("A", "A", "A", "A", "B", "B", "B", "B");
        assertThat(both.oil().relativeError()).isLessThan(1e-9);
    }

    @Test
    void otherLaneNumbersChangeLaneNumbersAlone() {
        List<EventResult> results = new ArrayList<>();
        for (int[] halves : new int[][] {{0, 1, 2, 3}, {2, 3, 0, 1}}) {
            Centre centre = Events.centre(4);
            results.add(Events.play(
                    event(
                            centre,
                            List.of(squad("A", Events.START_MS), squad("B", Events.START_MS)),
                            List.of(
                                    plan(centre, Events.PATTERN, halves[0], halves[1]),
                                    plan(centre, SPORT, halves[2], halves[3]))),
                    2));
        }

        assertThat(results.get(1).squads()).isEqualTo(results.get(0).squads());
        assertThat(results.get(1).timetable()).isEqualTo(results.get(0).timetable());
        assertThat(films(results.get(1), "A", 4)).isEqualTo(films(results.get(0), "A", 0));
        assertThat(films(results.get(1), "B", -4)).isEqualTo(films(results.get(0), "B", 0));
    }

    private static List<String> films(EventResult result, String squad, int shift) {
        return lanesOf(result, squad).stream()
                .map(state -> state.lane() - shift + " " + state.afterGame() + " " + state.volumeMl() + " "
                        + state.headUnitsLow())
                .toList();
    }

    @Test
    void machinesDoTheLanesOfOneSquadAfterThoseOfAnother() {
        // Each squad has four lanes and one machine, 90 s a lane: 6 min.
        long sixMs = 6 * Events.MINUTE_MS;
        Centre centre = Events.centre(4, 1);
        Squad first = squad("A", Events.START_MS);
        Squad second = squad("B", Events.START_MS + 2 * Events.MINUTE_MS);
        Event event =
                event(centre, List.of(first, second), List.of(plan(centre, SPORT, 0, 1), plan(centre, SPORT, 2, 3)));

        assertThat(MachineTours.of(event))
                .containsExactly(
                        new MachineTours.Tour(
                                0, Events.START_MS - sixMs, Events.START_MS - sixMs, Events.START_MS, Events.START_MS),
                        new MachineTours.Tour(
                                1,
                                second.startMs() - sixMs,
                                Events.START_MS,
                                Events.START_MS + sixMs,
                                Events.START_MS + sixMs));
        assertThat(Events.play(event, 1).squads())
                .extracting(SquadResult::startMs)
                .containsExactly(Events.START_MS, Events.START_MS + sixMs);
    }

    @Test
    void aBowlerBeginsOnEachPatternWithTheLineForItAndKeepsThemApart() {
        Centre centre = Events.centre(2);
        Event dual = Events.event(centre, Events.stay(1, 2, 1), Events.oneGroup(Events.bowler("a")));
        SquadPlan plan = dual.plans().get(0).withPatterns(new LanePatterns(Events.PATTERN, Map.of(2, SPORT)));
        Event event = dual.withSquads(dual.squads(), List.of(plan));
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        var bowler = event.squads().get(0).groups().get(0).bowlers().get(0);
        var player = StartingLines.player(bowler, event, Events.PHYSICS);
        Map<Integer, Double> laydowns = new HashMap<>();
        new TournamentSimulation(Events.setup(event, lines, 1)
                        .watchedBy(new Observers(
                                LaneObserver.NONE,
                                shot -> laydowns.putIfAbsent(
                                        shot.lane(), shot.path().meant().laydownBoard()),
                                List.of())))
                .play();

        assertThat(laydowns)
                .containsOnly(
                        Map.entry(1, lines.on(Events.PATTERN).of(player).laydownBoard()),
                        Map.entry(2, lines.on(SPORT).of(player).laydownBoard()));
        assertThat(laydowns.get(1)).isNotEqualTo(laydowns.get(2));
    }

    @Test
    void aSquadFindsOilOnLanesThatAreItsOwnAndThatItsRotationKeepsTo() {
        Centre centre = Events.centre(4);
        Squad bare = squad("B", LATER_MS).withConditioning(Conditioning.NONE);
        SquadPlan onLeft = plan(centre, SPORT, 0, 1);
        SquadPlan elsewhere = new SquadPlan(
                onLeft.rotation(), onLeft.patterns(), centre.pairs().subList(2, 4));
        SquadPlan unknown =
                new SquadPlan(onLeft.rotation(), onLeft.patterns(), List.of(new LanePair(1, 2), new LanePair(11, 12)));
        Squad first = squad("A", Events.START_MS);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> event(centre, List.of(first, bare), List.of(onLeft, plan(centre, SPORT, 2, 3))))
                .withMessage("squad B would find bare lanes");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> event(centre, List.of(first), List.of(elsewhere)))
                .withMessage("the rotation of squad A sends a group to pair 1-2, which is not its own");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> event(centre, List.of(first), List.of(unknown)))
                .withMessageStartingWith("squad A has pairs")
                .withMessageEndingWith("which are not all the centre's");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new OilTime(OptionalLong.empty(), -1))
                .withMessageContaining("must be at least 0");
    }
}
