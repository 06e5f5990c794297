package lanetide.des.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lanetide.des.ReadmeRow;
import org.junit.jupiter.api.Test;

/**
 * Published draws and seeds: of several public ports of the authors' package, of a test of one port that cites
 * RngStream.c, of JaamSim's test of the generator, and of M. D. Rossetti's open text on simulation.
 */
class Mrg32k3aTest {

    private final Mrg32k3a generator = new Mrg32k3a();

    @Test
    void theFirstDrawsAreThePublishedOnes() {
        double[] published = {
            0.12701112204657714,
            0.3185275653967945,
            0.3091860155832701,
            0.8258468629271135,
            0.22162991578202287,
            0.5333953879182788
        };
        double[] off = new double[published.length];
        for (int i = 0; i < published.length; i++) {
            double draw = generator.nextUniform();
            assertThat(draw).isCloseTo(published[i], within(1e-15));
            off[i] = draw - published[i];
        }
        ReadmeRow.says("another generator, MRG32k3a, in the tests: draws 1 to 6", ReadmeRow.offBy(off));
    }

    @Test
    void lateDrawsAreThePublishedOnes() {
        double draw = 0;
        for (int i = 1; i <= 1_000_000; i++) {
            draw = generator.nextUniform();
            if (i == 1_000) {
                assertThat(draw).isCloseTo(0.9860784868021323, within(1e-15));
            } else if (i == 100_000) {
                assertThat(draw).isCloseTo(0.6962891099574359, within(1e-15));
            }
        }
        assertThat(draw).isCloseTo(0.375788356215688, within(1e-15));
        ReadmeRow.says("the same: draw 1 000 000", ReadmeRow.offBy(draw - 0.375788356215688));
    }

    @Test
    void theNextStreamAndSubstreamHaveThePublishedSeeds() {
        long[] stream = generator.ahead(127).state();
        long[] substream = generator.ahead(76).state();

        assertThat(stream).containsExactly(3692455944L, 1366884236L, 2968912127L, 335948734L, 4161675175L, 475798818L);
        assertThat(substream)
                .containsExactly(870504860L, 2641697727L, 884013853L, 339352413L, 2374306706L, 3651603887L);
        ReadmeRow.says("the same: next stream and substream", stream[0] + ", ... and " + substream[0] + ", ...");
    }

    @Test
    void theSecondSubstreamBeginsAsPublished() {
        Mrg32k3a second = generator.ahead(76);
        assertThat(second.nextUniform()).isCloseTo(0.07939898979733463, within(1e-15));
        assertThat(second.nextUniform()).isCloseTo(0.4803395047575741, within(1e-15));
        assertThat(second.nextUniform()).isCloseTo(0.8583222470551328, within(1e-15));
    }
}
