package lanetide.squads.recondition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.machines.OilingCost;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Laws;
import lanetide.squads.model.Levels;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.SquadResult;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Playable;
import lanetide.squads.study.PossibleEvents;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScheduleStudyTest {
    private static final int SESSIONS = 4;
    private static final long HOUR_MS = 3_600_000;
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    private static final List<String> LEVELS = List.of("scratch", "league", "casual");

    private static final List<Integer> OILINGS_OF_WEEKS = new ArrayList<>();

    @AfterAll
    static void theReadmeSaysHowManyWeeksAgreed() {
        ReadmeRow.says(
                "oilings of small weeks, each choice of squads played", OILINGS_OF_WEEKS.size() + " of 5 the best");
    }

    /** A week of one pair: each day a session of its own people. */
    private static Event week(long seed, SplitModel split) {
        Random random = new Random(seed);
        List<Squad> squads = IntStream.range(0, SESSIONS)
                .mapToObj(day -> Fixtures.squad(
                        "day " + day,
                        24 * HOUR_MS * day,
                        day == 0 ? Conditioning.STRIP_AND_OIL : Conditioning.NONE,
                        0,
                        List.of(new Group("1", List.of(bowler(day + "a", random), bowler(day + "b", random))))))
                .toList();
        return Fixtures.event(
                        "week",
                        Fixtures.centre(1, Fixtures.machines(1, 45_000, 45_000)),
                        OilPattern.of("house", 40 * LaneGeometry.FOOT_M, 22, 6),
                        squads,
                        squads.stream()
                                .map(squad -> new Stay().plan(1, 1, 1 + random.nextInt(3)))
                                .toList(),
                        PaceOfPlay.USUAL)
                .withLaws(new Laws(Laws.USUAL.friction(), split));
    }

    private static Bowler bowler(String id, Random random) {
        return Fixtures.bowler(
                id,
                random.nextBoolean() ? Hand.RIGHT : Hand.LEFT,
                STYLES.get(random.nextInt(STYLES.size())),
                Levels.shipped().get(LEVELS.get(random.nextInt(LEVELS.size()))),
                "medium-reactive");
    }

    private static ReoilPlan plan(long seed) {
        return new ReoilPlan(seed, 6, 2, 2, 1.5, new Costs("EUR", 20, 0.2, 20, 10, 0.05, 3));
    }

    private static OilingSchedules study(Event week, long seed, int threads) {
        return ScheduleStudy.run(new PossibleEvents(week, 1), plan(seed), SESSIONS, Execution.on(threads), done -> {});
    }

    private static List<SquadResult> played(Event event, long seed) {
        return new TournamentSimulation(
                        Playable.of(event).setup(LuckSource.byFrameInSquads(new RandomStreams(seed).forReplication(0))))
                .play()
                .squads();
    }

    /** Oiled before the squads whose bits are set. */
    private static List<Integer> choice(int bits) {
        return IntStream.range(0, SESSIONS)
                .filter(s -> s == 0 || (bits >> (s - 1) & 1) == 1)
                .boxed()
                .toList();
    }

    private static Event oiled(Event week, List<Integer> choice) {
        return week.withSquads(IntStream.range(0, SESSIONS)
                .mapToObj(s -> week.squads()
                        .get(s)
                        .withConditioning(choice.contains(s) ? Conditioning.STRIP_AND_OIL : Conditioning.NONE))
                .toList());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noChoiceOfSquadsCostsLessThanTheOneTold(long seed) {
        Event week = week(seed, SplitModel.FORWARD_ROLL);
        OilingSchedules found = study(week, seed, 1);
        List<List<SquadResult>> from = IntStream.range(0, SESSIONS)
                .mapToObj(first -> played(ScheduleStudy.from(week, first), seed))
                .toList();

        double[] least = new double[SESSIONS + 1];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (int bits = 0; bits < 1 << (SESSIONS - 1); bits++) {
            List<Integer> choice = choice(bits);
            Event oiled = oiled(week, choice);
            List<SquadResult> played = played(oiled, seed);
            for (int squad = 0; squad < SESSIONS; squad++) {
                int s = squad;
                int start =
                        choice.stream().filter(c -> c <= s).reduce((a, b) -> b).orElseThrow();
                assertThat(played.get(squad).bowlers())
                        .as("squad %d of %s is played as from %d on", squad, choice, start)
                        .usingRecursiveComparison()
                        .isEqualTo(from.get(start).get(squad - start).bowlers());
            }
            double cost = study(oiled, seed, 1).asPlanned().cost();
            least[choice.size()] = Math.min(least[choice.size()], cost);
        }

        for (int oilings = 1; oilings <= SESSIONS; oilings++) {
            assertThat(found.byOilings().get(oilings - 1).cost()).isCloseTo(least[oilings], within(1e-9));
        }
        double best = java.util.Arrays.stream(least).min().orElseThrow();
        assertThat(found.cheapest().cost()).isCloseTo(best, within(1e-9));
        OILINGS_OF_WEEKS.add(found.best());
    }

    /** From each squad on, and once on lanes that do not change. */
    @Test
    void aWeekOfFourSessionsTakesFivePlayingsForEachLuck() {
        assertThat(ScheduleStudy.playings(week(1, SplitModel.NONE), 6)).isEqualTo(30);
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfThreads() {
        Event week = week(1, SplitModel.FORWARD_ROLL);

        assertThat(study(week, 1, 3)).isEqualTo(study(week, 1, 1));
    }

    @Test
    void whereBallsMoveNoOilOneOilingIsEnoughAndNoOtherSavesAnything() {
        OilingSchedules still = study(week(1, SplitModel.NONE), 1, 1);

        assertThat(still.best()).isEqualTo(1);
        assertThat(still.byOilings()).allSatisfy(schedule -> {
            assertThat(schedule.scoresCost()).isZero();
            assertThat(schedule.spreadPins()).isZero();
            assertThat(schedule.paybacks())
                    .hasSize(schedule.squads().size() - 1)
                    .allSatisfy(payback -> assertThat(payback.saves()).isZero());
        });
    }

    /** Leaving one oiling out costs what it saves less what it costs. */
    @Test
    void whatAnOilingSavesIsWhatItsSquadsWouldCostMoreWithoutIt() {
        Event week = week(2, SplitModel.FORWARD_ROLL);
        OilingSchedule two = study(week, 2, 1).byOilings().get(1);
        OilingSchedule.Payback payback = two.paybacks().get(0);

        double without = study(oiled(week, List.of(0)), 2, 1).asPlanned().cost();

        assertThat(without - two.cost()).isCloseTo(payback.saves() - payback.cost(), within(1e-9));
        assertThat(payback.payerSaves()).isBetween(payback.saves() / SESSIONS, payback.saves());
    }

    /** Two lanes, 90 s each, 10 a lane's hour: half of the work before opening, all of it, none of it. */
    @Test
    void lanesThatAreOiledBeforeTheCentreOpensLoseNothing() {
        Event week = week(1, SplitModel.NONE);
        double idle = 2 * 10 * 180 / 3600.0;

        assertThat(cost(week, OptionalLong.empty())).isCloseTo(idle, within(1e-9));
        assertThat(cost(week, OptionalLong.of(0))).isCloseTo(0, within(1e-9));
        Event later = week.withSquads(
                List.of(week.squads().get(0).startingAt(10 * HOUR_MS)),
                List.of(week.plans().get(0)));
        assertThat(cost(later, OptionalLong.of(10 * HOUR_MS))).isCloseTo(0, within(1e-9));
        assertThat(cost(later, OptionalLong.of(10 * HOUR_MS - 90_000))).isCloseTo(idle / 2, within(1e-9));
        assertThat(cost(later, OptionalLong.of(9 * HOUR_MS))).isCloseTo(idle, within(1e-9));
    }

    private static double cost(Event event, OptionalLong opensMs) {
        return new OilingCost(new Costs("EUR", 0, 0, 0, 10, 0, 3, opensMs), event).before(0);
    }
}
