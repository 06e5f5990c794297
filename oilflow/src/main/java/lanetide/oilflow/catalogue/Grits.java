package lanetide.oilflow.catalogue;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import lanetide.oilflow.Require;
import lanetide.oilflow.ball.Coverstock;

/**
 * The roughness that an abrasive leaves on a ball, by its grit number, from the data file beside this class. Immutable.
 *
 * <p>Roughness is a share of the abrasive's median grain. The grains are those of a standard, the share is an
 * assumption; each value's source stands in the file.
 */
public final class Grits {
    /** What the relation rests on, in words. */
    public static final String SOURCE = "grains by ISO 6344 (from memory), share of the grain an assumption";

    private static final String SHARE = "ball";

    private final NavigableMap<Double, Double> grainUm = new TreeMap<>();
    private final double shareOfGrain;

    private Grits(DataFile file) {
        shareOfGrain = file.number(SHARE, "shareOfGrain");
        file.ids().stream()
                .filter(id -> !id.equals(SHARE))
                .forEach(id -> grainUm.put(Double.valueOf(id), file.number(id, "grainUm")));
    }

    /**
     * Reads the data file that ships with the program.
     *
     * @return the relation
     */
    public static Grits shipped() {
        return new Grits(new DataFile(Grits.class, "grits.properties"));
    }

    /**
     * A ball sanded all over with an abrasive.
     *
     * @param ball the ball
     * @param grit grit number, from {@link #coarsest} to {@link #finest}
     * @return the ball with that finish, named for it
     * @throws IllegalArgumentException if {@code grit} lies outside these
     */
    public Coverstock sanded(Coverstock ball, int grit) {
        return ball.finished(ball.id() + " at " + grit + "-grit", roughnessUm(grit), SOURCE);
    }

    /**
     * The coarsest abrasive known.
     *
     * @return its grit number
     */
    public double coarsest() {
        return grainUm.firstKey();
    }

    /**
     * The finest abrasive known.
     *
     * @return its grit number
     */
    public double finest() {
        return grainUm.lastKey();
    }

    /**
     * Roughness of a ball sanded all over with an abrasive.
     *
     * @param grit grit number, from {@link #coarsest} to {@link #finest}
     * @return roughness Ra (um)
     * @throws IllegalArgumentException if {@code grit} lies outside these
     */
    public double roughnessUm(double grit) {
        Require.inRange(grit, "grit", coarsest(), finest());
        Map.Entry<Double, Double> coarser = grainUm.floorEntry(grit);
        Map.Entry<Double, Double> finer = grainUm.ceilingEntry(grit);
        if (coarser.getKey().equals(finer.getKey())) {
            return shareOfGrain * coarser.getValue();
        }
        double way = StrictMath.log(grit / coarser.getKey()) / StrictMath.log(finer.getKey() / coarser.getKey());
        return shareOfGrain * coarser.getValue() * StrictMath.pow(finer.getValue() / coarser.getValue(), way);
    }
}
