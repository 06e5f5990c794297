package lanetide.squads.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;
import lanetide.squads.model.Levels;
import org.junit.jupiter.api.Test;

class PartnersTest {
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");

    private static Bowler bowler(int number, Optional<String> partners) {
        return Fixtures.bowler(
                        "B" + number,
                        number % 6 == 0 ? Hand.LEFT : Hand.RIGHT,
                        STYLES.get(number % 4),
                        Levels.shipped().get("league"),
                        "urethane")
                .with(partners);
    }

    /** Partners of the sizes given, one after another; those of size one bowl for themselves. */
    private static List<Bowler> of(int... sizes) {
        List<Bowler> bowlers = new ArrayList<>();
        for (int team = 0; team < sizes.length; team++) {
            Optional<String> name = sizes[team] == 1 ? Optional.empty() : Optional.of("T" + team);
            for (int i = 0; i < sizes[team]; i++) {
                bowlers.add(bowler(bowlers.size(), name));
            }
        }
        return bowlers;
    }

    private static List<Integer> sizes(List<Group> groups) {
        return groups.stream().map(Group::size).toList();
    }

    private static void assertTogether(List<List<Bowler>> groups) {
        Set<String> names = groups.stream()
                .flatMap(group -> group.stream().map(Bowler::partners).flatMap(Optional::stream))
                .collect(Collectors.toSet());
        for (String name : names) {
            assertThat(groups)
                    .filteredOn(group ->
                            group.stream().anyMatch(bowler -> bowler.partners().equals(Optional.of(name))))
                    .as(name)
                    .hasSize(1);
        }
    }

    @Test
    void groupsAreFilledWithPartnersInTheOrderOfTheList() {
        List<Group> doubles = Partners.filled(of(2, 2, 2, 2, 2), 3);

        assertThat(sizes(doubles)).containsExactly(4, 4, 2);
        assertThat(doubles.get(0).bowlers()).extracting(Bowler::id).containsExactly("B0", "B1", "B2", "B3");
        assertThat(sizes(Partners.filled(of(1, 1, 1, 1, 1, 1, 1), 3))).containsExactly(3, 2, 2);
    }

    /** Eight teams of five on ten pairs: groups of four would part them all. */
    @Test
    void aTeamOfFiveStaysATeamOfFiveWhereGroupsOfFourWouldDo() {
        assertThat(sizes(Partners.filled(of(5, 5, 5, 5, 5, 5, 5, 5), 10))).containsExactly(5, 5, 5, 5, 5, 5, 5, 5);
    }

    @Test
    void partnersWhoDoNotStandTogetherInTheListAreBroughtTogether() {
        List<Bowler> mixed = List.of(
                bowler(0, Optional.of("Foxes")),
                bowler(1, Optional.of("Hares")),
                bowler(2, Optional.of("Foxes")),
                bowler(3, Optional.of("Hares")));

        assertThat(Partners.filled(mixed, 2))
                .extracting(group -> group.bowlers().stream().map(Bowler::id).toList())
                .containsExactly(List.of("B0", "B2"), List.of("B1", "B3"));
    }

    /** All ways to deal the units are tried for the smallest sum of squared sizes. */
    @Test
    void partnersOfDifferentNumbersLieAsEvenlyAsTheirNumbersAllow() {
        SplittableRandom random = new SplittableRandom(5);
        for (int trial = 0; trial < 200; trial++) {
            int[] units = random.ints(2 + random.nextInt(6), 1, 4).toArray();
            int groups = Math.min(units.length, 2 + random.nextInt(2));
            List<Group> filled = Partners.filled(of(units), groups);

            assertTogether(filled.stream().map(Group::bowlers).toList());
            assertThat(squares(sizes(filled)))
                    .as("units %s in %d groups", IntStream.of(units).boxed().toList(), groups)
                    .isEqualTo(leastSquares(units, new int[groups], 0));
        }
    }

    private static int squares(List<Integer> sizes) {
        return sizes.stream().mapToInt(size -> size * size).sum();
    }

    private static int leastSquares(int[] units, int[] sizes, int next) {
        if (next == units.length) {
            return IntStream.of(sizes).map(size -> size * size).sum();
        }
        int least = Integer.MAX_VALUE;
        for (int group = 0; group < sizes.length; group++) {
            sizes[group] += units[next];
            least = Math.min(least, leastSquares(units, sizes, next + 1));
            sizes[group] -= units[next];
        }
        return least;
    }

    @Test
    void aDrawKeepsPartnersTogetherAndPutsEverybodyIntoOneGroup() {
        List<GroupDraw.Entry> entries = of(2, 2, 2, 2, 2, 2, 3, 3, 1, 1, 1, 1).stream()
                .map(one -> new GroupDraw.Entry(
                        one, OptionalInt.of(150 + Integer.parseInt(one.id().substring(1)))))
                .toList();
        for (long seed = 1; seed <= 200; seed++) {
            List<List<GroupDraw.Entry>> drawn = GroupDraw.draw(
                    entries, 4, EnumSet.allOf(Rule.class), new RandomStreams(seed).stream("draw/squad/A"));

            assertThat(drawn.stream().flatMap(List::stream)).containsExactlyInAnyOrderElementsOf(entries);
            assertThat(drawn).extracting(List::size).containsExactlyInAnyOrder(6, 6, 5, 5);
            assertTogether(drawn.stream()
                    .map(group -> group.stream().map(GroupDraw.Entry::bowler).toList())
                    .toList());
        }
    }

    /** Six left-handed and six right-handed doubles, the best an even split over two, three and six groups. */
    @Test
    void rulesHoldForPartnersAsFarAsTheyCan() {
        List<GroupDraw.Entry> entries = IntStream.range(0, 24)
                .mapToObj(i -> new GroupDraw.Entry(
                        Fixtures.bowler(
                                        "B" + i,
                                        i < 12 ? Hand.LEFT : Hand.RIGHT,
                                        "tweener",
                                        Levels.shipped().get("league"),
                                        "urethane")
                                .with(Optional.of("T" + i / 2)),
                        OptionalInt.empty()))
                .toList();
        for (int groups : new int[] {2, 3, 6}) {
            for (long seed = 1; seed <= 20; seed++) {
                List<List<GroupDraw.Entry>> drawn = GroupDraw.draw(
                        entries, groups, EnumSet.of(Rule.HANDS), new RandomStreams(seed).stream("draw/squad/A"));
                assertThat(drawn)
                        .extracting(group -> Traits.left(
                                group.stream().map(GroupDraw.Entry::traits).toList()))
                        .containsOnly(12L / groups);
            }
        }
    }

    @Test
    void thoseTogetherStandInTheOrderOfTheFirstOfThem() {
        assertThat(Partners.together(of(2, 1, 3), Function.identity()))
                .extracting(List::size)
                .containsExactly(2, 1, 3);
    }
}
