package lanetide.cli.scenario.centre;

/** Names of the fields of a centre file. */
public final class CentreFields {
    /** Grows when a field changes its meaning or goes. */
    public static final int VERSION = 1;

    public static final String FORM = "centreFile";
    public static final String STARTED_FROM = "startedFrom";
    public static final String REFIT = "refit";
    public static final String DAYS = "days";
    public static final String SCENARIO = "scenario";
    public static final String SHA256 = "sha256";
    public static final String EVENT = "event";
    public static final String PATTERN = "pattern";
    public static final String TAPES = "tapes";
    public static final String BALLS = "balls";
    public static final String SCORES = "scores";
    public static final String ENDS = "ends";
    public static final String ENDED_MS = "endedMs";
    public static final String LANE = "lane";
    public static final String SQUAD = "squad";
    public static final String AFTER = "afterGame";
    public static final String DISTANCE_M = "distanceM";
    public static final String BOARD = "board";
    public static final String UNITS = "units";
    public static final String ERROR = "error";
    public static final String FRESH = "fresh";
    public static final String PLACE = "place";
    public static final String BOWLER = "bowler";
    public static final String LAYDOWN = "laydown";
    public static final String ARROWS = "arrows";
    public static final String PASSED = "passed";
    public static final String MET = "met";
    public static final String SPEED_MPS = "speedMps";
    public static final String SPIN_RADPS = "spinRadps";
    public static final String GAME = "game";
    public static final String PINS = "pins";
    public static final String UNKNOWNS = "unknowns";
    public static final String SETS = "sets";
    public static final String DRAWN_BY = "drawnBy";
    public static final String VALUES = "values";

    private CentreFields() {}
}
