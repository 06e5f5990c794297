package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.des.Simulator;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.Tally;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.result.EventResult;
import lanetide.squads.rotation.design.Ring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a director reads first must not hang on what he cannot see. */
class HeadlinesTest {
    private static final int PLAYINGS = 12;

    /** Without spread all pairs are in step, so that many events fall on the same millisecond. */
    static List<PaceOfPlay> paces() {
        return List.of(PaceOfPlay.USUAL, Fixtures.withSpread(PaceOfPlay.USUAL, 0));
    }

    @ParameterizedTest
    @MethodSource("paces")
    void anotherOrderOfSimultaneousEventsMovesNoHeadlineBeyondItsInterval(PaceOfPlay pace) {
        Event event = Events.event(
                Events.centre(4),
                new Ring(1, 1).plan(4, 4, 3),
                pace,
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(4, 4, 3, 4)));
        List<EventResult> usual = playings(event, false);
        List<EventResult> permuted = playings(event, true);

        within(usual, permuted, result -> result.squads().get(0).meanScore());
        within(usual, permuted, result -> result.squads().get(0).endMs());
        within(
                usual,
                permuted,
                result -> result.squads().get(0).pace().minutesPerBowlerGame().orElseThrow());
        within(
                usual,
                permuted,
                result -> result.lanes().get(result.lanes().size() - 1).headUnitsLow());
    }

    private static List<EventResult> playings(Event event, boolean permuted) {
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        return IntStream.range(0, PLAYINGS)
                .mapToObj(r -> new RandomStreams(1).forReplication(r))
                .map(luck -> new TournamentSimulation(Events.on(
                                permuted ? Simulator.permutingTies(luck.stream("ties")) : new Simulator(),
                                Setup.of(event, Events.PHYSICS, lines, LuckSource.byBall(luck))))
                        .play())
                .toList();
    }

    private static void within(
            List<EventResult> usual, List<EventResult> permuted, ToDoubleFunction<EventResult> headline) {
        Tally expected = new Tally("usual");
        Tally found = new Tally("permuted");
        usual.forEach(result -> expected.add(headline.applyAsDouble(result)));
        permuted.forEach(result -> found.add(headline.applyAsDouble(result)));
        ConfidenceInterval interval = expected.meanInterval(0.95);
        assertThat(found.mean()).isBetween(interval.low(), interval.high());
    }

    /** Twenty-four bowlers on ever more pairs, each group of four styles alike. */
    @Test
    void moreLanesForASquadNeverLengthenItsDay() {
        List<Double> endsMs = new ArrayList<>();
        for (int pairs : new int[] {3, 4, 6, 8, 12, 24}) {
            List<Group> groups = Events.casualGroups(pairs, 24 / pairs);
            Event event = Events.event(
                    Events.centre(pairs),
                    new Ring(1, 1).plan(pairs, pairs, 3),
                    PaceOfPlay.USUAL,
                    Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, groups));
            endsMs.add(IntStream.range(0, 4)
                    .mapToDouble(
                            seed -> Events.play(event, seed).squads().get(0).endMs())
                    .average()
                    .orElseThrow());
        }

        for (int i = 1; i < endsMs.size(); i++) {
            assertThat(endsMs.get(i)).as("ends %s", endsMs).isLessThan(endsMs.get(i - 1));
        }
    }
}
