package lanetide.oilflow.catalogue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.lane.LaneSurface;

/**
 * The surfaces, covers and styles that a scenario can name.
 *
 * @param surfaces lane surfaces by id, in alphabetical order
 * @param covers covers by id, in alphabetical order
 * @param styles playing styles by id, in alphabetical order
 */
public record Catalogue(
        Map<String, LaneSurface> surfaces, Map<String, Coverstock> covers, Map<String, PlayingStyle> styles) {
    /**
     * Shipped surface that bowlers know their home lines from (assumption): about 85 % of lanes were synthetic
     * (governing body's count of 72,800 lanes, 2018-19), and a hard one is the smoothest.
     */
    public static final String REFERENCE_SURFACE = "hard-synthetic";

    /** Shipped cover of the ball that bowlers know best (assumption). */
    public static final String REFERENCE_COVER = "medium-reactive";

    /** Copies the maps. */
    public Catalogue {
        surfaces = Collections.unmodifiableMap(new TreeMap<>(surfaces));
        covers = Collections.unmodifiableMap(new TreeMap<>(covers));
        styles = Collections.unmodifiableMap(new TreeMap<>(styles));
    }

    /**
     * Reads the data files that ship with the program.
     *
     * @return the shipped catalogue
     */
    public static Catalogue shipped() {
        DataFile surfaces = new DataFile(Catalogue.class, "surfaces.properties");
        DataFile covers = new DataFile(Catalogue.class, "covers.properties");
        DataFile styles = new DataFile(Catalogue.class, "styles.properties");
        return new Catalogue(
                all(surfaces, id -> surface(surfaces, id)),
                all(covers, id -> cover(covers, id)),
                all(styles, id -> style(styles, id)));
    }

    /**
     * The covers that a player's home line is known with.
     *
     * @param own the cover of his ball
     * @return {@link #REFERENCE_COVER}, so that a stronger ball has no other home than a weaker one; for a ball that
     *     does not flare then his own, since moving from the first may not bring it to the pocket
     */
    public List<Coverstock> knownCovers(Coverstock own) {
        Coverstock reference = covers.get(REFERENCE_COVER);
        return own.flares() ? List.of(reference) : List.of(reference, own);
    }

    private static LaneSurface surface(DataFile file, String id) {
        return new LaneSurface(
                id, file.number(id, "dryFriction"), file.number(id, "roughnessUm"), file.text(id, "source"));
    }

    private static Coverstock cover(DataFile file, String id) {
        return new Coverstock(
                id,
                file.number(id, "frictionFactor"),
                file.number(id, "roughnessUm"),
                file.number(id, "flareOverlap"),
                file.number(id, "absorptionS"),
                file.text(id, "source"));
    }

    private static PlayingStyle style(DataFile file, String id) {
        Release release = Release.ofTradeUnits(
                file.number(id, "speedMph"),
                file.number(id, "revRateRpm"),
                file.number(id, "axisRotationDeg"),
                file.number(id, "axisTiltDeg"));
        return new PlayingStyle(
                id, release, StrictMath.toRadians(file.number(id, "naturalLaunchDeg")), file.text(id, "source"));
    }

    private static <T> Map<String, T> all(DataFile file, Function<String, T> read) {
        Map<String, T> values = new TreeMap<>();
        for (String id : file.ids()) {
            values.put(id, read.apply(id));
        }
        return values;
    }
}
