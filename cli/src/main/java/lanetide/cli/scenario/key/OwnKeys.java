package lanetide.cli.scenario.key;

import static lanetide.cli.scenario.key.Key.optional;
import static lanetide.cli.scenario.key.Key.required;

import java.util.List;

/** Keys of what a scenario defines itself, by name. */
public final class OwnKeys {
    private static final Key SOURCE =
            required("source", "text", "where the values come from, or assumption", "assumption");

    /** A lane surface. */
    public static final List<Key> SURFACE = List.of(
            required("dryFriction", "number", "friction of a medium cover on the clean surface", "0.18 to 0.24"),
            required("roughness", "um", "roughness Ra", "0.3 um to 0.6 um"),
            SOURCE);

    /** A ball cover. */
    public static final List<Key> COVER = List.of(
            required("frictionFactor", "number", "dry friction relative to a medium cover", "0.6 to 1.1"),
            optional("roughness", "um", "roughness Ra", "0.15 um to 1 um", "grit"),
            optional(
                    "grit",
                    "number",
                    "abrasive with which the ball was sanded all over until its finish changed no more",
                    "500 to 4000",
                    "roughness"),
            required("flareOverlap", "%", "share of a revolution's strip the next runs over again", "15 % to 90 %"),
            required("absorption", "min or s, or none", "time to take in 63 % of the oil on it", "300 s to 600 s"),
            optional("rg", "in or cm", "radius of gyration", "2.48 in to 2.70 in", "2.55 in"),
            optional(
                    "differential",
                    "in or cm",
                    "difference of radii of gyration; held to the rules, while the flare itself is flareOverlap",
                    "0.020 in to 0.055 in",
                    "within the rules"),
            optional("diameter", "in or cm", "of the ball", "8.5 in to 8.595 in", "8.54 in"),
            optional("weight", "lb or kg", "of the ball", "12 lb to 16 lb", "15 lb"),
            SOURCE);

    /** A playing style. */
    public static final List<Key> STYLE = List.of(
            required("speed", "mph, m/s or km/h", "ball speed at release", "16 mph to 20 mph"),
            required("revRate", "rpm", "rev rate at release", "170 rpm to 450 rpm"),
            required("axisRotation", "deg", "between heading and drive", "25 deg to 60 deg"),
            required("axisTilt", "deg", "of the axis out of the horizontal", "5 deg to 20 deg"),
            required("naturalLaunch", "deg", "launch angle at home, positive to the own gutter", "0 deg to 2 deg"),
            SOURCE);

    /** A level of skill. */
    public static final List<Key> LEVEL = List.of(
            required("arrows", "boards", "standard deviation at the arrows", "0.65 boards to 1.5 boards"),
            required("speedShare", "%", "standard deviation of speed", "1 % to 3 %"),
            required("spinShare", "%", "standard deviation of rev rate", "3 % to 7 %"),
            required("sees", "boards", "error in reading where the ball met the pins", "0.7 boards to 2.5 boards"),
            required(
                    "deadBand",
                    "boards",
                    "smallest believed miss that makes the bowler move",
                    "0.6 boards to 2 boards"),
            required("gain", "number", "share of the believed miss that a move takes out", "0.8 to 1"),
            required("patience", "shots", "shots on a lane from one move to the next", "2 shots to 5 shots"),
            required(
                    "drift",
                    "boards",
                    "how fast the bowler reckons a line goes off in a game",
                    "0.1 boards to 0.3 boards"),
            required("form", "%", "how much the scatter changes from game to game", "0 % to 20 %"),
            SOURCE);

    private OwnKeys() {}
}
