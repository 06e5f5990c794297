package lanetide.des.random;

import org.apache.commons.rng.UniformRandomProvider;

/**
 * The combined multiple recursive generator MRG32k3a, for tests: a generator of another family than the one in use,
 * with published draws and streams. Sources: P. L'Ecuyer, "Good parameters and implementations for combined multiple
 * recursive random number generators", Operations Research 47, 1999; P. L'Ecuyer, R. Simard, E. J. Chen and W. D.
 * Kelton, "An object-oriented random-number package with many long streams and substreams", Operations Research 50,
 * 2002.
 */
public final class Mrg32k3a implements UniformRandomProvider {

    private static final long M1 = 4294967087L;
    private static final long M2 = 4294944443L;
    private static final long[][] A1 = {{0, 1, 0}, {0, 0, 1}, {M1 - 810728, 1403580, 0}};
    private static final long[][] A2 = {{0, 1, 0}, {0, 0, 1}, {M2 - 1370589, 0, 527612}};

    private long[] first;
    private long[] second;

    /** A generator with the published seed: 12345 six times. */
    public Mrg32k3a() {
        this(new long[] {12345, 12345, 12345}, new long[] {12345, 12345, 12345});
    }

    private Mrg32k3a(long[] first, long[] second) {
        this.first = first;
        this.second = second;
    }

    /** A generator 2 to the given power of draws ahead: 76 for the next substream, 127 for the next stream. */
    public Mrg32k3a ahead(int powerOfTwo) {
        return new Mrg32k3a(
                times(doubled(A1, powerOfTwo, M1), first, M1), times(doubled(A2, powerOfTwo, M2), second, M2));
    }

    /** The six numbers of the state. */
    public long[] state() {
        return new long[] {first[0], first[1], first[2], second[0], second[1], second[2]};
    }

    /** The next number of the published sequence, between 0 and 1. */
    public double nextUniform() {
        first = times(A1, first, M1);
        second = times(A2, second, M2);
        long difference = Math.floorMod(first[2] - second[2], M1);
        return (difference == 0 ? M1 : difference) * 2.328306549295728e-10;
    }

    /** 64 bits from two draws of 32. */
    @Override
    public long nextLong() {
        return (long) (nextUniform() * 0x1p32) << 32 | (long) (nextUniform() * 0x1p32);
    }

    private static long[][] doubled(long[][] matrix, int times, long modulus) {
        long[][] power = matrix;
        for (int i = 0; i < times; i++) {
            long[][] square = new long[3][];
            for (int column = 0; column < 3; column++) {
                square[column] = times(power, column(power, column), modulus);
            }
            power = transposed(square);
        }
        return power;
    }

    private static long[] times(long[][] matrix, long[] vector, long modulus) {
        long[] product = new long[3];
        for (int row = 0; row < 3; row++) {
            for (int i = 0; i < 3; i++) {
                long term = Long.remainderUnsigned(matrix[row][i] * vector[i], modulus);
                product[row] = (product[row] + term) % modulus;
            }
        }
        return product;
    }

    private static long[] column(long[][] matrix, int column) {
        return new long[] {matrix[0][column], matrix[1][column], matrix[2][column]};
    }

    private static long[][] transposed(long[][] matrix) {
        return new long[][] {column(matrix, 0), column(matrix, 1), column(matrix, 2)};
    }
}
