package lanetide.cli.scenario.key;

import java.util.Optional;
import lanetide.cli.scenario.key.Form.Name;
import lanetide.cli.scenario.key.Form.OrNone;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.cli.scenario.key.Form.Text;
import lanetide.oilflow.ball.BallCore;
import lanetide.oilflow.catalogue.Grits;
import lanetide.squads.model.Reckoning;

/** Keys of what a scenario defines itself, by name. */
public final class OwnKeys {
    /** Longest absorption time of a cover that takes in any oil (ms): 30 years. */
    public static final double MAX_ABSORPTION_MS = 1e12;

    private static final Grits GRITS = Grits.shipped();

    /** A lane surface. */
    public static final Block SURFACE = new Block("surfaces.NAME");

    public static final Key<Double> DRY_FRICTION = SURFACE.key(
                    "dryFriction", Form.number(0.05, 0.35), "friction of a medium cover on the clean surface")
            .required("0.18 to 0.24");
    public static final Key<Double> LANE_ROUGHNESS = SURFACE.key(
                    "roughness", Form.quantity(Measure.ROUGHNESS, "um", Range.between(0.05, 3)), "roughness Ra")
            .required("0.3 um to 0.6 um");

    /** The same in every block of this class. */
    public static final Key<String> SOURCE = SURFACE.key(
                    "source", new Text(false), "where the values come from, or assumption")
            .required("assumption");

    /** A ball cover. */
    public static final Block COVER = new Block("covers.NAME");

    public static final Key<Double> FRICTION_FACTOR = COVER.key(
                    "frictionFactor", Form.number(0.3, 1.6), "dry friction relative to a medium cover")
            .required("0.6 to 1.1");
    public static final Key<Double> ROUGHNESS = COVER.key(
                    "roughness", Form.quantity(Measure.ROUGHNESS, "um", Range.between(0.05, 4)), "roughness Ra")
            .optional("0.15 um to 1 um", "grit");
    public static final Key<Double> GRIT = COVER.key(
                    "grit",
                    Form.number(GRITS.coarsest(), GRITS.finest()),
                    "abrasive with which the ball was sanded all over until its finish changed no more")
            .optional("500 to 4000", "roughness");
    public static final Key<Double> FLARE_OVERLAP = COVER.key(
                    "flareOverlap", Form.share(0, 1), "share of a revolution's strip the next runs over again")
            .required("15 % to 90 %");
    public static final Key<Optional<Long>> ABSORPTION = COVER.key(
                    "absorption",
                    new OrNone<>(Form.time("s or min", Range.above(0, MAX_ABSORPTION_MS))),
                    "time to take in 63 % of the oil on it")
            .required("300 s to 600 s");
    public static final Key<Double> RG = ball("rg", "radius of gyration", "2.48 in to 2.70 in", "2.55 in");
    public static final Key<Double> DIFFERENTIAL = ball(
            "differential",
            "difference of radii of gyration; held to the rules, while the flare itself is flareOverlap",
            "0.020 in to 0.055 in",
            "within the rules");
    public static final Key<Double> DIAMETER = ball("diameter", "of the ball", "8.5 in to 8.595 in", "8.54 in");
    public static final Key<Double> WEIGHT = COVER.key(
                    "weight",
                    Form.quantity(Measure.WEIGHT, "lb or kg", Range.between(BallCore.MIN_MASS_KG, 100)),
                    "of the ball")
            .optional("12 lb to 16 lb", "15 lb");

    /** A playing style. */
    public static final Block STYLE = new Block("styles.NAME");

    public static final Key<Double> SPEED = STYLE.key(
                    "speed",
                    Form.quantity(Measure.SPEED, "mph, m/s or km/h", Range.between(4, 13)),
                    "ball speed at release")
            .required("16 mph to 20 mph");
    public static final Key<Double> REV_RATE = STYLE.key(
                    "revRate", Form.quantity(Measure.REV_RATE, "rpm", Range.between(0, 75)), "rev rate at release")
            .required("170 rpm to 450 rpm");
    public static final Key<Double> AXIS_ROTATION = angle(
            "axisRotation",
            0,
            StrictMath.PI / 2,
            "between heading and drive",
            "25 deg to 60 deg",
            "required; not beside plays");
    public static final Key<Double> AXIS_TILT = STYLE.key(
                    "axisTilt",
                    Form.quantity(Measure.ANGLE, "deg", Range.between(0, 1.2)),
                    "of the axis out of the horizontal")
            .assumed("5 deg to 20 deg", StrictMath.toRadians(12), Sources.ASSUMPTION);
    public static final Key<Double> NATURAL_LAUNCH = angle(
            "naturalLaunch",
            -0.05,
            0.1,
            "launch angle at home, positive to the own gutter",
            "0 deg to 2 deg",
            "required; not beside plays");
    public static final Key<Void> PLAYS = STYLE.key(
                    "plays", Structure.BLOCK, "a line the bowler knows, in place of axisRotation and naturalLaunch")
            .optional("a block", "axisRotation and naturalLaunch");

    /** A line that a bowler tells: it meets the pocket on that pattern, fresh, with that ball. */
    public static final Block LINE = new Block("styles.NAME.plays");

    public static final Key<Double> PLAYS_LAYDOWN = LINE.key(
                    "laydown",
                    Form.boards(2, 38),
                    "where the ball, not the foot, is laid down, from the bowler's own gutter")
            .required("14 boards");
    public static final Key<Double> PLAYS_ARROWS = LINE.key(
                    "arrows", Form.boards(1, 34), "where it crosses the arrows, from the same gutter")
            .required("11 boards");
    public static final Key<String> PLAYS_BALL = LINE.key(
                    "ball", new Name("cover", ""), "cover of the ball he throws there")
            .required("medium-reactive");
    public static final Key<Void> PLAYS_PATTERN = LINE.key(
                    "pattern", Structure.BLOCK, "the pattern it is played on, with the keys of `pattern`")
            .required("{length: 40 ft, ratio: 8:1, volume: 23 mL}");

    /** A level of skill. */
    public static final Block LEVEL = new Block("levels.NAME");

    public static final Key<Double> ARROWS = LEVEL.key(
                    "arrows",
                    Form.quantity(Measure.BOARDS, "boards", Range.above(0, 10)),
                    "standard deviation at the arrows")
            .required("0.65 boards to 1.5 boards");
    public static final Key<Double> SPEED_SHARE = LEVEL.key(
                    "speedShare", Form.share(0, 0.1), "standard deviation of speed")
            .required("1 % to 3 %");
    public static final Key<Double> SPIN_SHARE = LEVEL.key(
                    "spinShare", Form.share(0, 0.3), "standard deviation of rev rate")
            .required("3 % to 7 %");
    public static final Key<Double> SEES = LEVEL.key(
                    "sees", Form.boards(0, 5), "error in reading where the ball met the pins")
            .required("0.7 boards to 2.5 boards");
    public static final Key<Double> DEAD_BAND = LEVEL.key(
                    "deadBand", Form.boards(0, 10), "smallest believed miss that makes the bowler move")
            .required("0.6 boards to 2 boards");
    public static final Key<Double> GAIN = LEVEL.key(
                    "gain", Form.number(0, 1.5), "share of the believed miss that a move takes out")
            .required("0.8 to 1");
    public static final Key<Integer> PATIENCE = LEVEL.key(
                    "patience", Form.count(Measure.SHOTS, "shots", 1, 50), "shots on a lane from one move to the next")
            .required("2 shots to 5 shots");
    public static final Key<Double> DRIFT = LEVEL.key(
                    "drift", Form.boards(0, 3), "how fast the bowler reckons a line goes off in a game")
            .required("0.1 boards to 0.3 boards");
    public static final Key<Double> DEEPER = LEVEL.key(
                    "deeper", Form.boards(0, 3), "how much further in the bowler expects a game to move a line")
            .usual("0 boards to 0.5 boards", 0.0);
    public static final Key<Double> OTHERS = LEVEL.key(
                    "others",
                    Form.boards(0, Reckoning.NOT_AT_ALL_BOARDS),
                    "how well others' balls on the pair tell the bowler's own move; 20 boards: not at all")
            .usual("1 board to 3 boards", Reckoning.NOT_AT_ALL_BOARDS);
    public static final Key<Double> TOLD = LEVEL.key(
                    "told",
                    Form.boards(0, Reckoning.NOT_AT_ALL_BOARDS),
                    "how well those tell it who bowled there before; 20 boards: not at all")
            .usual("1.5 boards to 5 boards", Reckoning.NOT_AT_ALL_BOARDS);
    public static final Key<Double> FORM = LEVEL.key(
                    "form", Form.share(0, 0.5), "how much the scatter changes from game to game")
            .required("0 % to 20 %");

    static {
        COVER.add(SOURCE);
        STYLE.add(SOURCE);
        LEVEL.add(SOURCE);
    }

    private OwnKeys() {}

    private static Key<Double> ball(String name, String meaning, String typical, String otherwise) {
        return COVER.key(name, Form.length("in or cm", 0, 100), meaning).optional(typical, otherwise);
    }

    private static Key<Double> angle(
            String name, double lowRad, double highRad, String meaning, String typical, String otherwise) {
        return STYLE.key(name, Form.quantity(Measure.ANGLE, "deg", Range.between(lowRad, highRad)), meaning)
                .optional(typical, otherwise);
    }
}
