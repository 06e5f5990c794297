package lanetide.des.stats;

import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/** Probabilities of exceeding a value, to full precision however small, where one less the distribution would be 0. */
final class UpperTail {

    private UpperTail() {}

    static double ofChiSquare(double x, int degreesOfFreedom) {
        return Gamma.regularizedGammaQ(degreesOfFreedom / 2.0, x / 2);
    }

    /** Of Fisher's F, which may be infinite. */
    static double ofF(double f, int numerator, int denominator) {
        double share = denominator / (denominator + numerator * f);
        return Beta.regularizedBeta(share, denominator / 2.0, numerator / 2.0);
    }
}
