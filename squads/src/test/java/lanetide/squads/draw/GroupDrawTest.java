package lanetide.squads.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.draw.GroupDraw.Entry;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Levels;
import org.junit.jupiter.api.Test;

class GroupDrawTest {
    private static final String[] STYLES = {"straight", "stroker", "tweener", "power"};

    /** Twenty-four: six left-handers, six of each style, averages from 150 to 219 in steps of three. */
    private static final List<Entry> FIELD = IntStream.range(0, 24)
            .mapToObj(i -> new Entry(
                    Fixtures.bowler(
                            "b" + i,
                            i % 4 == 1 ? Hand.LEFT : Hand.RIGHT,
                            STYLES[i / 6],
                            Levels.shipped().get("league"),
                            "urethane"),
                    OptionalInt.of(150 + 3 * i)))
            .toList();

    private static List<List<Entry>> drawn(int groups, Set<Rule> rules, long seed) {
        return GroupDraw.draw(FIELD, groups, rules, new RandomStreams(seed).stream("draw/squad/A"));
    }

    private static double spreadOf(List<List<Entry>> groups, ToDoubleFunction<List<Traits>> of) {
        return spread(
                groups,
                group -> of.applyAsDouble(group.stream().map(Entry::traits).toList()));
    }

    private static double spread(List<List<Entry>> groups, ToDoubleFunction<List<Entry>> of) {
        return groups.stream().mapToDouble(of).max().orElseThrow()
                - groups.stream().mapToDouble(of).min().orElseThrow();
    }

    @Test
    void everybodyIsInOneGroupAndGroupsDifferByOneAtMost() {
        for (int groups : new int[] {1, 5, 6, 7, 24}) {
            List<List<Entry>> drawn = drawn(groups, EnumSet.allOf(Rule.class), 3);
            assertThat(drawn.stream().flatMap(List::stream)).containsExactlyInAnyOrderElementsOf(FIELD);
            assertThat(spread(drawn, List::size)).isLessThanOrEqualTo(1);
        }
    }

    @Test
    void whatTheRulesNameIsSpreadEvenly() {
        for (long seed = 1; seed <= 20; seed++) {
            List<List<Entry>> drawn = drawn(6, EnumSet.allOf(Rule.class), seed);
            assertThat(spreadOf(drawn, Traits::left)).isLessThanOrEqualTo(1);
            for (String style : STYLES) {
                assertThat(spreadOf(drawn, group -> Traits.ofStyle(group, style)))
                        .isLessThanOrEqualTo(1);
            }
            assertThat(spreadOf(drawn, group -> Traits.mean(group, 0))).isLessThan(12);
        }
    }

    @Test
    void aSingleRuleIsKeptUpToOneStepBetweenTwoBowlers() {
        for (long seed = 1; seed <= 20; seed++) {
            assertThat(spreadOf(drawn(6, EnumSet.of(Rule.HANDS), seed), Traits::left))
                    .isZero();
            assertThat(spreadOf(drawn(6, EnumSet.of(Rule.AVERAGES), seed), group -> Traits.mean(group, 0)))
                    .isLessThan(3);
        }
    }

    @Test
    void theLotDecidesAmongWhatIsAboutAsEven() {
        Set<List<List<Entry>>> seen = new HashSet<>();
        for (long seed = 1; seed <= 20; seed++) {
            seen.add(drawn(6, EnumSet.allOf(Rule.class), seed));
            assertThat(drawn(6, EnumSet.allOf(Rule.class), seed)).isEqualTo(drawn(6, EnumSet.allOf(Rule.class), seed));
        }
        assertThat(seen).hasSize(20);
    }

    @Test
    void withoutRulesItIsTheLotAlone() {
        double most = 0;
        for (long seed = 1; seed <= 20; seed++) {
            most = Math.max(most, spreadOf(drawn(6, EnumSet.noneOf(Rule.class), seed), Traits::left));
        }
        assertThat(most).isGreaterThanOrEqualTo(2);
    }
}
