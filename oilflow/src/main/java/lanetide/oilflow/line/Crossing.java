package lanetide.oilflow.line;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Where a shot's miss of the pocket changes sign as a line is moved. */
final class Crossing {
    private static final double TOLERANCE_BOARDS = 0.02;
    private static final int MAX_STEPS = 30;

    private Crossing() {}

    /**
     * Walks in equal steps from a start until the miss changes sign, then narrows it down.
     *
     * @param miss miss (boards) by position
     * @param start first position
     * @param missAtStart the miss there (boards)
     * @param step step, of either sign
     * @param most number of steps after which to give up
     * @return the first position whose miss is nothing; empty if there is none within the steps
     */
    static OptionalDouble first(DoubleUnaryOperator miss, double start, double missAtStart, double step, int most) {
        double near = start;
        double missNear = missAtStart;
        for (int i = 1; i <= most; i++) {
            double far = start + i * step;
            double missFar = miss.applyAsDouble(far);
            OptionalDouble root = between(miss, near, missNear, far, missFar);
            if (root.isPresent()) {
                return root;
            }
            near = far;
            missNear = missFar;
        }
        return OptionalDouble.empty();
    }

    /**
     * Illinois false position: bracketed like bisection, fast like the secant.
     *
     * @return the root; empty if the sign does not change, or changes by a jump, as between a ball that falls into one
     *     gutter and its neighbour that does not
     */
    static OptionalDouble between(DoubleUnaryOperator miss, double a, double missA, double b, double missB) {
        if (missA <= 0 == missB <= 0) {
            return OptionalDouble.empty();
        }
        double from = a;
        double missFrom = missA;
        double to = b;
        double missTo = missB;
        for (int i = 0; i < MAX_STEPS; i++) {
            double mid = (from * missTo - to * missFrom) / (missTo - missFrom);
            double missMid = miss.applyAsDouble(mid);
            if (Math.abs(missMid) < TOLERANCE_BOARDS) {
                return OptionalDouble.of(mid);
            }
            if (missMid <= 0 != missTo <= 0) {
                from = to;
                missFrom = missTo;
            } else {
                missFrom = missFrom / 2;
            }
            to = mid;
            missTo = missMid;
        }
        return OptionalDouble.empty();
    }
}
