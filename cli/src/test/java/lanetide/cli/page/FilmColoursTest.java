package lanetide.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The colours judged in CIELAB (CIE 015:2018), which they were not made in. */
class FilmColoursTest {
    private static final List<double[]> LAB =
            FilmColours.list().stream().map(FilmColoursTest::lab).toList();

    @Test
    void lightnessFallsWithEveryStep() {
        for (int i = 1; i < LAB.size(); i++) {
            assertThat(LAB.get(i)[0]).as("step %d", i).isLessThan(LAB.get(i - 1)[0]);
        }
        assertThat(LAB.get(0)[0] - LAB.get(LAB.size() - 1)[0]).isGreaterThan(75);
    }

    /** Four steps at a time, so that the rounding to 256 levels does not count; CIE 1976 differences. */
    @Test
    void equalStepsAreEqualToTheEye() {
        double[] steps = IntStream.range(4, LAB.size())
                .mapToDouble(i -> difference(LAB.get(i - 4), LAB.get(i)))
                .sorted()
                .toArray();

        assertThat(steps[steps.length - 1] / steps[0]).isLessThan(2);
        assertThat(steps[(int) (0.9 * steps.length)] / steps[(int) (0.1 * steps.length)])
                .isLessThan(1.6);
    }

    @Test
    void everyColourIsSeenApartFromTheNext() {
        for (int i = 1; i < LAB.size(); i++) {
            assertThat(difference(LAB.get(i), LAB.get(i - 1))).as("step %d", i).isGreaterThan(0.8);
        }
    }

    private static double difference(double[] a, double[] b) {
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }

    /** From sRGB (IEC 61966-2-1) over XYZ for D65 to CIELAB. */
    private static double[] lab(String css) {
        double[] rgb = new double[3];
        for (int i = 0; i < 3; i++) {
            double coded = Integer.parseInt(css.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            rgb[i] = coded <= 0.04045 ? coded / 12.92 : Math.pow((coded + 0.055) / 1.055, 2.4);
        }
        double x = f((0.4124564 * rgb[0] + 0.3575761 * rgb[1] + 0.1804375 * rgb[2]) / 0.95047);
        double y = f(0.2126729 * rgb[0] + 0.7151522 * rgb[1] + 0.0721750 * rgb[2]);
        double z = f((0.0193339 * rgb[0] + 0.1191920 * rgb[1] + 0.9503041 * rgb[2]) / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double f(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }
}
