package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.SquadResult;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Same event and seed, same result; and luck is a bowler's own. */
class RandomnessTest {
    private static final Event EVENT = Events.event(
            Events.centre(3),
            new Ring(1, 1).plan(3, 3, 2),
            Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(2, 3, 1)),
            Events.squad("B", Events.START_MS, Conditioning.NONE, Events.groups(2, 3, 1)));

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, Long.MIN_VALUE})
    void theSameSeedGivesTheSameResult(long seed) {
        assertThat(Events.play(EVENT, seed, true)).as("seed %d", seed).isEqualTo(Events.play(EVENT, seed, true));
    }

    @Test
    void anotherSeedGivesAnotherResult() {
        assertThat(Events.play(EVENT, 1).squads())
                .isNotEqualTo(Events.play(EVENT, 2).squads());
    }

    @Test
    void squadsOfEqualBowlersHaveDifferentLuck() {
        Event event = Events.event(
                Events.centre(1),
                Events.stay(1, 1, 2),
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(3)),
                Events.squad("B", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(3)));

        List<SquadResult> squads = Events.play(event, 1).squads();

        assertThat(squads.get(0).bowlers()).isNotEqualTo(squads.get(1).bowlers());
    }

    @Test
    void lookingForWindowsChangesNothingInThePlay() {
        EventResult with = Events.play(EVENT, 5, true);
        EventResult without = Events.play(EVENT, 5, false);

        assertThat(with.squads()).isEqualTo(without.squads());
        assertThat(with.oil()).isEqualTo(without.oil());
        assertThat(with.lanes()).allSatisfy(lane -> assertThat(lane.windows()).isNotEmpty());
        assertThat(without.lanes())
                .allSatisfy(lane -> assertThat(lane.windows()).isEmpty());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void aBowlerMoreOnAnotherPairChangesNobodysScores(long seed) {
        List<Group> groups = Events.groups(2, 2);
        List<Bowler> more = new ArrayList<>(groups.get(1).bowlers());
        more.add(0, Events.bowler("guest"));
        List<Group> changed = List.of(groups.get(0), new Group("2", more));

        List<BowlerResult> before = firstGroup(groups, seed);
        List<BowlerResult> after = firstGroup(changed, seed);

        assertThat(after).as("seed %d", seed).isEqualTo(before);
    }

    private static List<BowlerResult> firstGroup(List<Group> groups, long seed) {
        Event event = Events.event(Events.centre(2), Events.stay(2, 2, 3), groups);
        return Events.play(event, seed).squads().get(0).bowlers().subList(0, 2);
    }

    @Test
    void anyNumberOfThreadsGivesTheSameStudy() {
        StudyResult alone = EventStudy.run(EVENT, 3, 6, 1, done -> {});

        StudyResult two = EventStudy.run(EVENT, 3, 6, 2, done -> {});
        StudyResult eight = EventStudy.run(EVENT, 3, 6, 8, done -> {});
        assertThat(two).isEqualTo(alone);
        assertThat(eight).isEqualTo(alone);
        ReadmeRow.says(
                "1, 2 and 8 threads: different studies",
                String.valueOf(Stream.of(alone, two, eight).distinct().count()));
    }

    @Test
    void aStudyCountsItsPlayingsAloudAndReportsTheFirst() {
        List<Integer> done = Collections.synchronizedList(new ArrayList<>());

        StudyResult study = EventStudy.run(EVENT, 3, 4, 2, done::add);

        assertThat(done).containsExactly(1, 2, 3, 4);
        assertThat(study.first()).isEqualTo(Events.play(EVENT, 3, true));
    }

    @Test
    void everyPlayingOfAStudyIsOneOfItsOwn() {
        int replications = 8;
        StartingLines lines = new StartingLines(EVENT, Events.PHYSICS);
        List<EventResult> alone = IntStream.range(0, replications)
                .mapToObj(r -> new TournamentSimulation(Setup.of(
                                EVENT,
                                Events.PHYSICS,
                                lines,
                                LuckSource.byBall(new RandomStreams(3).forReplication(r))))
                        .play())
                .toList();

        SquadStatistics first =
                EventStudy.run(EVENT, 3, replications, 2, done -> {}).squads().get(0);

        double[] means = alone.stream()
                .mapToDouble(playing -> playing.squads().get(0).meanScore())
                .toArray();
        assertThat(new HashSet<>(alone.stream().map(EventResult::squads).toList()))
                .hasSize(replications);
        assertThat(first.meanScore())
                .isCloseTo(
                        IntStream.range(0, replications)
                                .mapToDouble(r -> means[r])
                                .average()
                                .orElseThrow(),
                        within(1e-9));
        assertThat(first.latestEndMs())
                .isEqualTo(alone.stream()
                        .mapToLong(playing -> playing.squads().get(0).endMs())
                        .max()
                        .orElseThrow());
        assertThat(first.earliestEndMs()).isLessThan(first.latestEndMs());
        assertThat(first.meanScoreCi95()).get().satisfies(interval -> {
            assertThat(interval.low()).isLessThan(first.meanScore());
            assertThat(interval.high()).isGreaterThan(first.meanScore());
        });
    }

    @Test
    void onePlayingHasNoInterval() {
        SquadStatistics only =
                EventStudy.run(EVENT, 3, 1, 1, done -> {}).squads().get(0);

        assertThat(only.meanScoreCi95()).isEmpty();
        assertThat(only.meanByGame()).hasSize(2);
    }

    @Test
    void aStudyOfNothingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EventStudy.run(EVENT, 1, 0, 1, done -> {}))
                .withMessage("replications (0) must be at least 1");
        assertThatIllegalArgumentException().isThrownBy(() -> EventStudy.run(EVENT, 1, 1, 0, done -> {}));
    }
}
