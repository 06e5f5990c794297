package lanetide.squads.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.draw.SquadDraw.Entry;
import org.junit.jupiter.api.Test;

class SquadDrawTest {
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    private static final Set<Rule> ALL = EnumSet.allOf(Rule.class);

    private static Entry entry(int number, Optional<String> partners, OptionalInt squad) {
        return new Entry(
                "P" + number,
                partners,
                squad,
                new Traits(
                        Optional.of(number % 6 == 0 ? Hand.LEFT : Hand.RIGHT),
                        Optional.of(STYLES.get(number % 4)),
                        OptionalInt.of(150 + number)));
    }

    private static List<Entry> singles(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> entry(i, Optional.empty(), OptionalInt.empty()))
                .toList();
    }

    private static List<OptionalInt> drawn(List<Entry> entries, List<Integer> places, Set<Rule> rules, long seed) {
        return SquadDraw.draw(entries, places, rules, new RandomStreams(seed).stream("draw/squads"));
    }

    private static List<Integer> sizes(List<OptionalInt> squadOf, int squads) {
        return IntStream.range(0, squads)
                .mapToObj(squad -> Collections.frequency(squadOf, OptionalInt.of(squad)))
                .toList();
    }

    private static double spread(
            List<Entry> entries, List<OptionalInt> squadOf, int squads, ToDoubleFunction<List<Traits>> of) {
        double[] values = IntStream.range(0, squads)
                .mapToDouble(squad -> of.applyAsDouble(IntStream.range(0, entries.size())
                        .filter(i -> squadOf.get(i).equals(OptionalInt.of(squad)))
                        .mapToObj(i -> entries.get(i).traits())
                        .toList()))
                .sorted()
                .toArray();
        return values[values.length - 1] - values[0];
    }

    @Test
    void everyEntryIsDrawnOnceSquadsDifferByOneAndAreAsEvenAsArithmeticAllows() {
        List<Entry> entries = singles(62);
        for (long seed = 1; seed <= 40; seed++) {
            List<OptionalInt> squadOf = drawn(entries, List.of(40, 40, 40), ALL, seed);

            assertThat(sizes(squadOf, 3)).containsExactly(21, 21, 20);
            assertThat(spread(entries, squadOf, 3, Traits::left)).isLessThanOrEqualTo(1);
            for (String style : STYLES) {
                assertThat(spread(entries, squadOf, 3, squad -> Traits.ofStyle(squad, style)))
                        .isLessThanOrEqualTo(1);
            }
            assertThat(spread(entries, squadOf, 3, squad -> Traits.mean(squad, 0)))
                    .isLessThan(4);
            assertThat(drawn(entries, List.of(40, 40, 40), ALL, seed)).isEqualTo(squadOf);
        }
    }

    @Test
    void theLotDecidesAmongWhatIsAsEven() {
        Set<List<OptionalInt>> seen = new HashSet<>();
        for (long seed = 1; seed <= 20; seed++) {
            seen.add(drawn(singles(24), List.of(12, 12, 12), ALL, seed));
        }
        assertThat(seen).hasSize(20);
    }

    @Test
    void noSquadTakesMoreThanItsPlacesAndTheOthersTakeTheRest() {
        for (long seed = 1; seed <= 40; seed++) {
            assertThat(sizes(drawn(singles(30), List.of(5, 20, 20), ALL, seed), 3))
                    .containsExactly(5, 13, 12);
        }
        List<OptionalInt> tooFew = drawn(singles(10), List.of(4, 4), ALL, 1);
        assertThat(sizes(tooFew, 2)).containsExactly(4, 4);
        assertThat(tooFew).filteredOn(OptionalInt::isEmpty).hasSize(2);
    }

    @Test
    void whoNamesASquadBowlsThereAndTheOthersAreDealtAround() {
        List<Entry> entries = IntStream.range(0, 24)
                .mapToObj(i -> entry(i, Optional.empty(), i < 6 ? OptionalInt.of(2) : OptionalInt.empty()))
                .toList();
        for (long seed = 1; seed <= 40; seed++) {
            List<OptionalInt> squadOf = drawn(entries, List.of(12, 12, 12), ALL, seed);
            assertThat(squadOf.subList(0, 6)).containsOnly(OptionalInt.of(2));
            assertThat(sizes(squadOf, 3)).containsExactly(8, 8, 8);
        }
    }

    @Test
    void partnersAreDrawnTogetherAndFollowTheOneWhoNamesASquad() {
        List<Entry> entries = IntStream.range(0, 36)
                .mapToObj(i ->
                        entry(i, Optional.of("T" + i / 2), i == 0 || i == 3 ? OptionalInt.of(1) : OptionalInt.empty()))
                .toList();
        for (long seed = 1; seed <= 40; seed++) {
            List<OptionalInt> squadOf = drawn(entries, List.of(20, 20, 20), ALL, seed);
            assertThat(sizes(squadOf, 3)).containsExactly(12, 12, 12);
            for (int i = 0; i < 36; i += 2) {
                assertThat(squadOf.get(i)).isEqualTo(squadOf.get(i + 1));
            }
            assertThat(squadOf.subList(0, 4)).containsOnly(OptionalInt.of(1));
            assertThat(spread(entries, squadOf, 3, Traits::left)).isLessThanOrEqualTo(2);
        }
    }

    /** Four people are entered twice, two pairs of partners as well; there are three squads. */
    @Test
    void nobodyIsTwiceInASquad() {
        List<Entry> entries = new ArrayList<>(IntStream.range(0, 12)
                .mapToObj(i -> entry(i, i < 4 ? Optional.of("T" + i / 2) : Optional.empty(), OptionalInt.empty()))
                .toList());
        entries.addAll(List.copyOf(entries.subList(0, 8)));
        for (long seed = 1; seed <= 40; seed++) {
            List<OptionalInt> squadOf = drawn(entries, List.of(9, 9, 9), ALL, seed);
            assertThat(squadOf).noneMatch(OptionalInt::isEmpty);
            for (int i = 0; i < 8; i++) {
                assertThat(squadOf.get(12 + i)).isNotEqualTo(squadOf.get(i));
            }
            assertThat(squadOf.get(0)).isEqualTo(squadOf.get(1));
            assertThat(squadOf.get(12)).isEqualTo(squadOf.get(13));
        }
        List<Entry> thrice = List.of(entries.get(4), entries.get(4), entries.get(4));
        assertThat(drawn(thrice, List.of(9, 9), ALL, 1))
                .filteredOn(OptionalInt::isEmpty)
                .hasSize(1);
    }

    @Test
    void relabellingSquadsChangesLabelsOnly() {
        List<Entry> entries = singles(24);
        List<Entry> named = IntStream.range(0, 24)
                .mapToObj(i -> entry(i, Optional.of("new name " + i), OptionalInt.empty()))
                .toList();
        assertThat(drawn(named, List.of(12, 12), ALL, 3)).isEqualTo(drawn(entries, List.of(12, 12), ALL, 3));
    }

    @Test
    void whatIsNotKnownOfEntriesIsLeftToTheLot() {
        List<Entry> unknown = IntStream.range(0, 9)
                .mapToObj(i -> new Entry(
                        "P" + i,
                        Optional.empty(),
                        OptionalInt.empty(),
                        new Traits(Optional.empty(), Optional.empty(), OptionalInt.empty())))
                .toList();
        assertThat(sizes(drawn(unknown, List.of(9, 9, 9), ALL, 4), 3)).containsExactly(3, 3, 3);
    }
}
