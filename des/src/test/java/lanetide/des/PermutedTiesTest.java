package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanetide.des.random.RandomStreams;
import org.junit.jupiter.api.Test;

class PermutedTiesTest {

    private static Simulator permuting(long seed) {
        return Simulator.permutingTies(new RandomStreams(seed).stream("ties"));
    }

    private static String order(Simulator simulator, int phaseOfEach) {
        StringBuilder order = new StringBuilder();
        for (char c = 'a'; c <= 'e'; c++) {
            char name = c;
            simulator.schedule(10, phaseOfEach * (c - 'a'), "event", () -> order.append(name));
        }
        simulator.run();
        return order.toString();
    }

    /**
     * Chi-square of the 120 orders of five events over 12 000 runs; 99.9 % quantile with 119 degrees of freedom: 173.
     */
    @Test
    void allOrdersOfSimultaneousEventsAreEquallyLikely() {
        int[] first = new int[5];
        List<String> orders = new ArrayList<>();
        for (int seed = 0; seed < 12_000; seed++) {
            orders.add(order(permuting(seed), 0));
        }
        orders.forEach(order -> first[order.charAt(0) - 'a']++);
        double chiSquare = orders.stream()
                .distinct()
                .mapToDouble(order -> {
                    double seen = java.util.Collections.frequency(orders, order);
                    return (seen - 100) * (seen - 100) / 100;
                })
                .sum();
        assertThat(orders.stream().distinct()).hasSize(120);
        assertThat(chiSquare).isBetween(79.0, 173.0);
        ReadmeRow.says(
                "five simultaneous events under permuted ties: 120 orders in 12 000 runs",
                String.format(Locale.ROOT, "%.0f", chiSquare));
        for (int count : first) {
            assertThat((double) count).isCloseTo(2_400, within(200.0));
        }
    }

    @Test
    void phasesStillRunInTheirOrder() {
        for (int seed = 0; seed < 100; seed++) {
            assertThat(order(permuting(seed), 1)).isEqualTo("abcde");
        }
    }

    @Test
    void theSameStreamGivesTheSameOrder() {
        assertThat(order(permuting(5), 0)).isEqualTo(order(permuting(5), 0));
        assertThat(order(new Simulator(), 0)).isEqualTo("abcde");
    }

    /**
     * Ten customers arrive together before one server: whoever comes first, the mean wait of all is the same; the wait
     * of the one who was scheduled first is not, and a result that hangs on it is exposed.
     */
    @Test
    void whatDoesNotHangOnTheOrderOfTiesStaysAndWhatDoesMoves() {
        List<Long> waitsOfFirst = new ArrayList<>();
        for (int seed = 0; seed < 50; seed++) {
            Simulator simulator = permuting(seed);
            Resource server = new Resource("server", 1);
            List<Long> waitsMs = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                int customer = i;
                simulator.schedule(
                        0,
                        0,
                        "arrival",
                        () -> server.acquire(() -> {
                            waitsMs.add(simulator.nowMs());
                            if (customer == 0) {
                                waitsOfFirst.add(simulator.nowMs());
                            }
                            simulator.schedule(10, 0, "departure", server::release);
                        }));
            }
            simulator.run();
            assertThat(waitsMs.stream().mapToLong(Long::longValue).average()).hasValue(45);
        }
        assertThat(waitsOfFirst.stream().distinct()).hasSizeGreaterThan(5);
    }
}
