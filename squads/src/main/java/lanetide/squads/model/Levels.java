package lanetide.squads.model;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.catalogue.DataFile;
import lanetide.oilflow.lane.LaneGeometry;

/** The levels of skill that come with the program. */
public final class Levels {
    private Levels() {}

    /**
     * Reads the data file that ships with the program.
     *
     * @return levels by id, in alphabetical order
     */
    public static Map<String, Level> shipped() {
        DataFile file = new DataFile(Levels.class, "levels.properties");
        Map<String, Level> levels = new TreeMap<>();
        for (String id : file.ids()) {
            levels.put(id, level(file, id));
        }
        return Collections.unmodifiableMap(levels);
    }

    /**
     * The level that a bowler's average tells (O'Keefe, US Bowler, July 2012).
     *
     * @return ids of the shipped levels by the smallest average (pins a game) that each is told from; the lowest from 0
     */
    public static NavigableMap<Integer, String> idsFromAverage() {
        DataFile file = new DataFile(Levels.class, "levels.properties");
        NavigableMap<Integer, String> ids = new TreeMap<>();
        file.ids().forEach(id -> ids.put((int) file.number(id, "averageFromPins"), id));
        return Collections.unmodifiableNavigableMap(ids);
    }

    /**
     * Splits a scatter at the arrows into equal shares of laydown and launch angle.
     *
     * @param arrowsBoards standard deviation at the arrows (boards)
     * @param speedShare standard deviation of speed, as a share of it
     * @param spinShare standard deviation of rev rate, as a share of it
     * @return the spread at release
     */
    public static ReleaseSpread spread(double arrowsBoards, double speedShare, double spinShare) {
        double eachM = arrowsBoards * LaneGeometry.BOARD_M / StrictMath.sqrt(2);
        return new ReleaseSpread(eachM, eachM / LaneGeometry.ARROWS_M, speedShare, spinShare);
    }

    private static Level level(DataFile file, String id) {
        return new Level(
                id,
                spread(file.number(id, "arrowsBoards"), file.number(id, "speedShare"), file.number(id, "spinShare")),
                new Adaptation(
                        file.number(id, "seesBoards"),
                        file.number(id, "deadBandBoards"),
                        file.number(id, "gain"),
                        (int) file.number(id, "patienceShots"),
                        new Reckoning(
                                file.number(id, "driftBoards"),
                                file.number(id, "deeperBoards"),
                                file.number(id, "othersBoards"),
                                file.number(id, "toldBoards"))),
                file.number(id, "formShare"),
                file.text(id, "source"));
    }
}
