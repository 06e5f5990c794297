package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.machines.OilingCost;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Laws;
import lanetide.squads.model.Levels;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReoilStudyTest {
    private static final int GAMES = 6;

    private static ReoilResult result;
    private static int bestOilings;

    @AfterAll
    static void theReadmeSaysHowManyOilingsWereTheBest() {
        ReadmeRow.says("oilings of an event, by events", bestOilings + " of 5 the best");
    }

    @BeforeAll
    static void study() {
        result = ReoilStudy.run(event(SplitModel.FORWARD_ROLL), plan(Costs.USUAL), 1, done -> {});
    }

    private static ReoilPlan plan(Costs costs) {
        return new ReoilPlan(3, 4, GAMES, 2, 1.5, costs);
    }

    private static Event event(SplitModel split) {
        List<Group> groups = IntStream.rangeClosed(1, 2)
                .mapToObj(g -> new Group(
                        String.valueOf(g),
                        List.of(bowler(g + "a", Hand.RIGHT, "power"), bowler(g + "b", Hand.LEFT, "stroker"))))
                .toList();
        return Fixtures.event(
                        "test",
                        Fixtures.centre(2, Fixtures.machines(1, 45_000, 45_000)),
                        OilPattern.of("test", 41 * LaneGeometry.FOOT_M, 26, 3),
                        List.of(Fixtures.squad("A", 0, Conditioning.STRIP_AND_OIL, 600_000, groups)),
                        List.of(new Ring(1, 1).plan(2, 2, 2)),
                        PaceOfPlay.USUAL)
                .withLaws(new Laws(Laws.USUAL.friction(), split));
    }

    private static Bowler bowler(String id, Hand hand, String style) {
        return Fixtures.bowler(id, hand, style, Levels.shipped().get("scratch"), "medium-reactive");
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfThreads() {
        List<Integer> told = java.util.Collections.synchronizedList(new ArrayList<>());

        ReoilResult again = ReoilStudy.run(event(SplitModel.FORWARD_ROLL), plan(Costs.USUAL), 3, told::add);

        assertThat(again).isEqualTo(result);
        assertThat(told).hasSize(ReoilStudy.playings(plan(Costs.USUAL))).isSorted();
    }

    @Test
    void theCurveFollowsTheLanesThroughAllGames() {
        assertThat(result.curve()).hasSize(GAMES);
        assertThat(result.curve().get(GAMES - 1).windowShiftBoards()).isPositive();
        assertThat(result.curve()).allSatisfy(point -> {
            assertThat(point.windowWidthBoards().orElseThrow()).isBetween(0.0, 20.0);
            assertThat(point.pocketShare().orElseThrow()).isBetween(0.0, 1.0);
            assertThat(point.spreadPins()).isNotNegative();
        });
    }

    @Test
    void theCostOfAGameIsThatOfTheOilingAndOfTheScoresDividedByTheGames() {
        double spent = result.pairAllAtOnce();
        for (CurvePoint point : result.curve()) {
            spent += point.spreadPins() * 2 * Costs.USUAL.pin();
            assertThat(point.costPerGame()).isCloseTo(spent / point.games(), within(1e-9));
        }
        double least = result.curve().stream()
                .mapToDouble(CurvePoint::costPerGame)
                .min()
                .orElseThrow();
        assertThat(result.interval(Basis.COST).costPerGame().orElseThrow()).isCloseTo(least, within(1e-9));
    }

    /** One machine, 45 s a lane to clean and 45 s to oil, four lanes; two bowlers on a pair, two games. */
    @Test
    void strippingAndOilingOverAreComparedByScoresAndWorkOfASquad() {
        OilingCost costs = new OilingCost(Costs.USUAL, event(SplitModel.FORWARD_ROLL));
        OilOver told = result.oilOver();

        assertThat(told.games()).isEqualTo(2);
        assertThat(told.stripMinutes()).isCloseTo(6, within(1e-9));
        assertThat(told.overMinutes()).isCloseTo(3, within(1e-9));
        assertThat(told.stripSpreadPins()).isPositive().isNotEqualTo(told.overSpreadPins());
        assertThat(told.stripCostPerGame())
                .isCloseTo(
                        told.stripSpreadPins() * 2 * Costs.USUAL.pin()
                                + costs.pairAllAtOnce(Conditioning.STRIP_AND_OIL) / 2,
                        within(1e-9));
        assertThat(told.overCostPerGame())
                .isCloseTo(
                        told.overSpreadPins() * 2 * Costs.USUAL.pin() + costs.pairAllAtOnce(Conditioning.OIL_OVER) / 2,
                        within(1e-9));
    }

    @Test
    void theEventCostsWhatItsTwoGamesAndOneOilingDo() {
        double scores = result.curve().subList(0, 2).stream()
                .mapToDouble(CurvePoint::spreadPins)
                .sum();

        assertThat(result.asPlanned().costPerPair())
                .isCloseTo(scores * 2 * Costs.USUAL.pin() + result.pairAllAtOnce(), within(1e-9));
        assertThat(result.best()).isEqualTo(result.asPlanned());
    }

    /** The curve; then half as often, but four times at least, strip and oil, and oil over. */
    @ParameterizedTest
    @CsvSource({"4, 12", "8, 16", "20, 40"})
    void aStudyTakesTwiceItsPlayingsUnlessThatIsVeryFew(int replications, int playings) {
        assertThat(ReoilStudy.playings(new ReoilPlan(3, replications, GAMES, 2, 1.5, Costs.USUAL)))
                .isEqualTo(playings);
    }

    /** What is best under each set lies apart, and what luck alone leaves lies apart from that. */
    @Test
    void underSeveralSetsTheLeastRegretIsToldAndIntervalsHoldTheSets() {
        ReoilResult sets = ReoilStudy.run(
                new PossibleEvents(event(SplitModel.FORWARD_ROLL), 2), plan(Costs.USUAL), Execution.on(1), done -> {});

        assertThat(result.leastRegret()).isEmpty();
        assertThat(sets.leastRegret()).isPresent();
        assertThat(sets.sets()).isEqualTo(2);
        assertThat(sets.intervals()).allSatisfy(interval -> {
            assertThat(interval.low()).isLessThanOrEqualTo(interval.games());
            assertThat(interval.high()).isGreaterThanOrEqualTo(interval.games());
        });
        assertThat(sets.intervals())
                .anyMatch(interval -> interval.low() != interval.luckLow() || interval.high() != interval.luckHigh());
        assertThat(result.intervals())
                .allMatch(interval -> interval.low() == interval.luckLow() && interval.high() == interval.luckHigh());
    }

    @Test
    void everyIntervalHoldsItsEstimate() {
        assertThat(result.intervals()).hasSize(Basis.values().length).allSatisfy(interval -> {
            assertThat(interval.low()).isLessThanOrEqualTo(interval.games());
            assertThat(interval.high()).isGreaterThanOrEqualTo(interval.games());
        });
    }

    /** Where balls move no oil nothing changes, and no oiling ever pays. */
    @Test
    void lanesThatDoNotWearNeedNoOil() {
        ReoilResult still = ReoilStudy.run(event(SplitModel.NONE), plan(Costs.USUAL), 2, done -> {});

        assertThat(still.curve()).allSatisfy(point -> {
            assertThat(point.spreadPins()).isEqualTo(0.0);
            assertThat(point.levelPins()).isEqualTo(0.0);
            // The finder starts each search from the last line it found.
            assertThat(point.windowShiftBoards()).isCloseTo(0, within(1e-6));
        });
        assertThat(still.interval(Basis.COST).beyond()).isTrue();
        assertThat(still.interval(Basis.THRESHOLD).games()).isEqualTo(GAMES);
        assertThat(still.interval(Basis.AGE).beyond()).isTrue();
        double mostPins =
                still.curve().stream().mapToDouble(CurvePoint::spreadPins).max().orElseThrow();
        ReadmeRow.says("lanes that stay as they are laid: change of scores", mostPins + " pins");
    }

    @Test
    void whereAPinIsWorthMuchOilingPaysAfterEveryGameAndWhereItIsWorthNothingNever() {
        Costs dear = new Costs("EUR", 0, 0, 0, 0, 1000, 3);
        Costs free = new Costs("EUR", 20, 0.2, 20, 10, 0, 3);

        ReoilResult nothing = ReoilStudy.run(event(SplitModel.FORWARD_ROLL), plan(free), 2, done -> {});
        assertThat(nothing.interval(Basis.COST).beyond()).isTrue();
        assertThat(nothing.interval(Basis.COST_LANE_BY_LANE).beyond()).isTrue();

        ReoilResult everything = ReoilStudy.run(event(SplitModel.FORWARD_ROLL), plan(dear), 2, done -> {});
        double best = everything.interval(Basis.COST).games();
        double firstBest = IntStream.rangeClosed(1, GAMES)
                .boxed()
                .min(java.util.Comparator.comparingDouble(
                        n -> everything.curve().get(n - 1).costPerGame()))
                .orElseThrow();
        assertThat(best).isEqualTo(firstBest).isLessThan(GAMES);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theOilingsOfAnEventAreTheBestOfAllChoices(long seed) {
        Random random = new Random(seed);
        int squads = 1 + random.nextInt(6);
        List<Integer> games =
                IntStream.range(0, squads).mapToObj(s -> 1 + random.nextInt(5)).toList();
        double[] loss = random.doubles(12, 0, 3).toArray();
        double oiling = random.nextDouble() * 10;

        double best = Double.POSITIVE_INFINITY;
        for (int choice = 0; choice < 1 << (squads - 1); choice++) {
            List<Integer> before = new ArrayList<>(List.of(0));
            for (int s = 1; s < squads; s++) {
                if ((choice >> (s - 1) & 1) == 1) {
                    before.add(s);
                }
            }
            best = Math.min(best, EventOiling.of(before, games, loss, oiling).costPerPair());
        }

        EventOiling found = EventOiling.best(games, loss, oiling);
        assertThat(found.costPerPair()).isCloseTo(best, within(1e-9));
        assertThat(EventOiling.of(found.squads(), games, loss, oiling).costPerPair())
                .isCloseTo(found.costPerPair(), within(1e-9));
        bestOilings++;
    }

    @Test
    void aPairOiledWithAllOthersWaitsForThemAndAPairAloneDoesNot() {
        Costs lanes = new Costs("EUR", 0, 0, 0, 60, 1, 3);

        // Four lanes at 1.5 minutes stand still for 6 minutes each; a pair alone for 3.
        assertThat(new OilingCost(lanes, event(SplitModel.NONE)).pairAllAtOnce(Conditioning.STRIP_AND_OIL))
                .isCloseTo(12, within(1e-9));
        assertThat(new OilingCost(lanes, event(SplitModel.NONE)).pairAlone(Conditioning.STRIP_AND_OIL))
                .isCloseTo(6, within(1e-9));
        Costs material = new Costs("EUR", 100, 0.5, 0, 0, 1, 3);
        assertThat(new OilingCost(material, event(SplitModel.NONE)).pairAlone(Conditioning.STRIP_AND_OIL))
                .isCloseTo(6.2, within(1e-9));
        assertThat(new OilingCost(material, event(SplitModel.NONE)).pairAlone(Conditioning.OIL_OVER))
                .isCloseTo(5.2, within(1e-9));
    }

    @Test
    void costsThatMakeNoSenseAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Costs("EUR", -1, 0, 0, 0, 1, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Costs("EUR", 1, 0, 0, 0, 1, 0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> new ReoilPlan(1, 3, 6, 2, 1, Costs.USUAL));
        assertThatIllegalArgumentException().isThrownBy(() -> new ReoilPlan(1, 4, 6, 0, 1, Costs.USUAL));
    }
}
