package lanetide.des.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.des.ReadmeRow;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.junit.jupiter.api.Test;

class RandomStreamsTest {

    private static final int DRAWS = 100_000;

    private final RandomStreams streams = new RandomStreams(20261125);

    /**
     * First ten outputs from state {1, 2, 3, 4}. Source: reference implementation xoshiro256plusplus.c by D. Blackman
     * and S. Vigna (2019), as recorded in the tests of public ports of it, among them the Rust project's rand library.
     */
    @Test
    void theGeneratorIsTheOnePublished() {
        UniformRandomProvider generator = new XoShiRo256PlusPlus(1, 2, 3, 4);
        long[] outputs = firstLongs(generator, 10);
        ReadmeRow.says(
                "xoshiro256++ from state 1, 2, 3, 4", outputs[0] + ", " + outputs[1] + ", " + outputs[2] + ", ...");
        assertThat(outputs)
                .containsExactly(
                        41943041L,
                        58720359L,
                        3588806011781223L,
                        3591011842654386L,
                        Long.parseUnsignedLong("9228616714210784205"),
                        Long.parseUnsignedLong("9973669472204895162"),
                        Long.parseUnsignedLong("14011001112246962877"),
                        Long.parseUnsignedLong("12406186145184390807"),
                        Long.parseUnsignedLong("15849039046786891736"),
                        Long.parseUnsignedLong("10450023813501588000"));
    }

    /**
     * Expected values from a separate program in Python 3 with its hashlib, written from the description in the Javadoc
     * of {@link RandomStreams}.
     */
    @Test
    void aStreamStartsWhereItsDescriptionSays() {
        long[] release = firstLongs(streams.stream("bowler/17/release"), 3);
        ReadmeRow.says("three streams rebuilt from the description", Long.toHexString(release[0]) + ", ...");
        assertThat(release).containsExactly(0xf8e51334106d2881L, 0x50f84eec203de3c0L, 0x081bae82aafdb9e0L);
        assertThat(firstLongs(streams.forReplication(0).stream("bowler/17/release"), 3))
                .containsExactly(0xf26476830f74535aL, 0x08cd942353f14537L, 0x90680effba685d40L);
        assertThat(firstLongs(new RandomStreams(-3).forReplication(Integer.MAX_VALUE).stream("lane/\u00e9"), 3))
                .containsExactly(0x44b387db39e719b5L, 0x0f9b329675b546c8L, 0x85a8b1d1e70aab30L);
    }

    @Test
    void askingAgainGivesTheSameStreamFromItsStart() {
        assertThat(firstLongs(streams.stream("lane/3/oil"), 50))
                .isEqualTo(firstLongs(streams.stream("lane/3/oil"), 50));
    }

    @Test
    void addingAStreamChangesNoDrawOfAnother() {
        long[] alone = firstLongs(streams.stream("bowler/1/release"), 50);

        RandomStreams crowded = new RandomStreams(20261125);
        UniformRandomProvider newcomer = crowded.stream("bowler/2/release");
        UniformRandomProvider release = crowded.stream("bowler/1/release");
        long[] interleaved = LongStream.generate(() -> {
                    newcomer.nextDouble();
                    return release.nextLong();
                })
                .limit(50)
                .toArray();

        assertThat(interleaved).isEqualTo(alone);
    }

    @Test
    void aReplicationDependsOnItsNumberAlone() {
        long[] direct = firstLongs(streams.forReplication(3).stream("a"), 5);
        assertThat(firstLongs(streams.forReplication(2).forReplication(3).stream("a"), 5))
                .isEqualTo(direct);
        assertThat(firstLongs(streams.forReplication(2).stream("a"), 5)).doesNotContain(direct);
        assertThat(firstLongs(streams.stream("a"), 5)).doesNotContain(direct);
    }

    @Test
    void aBlankPurposeIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> streams.stream(" \t"))
                .withMessageContaining("purposeKey");
    }

    @Test
    void aNegativeReplicationIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> streams.forReplication(-1))
                .withMessageContaining("replication is -1");
    }

    @Test
    void theDrawsOfOneStreamAreUniform() {
        assertUniform("draws of one stream", doubles(streams.stream("bowler/1/release")));
    }

    @Test
    void theFirstDrawsOfNeighbouringKeysAreUniform() {
        assertUniform(
                "first draws over keys",
                IntStream.range(0, DRAWS)
                        .mapToDouble(i -> streams.stream("bowler/" + i).nextDouble())
                        .toArray());
    }

    @Test
    void theFirstDrawsOfSuccessiveReplicationsAreUniform() {
        assertUniform(
                "first draws over replications",
                IntStream.range(0, DRAWS)
                        .mapToDouble(i -> streams.forReplication(i).stream("a").nextDouble())
                        .toArray());
    }

    @Test
    void theFirstDrawsOfSuccessiveSeedsAreUniform() {
        assertUniform(
                "first draws over seeds",
                IntStream.range(0, DRAWS)
                        .mapToDouble(i -> new RandomStreams(i).stream("a").nextDouble())
                        .toArray());
    }

    /**
     * For independent streams the correlation has standard deviation 1 / sqrt(n); 66 pairs stay within four of them.
     */
    @Test
    void streamsDoNotFollowEachOther() {
        double[][] draws = IntStream.range(0, 12)
                .mapToObj(i -> doubles(streams.forReplication(i / 4).stream("bowler/" + i % 4)))
                .toArray(double[][]::new);
        double most = 0;
        for (int i = 0; i < draws.length; i++) {
            for (int j = 0; j < i; j++) {
                double correlation = new PearsonsCorrelation().correlation(draws[i], draws[j]);
                most = Math.max(most, Math.abs(correlation) * Math.sqrt(DRAWS));
                assertThat(correlation)
                        .as("streams %d and %d", i, j)
                        .isBetween(-4 / Math.sqrt(DRAWS), 4 / Math.sqrt(DRAWS));
            }
        }
        ReadmeRow.says("correlation of 66 pairs of streams", String.format(Locale.ROOT, "%.1f", most));
    }

    /**
     * Pearson's chi-square over a hundred classes, between its 0.1 % and 99.9 % points: neither too rough nor too even.
     */
    private static void assertUniform(String what, double[] draws) {
        int classes = 100;
        int[] counts = new int[classes];
        for (double draw : draws) {
            counts[(int) (draw * classes)]++;
        }
        double expected = (double) draws.length / classes;
        double chiSquare = IntStream.of(counts)
                .mapToDouble(count -> (count - expected) * (count - expected) / expected)
                .sum();
        ChiSquaredDistribution distribution = new ChiSquaredDistribution(null, classes - 1);
        assertThat(chiSquare)
                .isBetween(
                        distribution.inverseCumulativeProbability(0.001),
                        distribution.inverseCumulativeProbability(0.999));
        ReadmeRow.says("uniformity, 100 000 " + what, String.format(Locale.ROOT, "%.0f", chiSquare));
    }

    private static long[] firstLongs(UniformRandomProvider generator, int count) {
        return LongStream.generate(generator::nextLong).limit(count).toArray();
    }

    private static double[] doubles(UniformRandomProvider generator) {
        return generator.doubles(DRAWS).toArray();
    }
}
