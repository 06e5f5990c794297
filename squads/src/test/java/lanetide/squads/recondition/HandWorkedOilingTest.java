package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Levels;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;

/** When to oil, from playings that are written down here, so that all of it can be reckoned by hand. */
class HandWorkedOilingTest {
    private static final int GAMES = 3;

    /** Two bowlers on each of two pairs; a pin in a bowler's game is 1 of the currency, nothing else costs but oil. */
    private static final Costs COSTS = new Costs("EUR", 0, 3, 0, 0, 1, 4);

    private static Event event() {
        List<Group> groups = IntStream.rangeClosed(1, 2)
                .mapToObj(group -> new Group(String.valueOf(group), List.of(bowler("a" + group), bowler("b" + group))))
                .toList();
        List<Squad> squads = List.of(
                Fixtures.squad("A", 0, Conditioning.STRIP_AND_OIL, 0, groups),
                Fixtures.squad("B", 36_000_000, Conditioning.NONE, 0, groups),
                Fixtures.squad("C", 72_000_000, Conditioning.OIL_OVER, 0, groups));
        return Fixtures.event(
                "week",
                Fixtures.centre(2, Fixtures.machines(1, 60_000, 60_000)),
                OilPattern.of("house", 40 * LaneGeometry.FOOT_M, 22, 6),
                squads,
                squads.stream().map(squad -> new Stay().plan(2, 2, 1)).toList(),
                PaceOfPlay.USUAL);
    }

    private static Bowler bowler(String id) {
        return Fixtures.bowler(id, Hand.RIGHT, "stroker", Levels.shipped().get("league"), "urethane");
    }

    private static LaneLooks.Look at(double board, double width, double share) {
        return new LaneLooks.Look(OptionalDouble.of(board), width, share);
    }

    private static final LaneLooks.Look LOST = new LaneLooks.Look(OptionalDouble.empty(), 0, 0);

    /** Scores fall by 0, 3 and 6 pins a game with the oil's age; one player's window on one lane moves by 0, 1, 2. */
    private static List<BlockPlaying> playings() {
        LaneLooks.Look[][] lane = {
            {at(8, 6, 0.9)}, {at(8, 6, 0.9)}, {at(9, 4, 0.8)}, {at(10, 2, 0.7)},
        };
        double[][] change = {{0}, {-6}, {-12}};
        int[][] games = {{2}, {2}, {2}};
        BlockPlaying one = new BlockPlaying(change, games, new LaneLooks.Look[][][] {lane});
        return List.of(one, one, one, one);
    }

    private static Policies policies(double marginPins, double limitBoards) {
        return new Policies(event(), new ReoilPlan(1, 4, GAMES, marginPins, limitBoards, COSTS), 1, 1);
    }

    @Test
    void aPlayingTellsTheMeanChangeOfAStyleAtAnAge() {
        BlockPlaying one = playings().get(0);

        assertThat(one.changePins(2, 0)).hasValue(-6);
        assertThat(one.games(2, 0)).isEqualTo(2);
        assertThat(BlockPlaying.games(playings(), 2, 0)).isEqualTo(8);
        assertThat(new BlockPlaying(new double[][] {{0}}, new int[][] {{0}}, new LaneLooks.Look[0][][])
                        .changePins(0, 0))
                .isEmpty();
    }

    @Test
    void windowsAreToldByHowFarTheyMovedAndByTheirMeanWidth() {
        WindowCurve curve = new WindowCurve(playings(), GAMES, 5);

        assertThat(curve.shiftBoards(1)).isZero();
        assertThat(curve.shiftBoards(3)).isEqualTo(2);
        assertThat(curve.paceBoards(1)).isZero();
        assertThat(curve.paceBoards(3)).isEqualTo(1);
        assertThat(curve.widthBoards(2)).hasValue(4);
        assertThat(curve.pocketShare(2).orElseThrow()).isCloseTo(0.8, within(1e-12));
    }

    @Test
    void aPlayerWithoutALineIsAsFarOffAsTheLimitAndAnAgeThatNobodySawKeepsTheLastMove() {
        LaneLooks.Look[][] lane = {{at(8, 6, 0.9), at(9, 6, 0.9)}, {at(11, 6, 0.9), LOST}, {null, null}};
        BlockPlaying one =
                new BlockPlaying(new double[][] {{0}, {0}}, new int[][] {{1}, {1}}, new LaneLooks.Look[][][] {lane});

        // The means of 3 and 5 boards.
        assertThat(AgeCurve.paths(List.of(one), 2, 5)).isDeepEqualTo(new double[][] {{4, 4}});
        assertThat(new WindowCurve(List.of(one), 2, 5).widthBoards(2)).isEmpty();
    }

    /** Two bowlers a pair: a game costs 2 times 0, 3 and 6 pins; oiling both lanes of a pair 6. */
    @Test
    void whatIsBestFollowsFromTheCurve() {
        Policies policies = policies(3, 2);
        double[] loss = policies.loss(policies.curve(playings()).spreadPins());
        Map<Basis, Policies.Best> best = policies.of(playings());

        assertThat(loss).containsExactly(new double[] {0, 6, 12}, within(1e-9));
        assertThat(policies.alone()).isCloseTo(6, within(1e-9));
        assertThat(policies.allAtOnce()).isCloseTo(6, within(1e-9));
        // 6 / 1, (6 + 0 + 6) / 2, (6 + 0 + 6 + 12) / 3.
        assertThat(best.get(Basis.COST).cycle().orElseThrow().rates())
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class)
                .containsExactly(6.0, 6.0, 8.0);
        assertThat(best.get(Basis.COST).costPerGame().orElseThrow()).isCloseTo(6, within(1e-9));
        assertThat(best.get(Basis.THRESHOLD).games()).isEqualTo(2);
        // On every lane windows have moved by the limit of 2 boards after the third game, so two games: 6 / 2.
        assertThat(best.get(Basis.AGE).games()).isEqualTo(2);
        assertThat(best.get(Basis.AGE).costPerGame().orElseThrow()).isCloseTo(3, within(1e-9));
        // With a control limit of 1 board or less a lane is oiled after two games, before it fails.
        assertThat(best.get(Basis.CONDITION).games()).isEqualTo(2);
        assertThat(best.get(Basis.CONDITION).costPerGame().orElseThrow()).isCloseTo(3, within(1e-9));
        assertThat(best.get(Basis.CONDITION).controlBoards()).hasValue(0.25);
        assertThat(best.get(Basis.CONDITION).flat()).isEmpty();
        assertThat(best.get(Basis.COST).flat()).isPresent();
    }

    @Test
    void aMarginThatScoresPassAtOnceStillLeavesOneGame() {
        assertThat(policies(2.9, 2).of(playings()).get(Basis.THRESHOLD).games()).isEqualTo(1);
        assertThat(policies(6, 2).of(playings()).get(Basis.THRESHOLD).games()).isEqualTo(3);
    }

    @Test
    void underOneSetTheLeastRegretIsNone() {
        LeastRegret regret = policies(3, 2).leastRegret(policies(3, 2).curve(playings()));

        assertThat(regret.mostRegret()).isCloseTo(0, within(1e-9));
        assertThat(regret.games()).isIn(1, 2);
    }

    @Test
    void lossesOfSquadsGoByTheSquadsBeforeThemOnTheOil() {
        BlockPlaying first = squad(0);
        BlockPlaying second = squad(0, -3);
        BlockPlaying third = squad(0, -3, -8);
        SquadLosses losses =
                new SquadLosses(List.of(List.of(first, second, third), List.of(first, second, third)), 1, 1);

        assertThat(losses.sets()).isEqualTo(1);
        assertThat(losses.games(1)).isEqualTo(2);
        assertThat(losses.spreadPins(2, 0)).isCloseTo(8, within(1e-9));
        assertThat(losses.spreadPins(2, 1)).isCloseTo(3, within(1e-9));
        // Two games of each squad: 0, 3 and 8 pins.
        assertThat(losses.pinGames(0, 3)).isCloseTo(22, within(1e-9));
        assertThat(losses.pinGames(1, 3)).isCloseTo(6, within(1e-9));
        assertThat(losses.under(0).pinGames(0, 3)).isCloseTo(22, within(1e-9));
    }

    /** Two games of a squad at each number of squads before it, each with the same change. */
    private static BlockPlaying squad(double... pins) {
        double[][] change = new double[pins.length][1];
        int[][] games = new int[pins.length][1];
        for (int age = 0; age < pins.length; age++) {
            change[age][0] = 2 * pins[age];
            games[age][0] = 2;
        }
        return new BlockPlaying(change, games, new LaneLooks.Look[0][][]);
    }

    /**
     * A stretch costs 10 and the square of its length; in the last line each squad after the first 5 and an oiling 1.
     */
    @Test
    void stretchesAreTheCheapestOfTheirNumberAndOfAnyNumber() {
        Stretches.Cost cost = (start, end) -> 10 + (end - start) * (end - start);

        assertThat(Stretches.cheapest(4, 1, cost)).containsExactly(0);
        assertThat(Stretches.cheapest(4, 2, cost)).containsExactly(0, 2);
        assertThat(Stretches.cheapest(4, 4, cost)).containsExactly(0, 1, 2, 3);
        // 26 for one, 28 for two, 36 for three and 44 for four.
        assertThat(Stretches.cheapest(4, cost)).containsExactly(0);
        assertThat(Stretches.sum(List.of(0, 2), 4, cost)).isEqualTo(28);
        assertThat(Stretches.sum(List.of(0, 3), 4, cost)).isEqualTo(30);
        assertThat(Stretches.cheapest(3, (start, end) -> 1 + 5 * (end - start - 1)))
                .containsExactly(0, 1, 2);
    }

    @Test
    void ofEqualChoicesTheOneThatOilsLateIsTaken() {
        // Stretches of two squads and of one cost the same.
        assertThat(Stretches.cheapest(3, 2, (start, end) -> 1)).containsExactly(0, 2);
    }

    /** Squads of 1, 2 and 1 games; loss 0, 2 and 5 by game, and 5 for all older oil. */
    @Test
    void oilingAnEventCostsItsOilingsAndWhatIsLostOnEachOil() {
        List<Integer> games = List.of(1, 2, 1);
        double[] loss = {0, 2, 5};

        assertThat(EventOiling.of(List.of(0), games, loss, 4).costPerPair()).isEqualTo(4 + 0 + 2 + 5 + 5);
        assertThat(EventOiling.of(List.of(0, 1), games, loss, 4).costPerPair()).isEqualTo(8 + 0 + 0 + 2 + 5);
        assertThat(EventOiling.of(List.of(0, 2), games, loss, 4).costPerPair()).isEqualTo(8 + 0 + 2 + 5 + 0);
        // Three oilings cost 12 and lose 2.
        assertThat(EventOiling.best(games, loss, 4)).isEqualTo(new EventOiling(List.of(0, 1, 2), 14));
        assertThat(EventOiling.best(games, loss, 40)).isEqualTo(new EventOiling(List.of(0), 52));
        assertThat(EventOiling.planned(event())).containsExactly(0, 2);
    }

    @Test
    void whatIsNotShownToCostMoreLiesAroundTheBestWithoutAGap() {
        Optimum best = CyclePolicy.least(new double[] {9, 6, 5, 5.5, 8, 5.2});
        List<List<Double>> redrawn = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            // In one of twenty the second costs no more than the best; the fifth always does.
            redrawn.add(List.of(9.0, i == 0 ? 5.0 : 6.0, 5.0, 5.0, 8.0, 5.0));
        }

        assertThat(best.notShownToCostMore(redrawn, 0)).isEqualTo(new Interval.Flat(2, 4, 1));
        assertThat(best.notShownToCostMore(redrawn.subList(1, 20), 0)).isEqualTo(new Interval.Flat(3, 4, 0.5));
        assertThat(best.notShownToCostMore(redrawn, 0.2)).isEqualTo(new Interval.Flat(2, 4, 1));
    }

    @Test
    void anIntervalIsNineTenthsOfTheValuesAndHoldsTheEstimate() {
        double[] values =
                IntStream.rangeClosed(0, 100).mapToDouble(i -> 100 - i).toArray();

        assertThat(Redrawing.interval(values, 50)).containsExactly(5, 95);
        assertThat(Redrawing.interval(values, 2)).containsExactly(2, 95);
        assertThat(Redrawing.interval(values, 99)).containsExactly(5, 99);
    }

    @Test
    void whereSetsAreGoneThroughWholeSetsAreDrawnAgain() {
        List<Integer> playings = IntStream.range(0, 12).boxed().toList();

        List<Integer> drawn = Redrawing.of(playings, 4, new RandomStreams(1).stream("test"));

        assertThat(drawn).hasSize(12);
        for (int i = 0; i < 4; i++) {
            // The same set stands at the same place of each of the three rounds.
            assertThat(drawn.get(i)).isBetween(0, 3);
            assertThat(drawn.get(4 + i)).isEqualTo(drawn.get(i) + 4);
            assertThat(drawn.get(8 + i)).isEqualTo(drawn.get(i) + 8);
        }
        assertThat(Redrawing.of(playings, 1, new RandomStreams(1).stream("test")))
                .hasSize(12)
                .isSubsetOf(playings)
                .isNotEqualTo(playings);
    }

    @Test
    void anAgeThatNobodyHasPlayedKeepsTheValueBeforeIt() {
        BlockPlaying one = new BlockPlaying(
                new double[][] {{-2}, {-8}, {0}}, new int[][] {{1}, {1}, {0}}, new LaneLooks.Look[0][][]);
        AgeCurve curve = new AgeCurve(List.of(one, one), 3, 1, 1);

        assertThat(curve.spreadPins()).containsExactly(new double[] {2, 8, 8}, within(1e-9));
        assertThat(curve.levelPins()).containsExactly(new double[] {-2, -8, -8}, within(1e-9));
        assertThat(curve.sets()).isEqualTo(1);
    }

    @Test
    void aCycleWithoutGamesAndAFailureThatCostsLessAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> CyclePolicy.growingLoss(1, new double[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> CyclePolicy.growingLoss(-1, new double[] {1}));
        assertThatIllegalArgumentException().isThrownBy(() -> CyclePolicy.ageReplacement(new double[] {1}, 2, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> CyclePolicy.ageReplacement(new double[] {1}, -1, 1));
        assertThat(CyclePolicy.ageReplacement(new double[] {0.5}, 0, 0).costPerGame())
                .isZero();
        assertThat(CyclePolicy.growingLoss(0, new double[] {1, 1}).games()).isEqualTo(1);
    }

    /**
     * Squads play two games each and lose 0, 3 and 8 pins a game by the squads before them on the oil; oiling four
     * lanes costs 12. One oiling: 12 + 6 + 16 = 34; two: 24 + 6 = 30, before the second squad or the third; three: 36.
     */
    @Test
    void theCheapestSquadsToOilBeforeFollowFromTheirLosses() {
        List<BlockPlaying> one = List.of(squad(0), squad(0, -3), squad(0, -3, -8));
        ReoilPlan plan = new ReoilPlan(1, 4, GAMES, 3, 2, COSTS);

        OilingSchedules found = new ScheduleChoice(event(), plan, 1, 1).of(List.of(one, one, one, one), 5);

        assertThat(found.byOilings())
                .extracting(OilingSchedule::squads)
                .containsExactly(List.of(0), List.of(0, 2), List.of(0, 1, 2));
        assertThat(found.byOilings().get(0).cost()).isCloseTo(34, within(1e-9));
        assertThat(found.byOilings().get(2).cost()).isCloseTo(36, within(1e-9));
        assertThat(found.best()).isEqualTo(2);
        OilingSchedule best = found.cheapest();
        assertThat(best.oilingCost()).isCloseTo(24, within(1e-9));
        assertThat(best.scoresCost()).isCloseTo(6, within(1e-9));
        assertThat(best.low()).isCloseTo(30, within(1e-9));
        assertThat(best.high()).isCloseTo(30, within(1e-9));
        // 22 mL on each of four lanes, twice.
        assertThat(best.oilLitres()).isCloseTo(0.176, within(1e-9));
        assertThat(best.machineHours())
                .isPositive()
                .isCloseTo(2 * found.byOilings().get(0).machineHours(), within(1e-9));
        assertThat(best.spreadPins()).isCloseTo(Math.sqrt(18 / 6.0), within(1e-9));
        assertThat(best.worst()).isEqualTo(1);
        assertThat(best.worstPins()).isCloseTo(3, within(1e-9));
        assertThat(best.paybacks()).singleElement().satisfies(payback -> {
            assertThat(payback.squad()).isEqualTo(2);
            assertThat(payback.cost()).isCloseTo(12, within(1e-9));
            assertThat(payback.saves()).isCloseTo(16, within(1e-9));
            assertThat(payback.payer()).isEqualTo(2);
            assertThat(payback.payerSaves()).isCloseTo(16, within(1e-9));
        });
        assertThat(found.asPlanned().squads()).containsExactly(0, 2);
    }

    /** Oiled before all three squads, of which each is then on oil of its own. */
    @Test
    void anOilingSavesWhatItsSquadWouldLoseOnTheOilBeforeIt() {
        List<BlockPlaying> one = List.of(squad(0), squad(0, -3), squad(0, -3, -8));
        ReoilPlan plan = new ReoilPlan(1, 4, GAMES, 3, 2, COSTS);

        OilingSchedule three = new ScheduleChoice(event(), plan, 1, 1)
                .of(List.of(one, one, one, one), 3)
                .byOilings()
                .get(2);

        // Before the second: 2 x 3 pins; before the third, on the second's oil: 2 x 3.
        assertThat(three.paybacks()).extracting(OilingSchedule.Payback::squad).containsExactly(1, 2);
        assertThat(three.paybacks().get(0).saves()).isCloseTo(6, within(1e-9));
        assertThat(three.paybacks().get(1).saves()).isCloseTo(6, within(1e-9));
        assertThat(three.scoresCost()).isCloseTo(0, within(1e-9));
    }
}
