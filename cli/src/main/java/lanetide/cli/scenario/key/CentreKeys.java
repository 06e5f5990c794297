package lanetide.cli.scenario.key;

import lanetide.cli.scenario.key.Form.Clock;
import lanetide.cli.scenario.key.Form.Name;
import lanetide.cli.scenario.key.Form.Quantity;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.squads.model.LaneMachines;

/** Keys of the lanes: those in use, the machines, and their shape. */
public final class CentreKeys {
    /** Highest lane number. */
    public static final int MAX_LANE = 200;

    /** Largest limit of a lane's shape (m): 0.2 in. */
    public static final double MAX_LIMIT_M = 0.2 * 0.0254;

    /** Machines of a kind. */
    static final Quantity<Integer> FLEET = Form.whole(1, 20);

    private static final LaneMachines USUAL = LaneMachines.USUAL;
    private static final Quantity<Long> LANE_TIMES = Form.time("s or min", 30 * Sources.MINUTE_MS);

    /** The lanes. */
    public static final Block CENTRE = new Block("centre");

    public static final Key<Void> LANES = CENTRE.key("lanes", Structure.LANES, "lanes in use, paired from the left")
            .optional("1 to 24", "pairs");
    public static final Key<Void> PAIRS = CENTRE.key("pairs", Structure.PAIRS, "pairs in use, from left to right")
            .optional("[1-2, 5-6]", "lanes");
    public static final Key<Void> CLOSED = CENTRE.key("closed", Structure.PAIRS, "pairs of `lanes` that are not in use")
            .optional("[3-4]", "none");
    public static final Key<Void> SPARE = CENTRE.key(
                    "spare", Structure.PAIRS, "pairs in use that no group is sent to, for groups whose lane fails")
            .optional("[23-24]", "none");
    public static final Key<String> SURFACE = CENTRE.key(
                    "surface", new Name("surface", ""), "what the lanes are made of")
            .required("hard-synthetic");
    public static final Key<Integer> MACHINES = CENTRE.key(
                    "machines", FLEET, "lane machines that clean and oil, side by side")
            .assumed(USUAL.combined(), Sources.ASSUMPTION);
    public static final Key<Integer> CLEANERS = CENTRE.key(
                    "cleaners", FLEET, "machines that only clean, in place of machines")
            .optional("1", "machines");
    public static final Key<Integer> OILERS = CENTRE.key("oilers", FLEET, "machines that only oil, beside cleaners")
            .optional("1", "machines");
    public static final Key<Long> STRIP_TIME = CENTRE.key("stripTime", LANE_TIMES, "to clean one lane")
            .assumed("30 s to 60 s", USUAL.stripMsPerLane(), Sources.TRADE);
    public static final Key<Long> OIL_TIME = CENTRE.key("oilTime", LANE_TIMES, "to oil one lane")
            .assumed("30 s to 60 s", USUAL.oilMsPerLane(), Sources.TRADE);
    public static final Key<Long> MACHINE_WALK = CENTRE.key(
                    "machineWalk", Form.time("s", 30 * Sources.MINUTE_MS), "to move a machine to the next pair")
            .assumed("5 s to 20 s", USUAL.walkMsPerPair(), Sources.ASSUMPTION);
    public static final Key<Long> CLOSES = CENTRE.key(
                    "closes", new Clock(), "when the centre closes; squads that are done later are named")
            .optional("\"23:30\"", "never");
    public static final Key<Void> LEVEL = CENTRE.key("topography", Structure.BLOCK, "how far the lanes are from level")
            .optional("{spread: 0.01 in}", "level lanes");

    public static final Key<Void> FITTED = CENTRE.key(
                    "fitted",
                    Structure.FILE,
                    "the centre file of `lanetide fit`: what measurements have told of these lanes")
            .optional("lanes.json", "what published facts leave");

    /** How far the lanes are from level. */
    public static final Block TOPOGRAPHY = new Block("centre.topography");

    public static final Key<Double> LIMIT = TOPOGRAPHY
            .key("limit", Form.length("in or cm", 0, MAX_LIMIT_M), "most that a tilt, crown or depression may be")
            .assumed(
                    "0.040 in (the rules) or 0.050 in (an inspector, for tilt)",
                    LaneSurvey.LIMIT_M,
                    "USBC, as quoted by several pages");
    public static final Key<Double> SPREAD = TOPOGRAPHY
            .key(
                    "spread",
                    Form.length("in or cm", 0, MAX_LIMIT_M),
                    "standard deviation of tilt and crown on lanes without readings, drawn by the seed; 0 is level")
            .assumed("0.005 in to 0.02 in", 0.0, Sources.ASSUMPTION);
    public static final Key<Void> READINGS = TOPOGRAPHY
            .key("readings", Structure.LIST, "what was measured")
            .optional("- {lane: 1, at: 20 ft, tilt: 0.01 in}", "none");

    /** One reading of a lane's shape. */
    public static final Block SHAPE = new Block("centre.topography.readings");

    public static final Key<Integer> LANE =
            SHAPE.key("lane", Form.whole(1, MAX_LANE), "the lane").required("1");
    public static final Key<Double> AT = SHAPE.key(
                    "at", Form.length("ft or m", 0, LaneGeometry.HEAD_PIN_M), "distance from the foul line")
            .optional("0 ft to 60 ft", "the whole lane");
    public static final Key<Double> TILT = shape("tilt", "left edge above the right one; below 0 under it");
    public static final Key<Double> CROWN = shape("crown", "middle above the edges; below 0 a depression");

    private CentreKeys() {}

    /** Readings are held to the limit that the scenario sets; the limits here are those that it can set. */
    private static Key<Double> shape(String name, String meaning) {
        return SHAPE.key(name, Form.length("in or cm", -MAX_LIMIT_M, MAX_LIMIT_M), meaning)
                .usual("-0.02 in to 0.02 in", 0.0);
    }
}
