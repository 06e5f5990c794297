package lanetide.cli.scenario.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;

/**
 * Everything a scenario can name: what ships with the program, and what the scenario adds.
 *
 * @param surfaces lane surfaces by name
 * @param covers ball covers by name
 * @param styles playing styles by name
 * @param levels levels of skill by name
 */
public record Names(
        Map<String, LaneSurface> surfaces,
        Map<String, Coverstock> covers,
        Map<String, PlayingStyle> styles,
        Map<String, Level> levels) {
    /** The delivery sides by name. */
    public static final Map<String, Hand> HANDS =
            Collections.unmodifiableMap(inOrder("right", Hand.RIGHT, "left", Hand.LEFT));

    /** What can be done to the lanes before a squad, by name. */
    public static final Map<String, Conditioning> OILINGS = Collections.unmodifiableMap(oil());

    /** Lanes to either side on which a neighbour is let go first, by name. */
    public static final Map<String, Integer> COURTESY = courtesy();

    /** What is done with a group whose lane is out of order, by name. */
    public static final Map<String, FaultResponse> REMEDIES = remedies();

    /** What ships with the program, in maps that a scenario may add to. */
    public static Names shipped() {
        Catalogue catalogue = Catalogue.shipped();
        return new Names(
                new LinkedHashMap<>(catalogue.surfaces()),
                new LinkedHashMap<>(catalogue.covers()),
                new LinkedHashMap<>(catalogue.styles()),
                new LinkedHashMap<>(Levels.shipped()));
    }

    /** The same names, to be looked at only. */
    public Names unmodifiable() {
        return new Names(
                Collections.unmodifiableMap(surfaces),
                Collections.unmodifiableMap(covers),
                Collections.unmodifiableMap(styles),
                Collections.unmodifiableMap(levels));
    }

    private static Map<String, Conditioning> oil() {
        Map<String, Conditioning> oil = inOrder("fresh", Conditioning.STRIP_AND_OIL, "over", Conditioning.OIL_OVER);
        oil.put("ends", Conditioning.CLEAN_ENDS);
        oil.put("none", Conditioning.NONE);
        return oil;
    }

    private static Map<String, FaultResponse> remedies() {
        Map<String, FaultResponse> remedies = inOrder("wait", FaultResponse.WAIT, "spare", FaultResponse.SPARE);
        remedies.put("split", FaultResponse.SPLIT);
        return remedies;
    }

    private static Map<String, Integer> courtesy() {
        Map<String, Integer> lanes = inOrder("none", 0, "one", 1);
        lanes.put("two", 2);
        return lanes;
    }

    private static <T> Map<String, T> inOrder(String first, T firstValue, String second, T secondValue) {
        Map<String, T> values = new LinkedHashMap<>();
        values.put(first, firstValue);
        values.put(second, secondValue);
        return values;
    }
}
