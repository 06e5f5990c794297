package lanetide.squads.fairness;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import lanetide.squads.model.Bowler;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * What seats are worth, with bowlers taken out: score of bowler i in seating k = own mean of i in this round + effects
 * of his seat's squad, starting pair and hand + rest. Least squares, with effects of each factor that add up to zero
 * over the seats (B. Jones and M. G. Kenward, "Design and Analysis of Cross-Over Trials", 3rd ed. 2015, chapter 5, with
 * a bowler for a subject and a seating for a period). Where two factors cannot be told apart, the shortest solution
 * shares what they have together between them.
 *
 * <p>The normal equations are pooled over the rounds. A round's own value is the estimate plus that round's share of
 * the residual (the linearised, or sandwich, form), so that its scatter over independent rounds gives the error,
 * whatever binds the scores within a round.
 */
final class RowColumnModel {
    private final List<Factor> factors;
    private final Seats seats;
    private final Predicate<Bowler> whose;
    private final int[] from;
    private final int columns;

    /** A model of seats that are sorted in several ways; in another round they may be sorted otherwise. */
    RowColumnModel(List<Factor> factors, Seats seats) {
        this(factors, seats, bowler -> true);
    }

    /** The same from what some bowlers score, wherever the others sit. */
    RowColumnModel(List<Factor> factors, Seats seats, Predicate<Bowler> whose) {
        this.factors = factors;
        this.seats = seats;
        this.whose = whose;
        this.from = new int[factors.size()];
        int next = 0;
        for (int f = 0; f < from.length; f++) {
            from[f] = next;
            next += factors.get(f).ids().size();
        }
        this.columns = next;
    }

    /** The effects of each factor, in the order given. */
    List<Estimate> fit(List<Round> rounds, int sets) {
        List<Normal> normals = rounds.stream().map(this::normal).toList();
        RealMatrix matrix = new Array2DRowRealMatrix(columns, columns);
        RealVector right = new ArrayRealVector(columns);
        for (Normal normal : normals) {
            matrix = matrix.add(normal.matrix());
            right = right.add(normal.right());
        }
        double share = 1.0 / rounds.size();
        DecompositionSolver solver =
                new SingularValueDecomposition(constrained(matrix.scalarMultiply(share))).getSolver();
        RealVector effects = solver.solve(right.mapMultiply(share));
        double[][] byRound = new double[rounds.size()][];
        for (int r = 0; r < byRound.length; r++) {
            RealVector residual =
                    normals.get(r).right().subtract(normals.get(r).matrix().operate(effects));
            byRound[r] = effects.add(solver.solve(residual)).toArray();
        }
        return factors.stream()
                .map(factor -> part(byRound, factors.indexOf(factor), sets))
                .toList();
    }

    private Estimate part(double[][] byRound, int factor, int sets) {
        int to = from[factor] + factors.get(factor).ids().size();
        return new Estimate(
                Arrays.stream(byRound)
                        .map(round -> Arrays.copyOfRange(round, from[factor], to))
                        .toArray(double[][]::new),
                sets);
    }

    /** Adds for each factor that its effects, weighted by seats, sum up to zero. */
    private RealMatrix constrained(RealMatrix matrix) {
        RealMatrix sum = matrix;
        for (int f = 0; f < from.length; f++) {
            RealVector weights = new ArrayRealVector(columns);
            for (int c : factors.get(f).classes(seats).of()) {
                weights.addToEntry(from[f] + c, 1);
            }
            sum = sum.add(weights.outerProduct(weights));
        }
        return sum;
    }

    /** A round's own normal equations. */
    private record Normal(RealMatrix matrix, RealVector right) {}

    private Normal normal(Round round) {
        int[][] columnsOfSeat = columnsOf(round.seats());
        int count = columnsOfSeat.length;
        double[][] matrix = new double[columns][columns];
        double[] right = new double[columns];
        double[][] visits = new double[count][columns];
        for (int k = 0; k < round.seatings(); k++) {
            for (int seat = 0; seat < count; seat++) {
                int bowler = round.bowlerAtSeat()[k][seat];
                if (!whose.test(round.seats().bowlers().get(bowler))) {
                    continue;
                }
                int[] at = columnsOfSeat[seat];
                for (int c : at) {
                    visits[bowler][c]++;
                    right[c] += round.aboveOwnMean(bowler, k);
                    for (int d : at) {
                        matrix[c][d]++;
                    }
                }
            }
        }
        for (double[] of : visits) {
            for (int c = 0; c < columns; c++) {
                for (int d = 0; d < columns; d++) {
                    matrix[c][d] -= of[c] * of[d] / round.seatings();
                }
            }
        }
        return new Normal(new Array2DRowRealMatrix(matrix, false), new ArrayRealVector(right, false));
    }

    /** By seat, then by factor. */
    private int[][] columnsOf(Seats sorted) {
        int[][] at = new int[sorted.count()][from.length];
        for (int f = 0; f < from.length; f++) {
            int[] of = factors.get(f).classes(sorted).of();
            for (int seat = 0; seat < of.length; seat++) {
                at[seat][f] = from[f] + of[seat];
            }
        }
        return at;
    }
}
