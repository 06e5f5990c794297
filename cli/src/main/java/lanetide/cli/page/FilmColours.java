package lanetide.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The colours of a film from none to the thickest: equal steps of oil are equal steps to the eye. Computed in OKLab (B.
 * Ottosson, A perceptual color space for image processing, 2020), whose distances follow seen differences. Lightness
 * falls steadily, so that the map holds in grey print and for people who see few colours (P. Kovesi, Good colour maps:
 * how to design them, 2015); the hue turns from sand to deep blue, so that single values can be read off.
 */
public final class FilmColours {
    /** Number of colours. */
    public static final int COUNT = 64;

    private static final double LIGHT = 0.97;
    private static final double DARK = 0.26;
    private static final double FIRST_HUE_DEG = 95;
    private static final double LAST_HUE_DEG = 275;
    /** Chroma rises to this in the middle and is small at both ends, where few chromas can be shown. */
    private static final double MAX_CHROMA = 0.105;

    private static final double END_CHROMA = 0.03;

    /** Points of the curve on which the equal steps are measured off. */
    private static final int FINE = 4096;

    private FilmColours() {}

    /**
     * The colours.
     *
     * @return {@link #COUNT} colours of sRGB as CSS writes them, from no oil to the most
     */
    public static List<String> list() {
        double[] length = new double[FINE + 1];
        for (int i = 1; i <= FINE; i++) {
            length[i] = length[i - 1] + distance(curve((i - 1.0) / FINE), curve((double) i / FINE));
        }
        List<String> colours = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < COUNT; i++) {
            double wanted = length[FINE] * i / (COUNT - 1);
            while (at < FINE && length[at] < wanted) {
                at++;
            }
            colours.add(css(curve((double) at / FINE)));
        }
        return colours;
    }

    /** Lightness, and the two axes of hue, at a place from 0 to 1. */
    private static double[] curve(double place) {
        double hue = StrictMath.toRadians(FIRST_HUE_DEG + (LAST_HUE_DEG - FIRST_HUE_DEG) * place);
        double chroma = END_CHROMA + (MAX_CHROMA - END_CHROMA) * StrictMath.sin(Math.PI * place);
        return new double[] {LIGHT + (DARK - LIGHT) * place, chroma * StrictMath.cos(hue), chroma * StrictMath.sin(hue)
        };
    }

    private static double distance(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return StrictMath.sqrt(sum);
    }

    /** From OKLab over linear light to sRGB (matrices: Ottosson, 2020; transfer curve: IEC 61966-2-1). */
    private static String css(double[] lab) {
        double l = cube(lab[0] + 0.3963377774 * lab[1] + 0.2158037573 * lab[2]);
        double m = cube(lab[0] - 0.1055613458 * lab[1] - 0.0638541728 * lab[2]);
        double s = cube(lab[0] - 0.0894841775 * lab[1] - 1.2914855480 * lab[2]);
        return "#"
                + channel(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s)
                + channel(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s)
                + channel(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s);
    }

    private static double cube(double value) {
        return value * value * value;
    }

    private static String channel(double linear) {
        double light = Math.max(0, Math.min(1, linear));
        double coded = light <= 0.0031308 ? 12.92 * light : 1.055 * StrictMath.pow(light, 1 / 2.4) - 0.055;
        return String.format(Locale.ROOT, "%02x", Math.round(255 * coded));
    }
}
