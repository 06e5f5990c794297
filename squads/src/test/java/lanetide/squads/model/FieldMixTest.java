package lanetide.squads.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.FieldMix.Share;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FieldMixTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();
    private static final RandomStreams STREAMS = new RandomStreams(1);

    @Test
    void everyShareIsCountedOutExactly() {
        List<Bowler> bowlers = bowlers(mix(60, 0.85, 0.10).groups("A", 12, STREAMS));

        assertThat(counts(bowlers, Bowler::hand)).isEqualTo(Map.of(Hand.RIGHT, 51L, Hand.LEFT, 9L));
        assertThat(counts(bowlers, bowler -> bowler.style().id())).isEqualTo(Map.of("straight", 6L, "power", 54L));
    }

    /**
     * The textbook example of Hamilton's method, from memory: 47, 16, 15.8, 12, 6.1 and 3.1 % of the votes, ten seats.
     */
    @Test
    void leftOverSeatsGoToTheLargestRemainders() {
        List<Share<String>> shares = List.of(
                new Share<>("a", 0.47),
                new Share<>("b", 0.16),
                new Share<>("c", 0.158),
                new Share<>("d", 0.12),
                new Share<>("e", 0.061),
                new Share<>("f", 0.031));

        assertThat(FieldMix.counts(shares, 10)).containsExactly(5, 2, 1, 1, 1, 0);
    }

    @ParameterizedTest
    @CsvSource({"60, 12, 5, 5", "61, 12, 5, 6", "7, 2, 3, 4", "3, 8, 1, 1"})
    void bowlersAreSpreadEvenly(int bowlers, int pairs, int smallest, int largest) {
        List<Group> groups = mix(bowlers, 0.5, 0.5).groups("A", pairs, STREAMS);

        assertThat(groups).hasSize(Math.min(bowlers, pairs));
        assertThat(groups).extracting(group -> group.bowlers().size()).contains(smallest, largest);
        assertThat(groups)
                .allSatisfy(group -> assertThat(group.bowlers().size()).isBetween(smallest, largest));
    }

    @Test
    void bowlersAreNamedForTheirSquadAndGroupsAreNumbered() {
        List<Group> groups = mix(4, 0.5, 0.5).groups("A", 2, STREAMS);

        assertThat(groups).extracting(Group::id).containsExactly("1", "2");
        assertThat(bowlers(groups)).extracting(Bowler::id).containsExactly("A-01", "A-02", "A-03", "A-04");
        assertThat(bowlers(mix(100, 0.5, 0.5).groups("B", 10, STREAMS)))
                .extracting(Bowler::id)
                .contains("B-001");
    }

    @Test
    void changingOneAttributeMovesNoOther() {
        List<Bowler> before = bowlers(mix(60, 0.85, 0.10).groups("A", 12, STREAMS));
        List<Bowler> after = bowlers(mix(60, 0.50, 0.10).groups("A", 12, STREAMS));

        assertThat(after)
                .extracting(Bowler::style)
                .isEqualTo(before.stream().map(Bowler::style).toList());
        assertThat(after)
                .extracting(Bowler::hand)
                .isNotEqualTo(before.stream().map(Bowler::hand).toList());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theCountsHoldForEverySeedAndTheDrawDependsOnNothingElse(long seed) {
        FieldMix mix = mix(37, 0.9, 0.3);

        List<Group> groups = mix.groups("A", 9, new RandomStreams(seed));

        assertThat(groups).as("seed %d", seed).isEqualTo(mix.groups("A", 9, new RandomStreams(seed)));
        assertThat(counts(bowlers(groups), Bowler::hand))
                .as("seed %d", seed)
                .isEqualTo(Map.of(Hand.RIGHT, 33L, Hand.LEFT, 4L));
    }

    static LongStream seeds() {
        return LongStream.range(0, 20);
    }

    @Test
    void squadsAreDrawnApart() {
        FieldMix mix = mix(60, 0.5, 0.5);

        assertThat(bowlers(mix.groups("A", 12, STREAMS)))
                .extracting(Bowler::hand)
                .isNotEqualTo(bowlers(mix.groups("B", 12, STREAMS)).stream()
                        .map(Bowler::hand)
                        .toList());
    }

    /** Of 4000 draws 1000 are expected to be rare; six standard deviations of their number are 165. */
    @Test
    void oneKindIsDrawnAsOftenAsItsShareSays() {
        List<Share<String>> shares =
                List.of(new Share<>("never", 0), new Share<>("rare", 0.25), new Share<>("often", 0.75));

        Map<String, Long> drawn = LongStream.range(0, 4000)
                .mapToObj(i -> FieldMix.one(shares, STREAMS, "somebody/" + i))
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));

        assertThat(drawn).containsOnlyKeys("rare", "often");
        assertThat(drawn.get("rare")).isBetween(835L, 1165L);
        assertThat(FieldMix.one(shares, STREAMS, "somebody/7")).isEqualTo(FieldMix.one(shares, STREAMS, "somebody/7"));
        assertThatThrownBy(() -> FieldMix.one(List.of(), STREAMS, "somebody"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no kind to draw");
    }

    /** O'Keefe, US Bowler, July 2012. */
    @Test
    void levelsAreToldFromPublishedAverages() {
        assertThat(Levels.idsFromAverage())
                .containsExactly(
                        Map.entry(0, "casual"),
                        Map.entry(180, "league"),
                        Map.entry(200, "scratch"),
                        Map.entry(220, "elite"));
    }

    @Test
    void sharesThatAreNotAllOfTheFieldAreRefused() {
        assertThatThrownBy(() -> mix(10, 0.5, 0.5, 0.4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("shares of hands add up to 0.9, but must add up to 1");
        assertThatThrownBy(() -> new Share<>("a", Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> mix(0, 0.5, 0.5)).hasMessageContaining("bowlers is 0");
        assertThatThrownBy(() -> mix(10, 0.5, 0.5).groups("A", 0, STREAMS)).hasMessageContaining("pairs is 0");
    }

    private static FieldMix mix(int bowlers, double right, double straight) {
        return mix(bowlers, right, straight, 1 - right);
    }

    private static FieldMix mix(int bowlers, double right, double straight, double left) {
        Map<String, PlayingStyle> styles = CATALOGUE.styles();
        Coverstock plastic = CATALOGUE.covers().get("plastic");
        return new FieldMix(
                bowlers,
                List.of(new Share<>(Hand.RIGHT, right), new Share<>(Hand.LEFT, left)),
                List.of(new Share<>(styles.get("straight"), straight), new Share<>(styles.get("power"), 1 - straight)),
                List.of(new Share<>(Levels.shipped().get("league"), 1)),
                List.of(new Share<>(plastic, 1)),
                plastic,
                List.of(new Share<>(Bowler.DEFAULT_TEMPO, 1)),
                Optional.empty());
    }

    private static List<Bowler> bowlers(List<Group> groups) {
        return groups.stream().flatMap(group -> group.bowlers().stream()).toList();
    }

    private static <K> Map<K, Long> counts(List<Bowler> bowlers, Function<Bowler, K> kind) {
        return bowlers.stream().collect(Collectors.groupingBy(kind, TreeMap::new, Collectors.counting()));
    }
}
