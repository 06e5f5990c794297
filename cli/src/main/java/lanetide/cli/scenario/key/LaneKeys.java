package lanetide.cli.scenario.key;

import static lanetide.cli.scenario.key.Key.optional;
import static lanetide.cli.scenario.key.Key.required;
import static lanetide.cli.scenario.key.Key.usual;

import java.util.List;

/** Keys of the lanes: those in use, their shape, and what can go wrong with them. */
public final class LaneKeys {
    /** The lanes. */
    public static final List<Key> CENTRE = List.of(
            optional("lanes", "lane range", "lanes in use, paired from the left", "1 to 24", "pairs"),
            optional("pairs", "list of pairs", "pairs in use, from left to right", "[1-2, 5-6]", "lanes"),
            optional("closed", "list of pairs", "pairs of `lanes` that are not in use", "[3-4]", "none"),
            optional(
                    "spare",
                    "list of pairs",
                    "pairs in use that no group is sent to, for groups whose lane fails",
                    "[23-24]",
                    "none"),
            required("surface", "name", "what the lanes are made of", "hard-synthetic"),
            usual("machines", "whole number", "lane machines that clean and oil, side by side", Defaults.MACHINES),
            optional("cleaners", "whole number", "machines that only clean, in place of machines", "1", "machines"),
            optional("oilers", "whole number", "machines that only oil, beside cleaners", "1", "machines"),
            optional("stripTime", "min or s", "to clean one lane", "30 s to 60 s", Defaults.STRIP_TIME),
            optional("oilTime", "min or s", "to oil one lane", "30 s to 60 s", Defaults.OIL_TIME),
            optional("machineWalk", "s", "to move a machine to the next pair", "5 s to 20 s", Defaults.MACHINE_WALK),
            optional("topography", "block", "how far the lanes are from level", "{spread: 0.01 in}", "level lanes"));

    /** How far the lanes are from level. */
    public static final List<Key> TOPOGRAPHY = List.of(
            optional(
                    "limit",
                    "in or cm",
                    "most that a tilt, crown or depression may be",
                    "0.040 in (the rules) or 0.050 in (an inspector, for tilt)",
                    Defaults.TOPOGRAPHY_LIMIT),
            optional(
                    "spread",
                    "in or cm",
                    "standard deviation of tilt and crown on lanes without readings, drawn by the seed",
                    "0.005 in to 0.02 in",
                    Defaults.TOPOGRAPHY_SPREAD.text() + ": level"),
            optional("readings", "list", "what was measured", "- {lane: 1, at: 20 ft, tilt: 0.01 in}", "none"));

    /** One reading of a lane's shape. */
    public static final List<Key> SHAPE = List.of(
            required("lane", "whole number", "the lane", "1"),
            optional("at", "ft or m", "distance from the foul line", "0 ft to 60 ft", "the whole lane"),
            optional(
                    "tilt",
                    "in or cm",
                    "left edge above the right one; below 0 under it",
                    "-0.02 in to 0.02 in",
                    "0 in"),
            optional(
                    "crown",
                    "in or cm",
                    "middle above the edges; below 0 a depression",
                    "-0.02 in to 0.02 in",
                    "0 in"));

    /** What can go wrong with lanes. */
    public static final List<Key> INCIDENTS = List.of(
            optional("jams", "block", "short stops of pinsetters by chance", "{every: 150 games, work: 2 min}", "none"),
            optional("faults", "block", "faults of lanes by chance", "{every: 2000 games, work: 25 min}", "none"),
            optional("planned", "list", "faults at given times", "- {lane: 7, at: \"09:15\", work: 30 min}", "none"),
            usual("crews", "whole number", "people who put lanes in order, one lane each at a time", Defaults.CREWS),
            usual("remedy", "name", "wait, spare (move to a spare pair) or split (over other groups)", Defaults.REMEDY),
            optional(
                    "patience",
                    "min",
                    "longest work that is waited for in any case",
                    "5 min to 15 min",
                    Defaults.PATIENCE));

    /** Short stops. */
    public static final List<Key> JAMS = stops("50 games to 500 games", "1 min to 5 min");

    /** Faults. */
    public static final List<Key> FAULTS = stops("500 games to 5000 games", "10 min to 60 min");

    /** A fault at a given time. */
    public static final List<Key> PLANNED = List.of(
            required("lane", "whole number", "the lane", "7"),
            required("at", "time of day", "when it fails", "\"09:15\""),
            required("work", "min or s", "time of the work", "10 min to 60 min"));

    private LaneKeys() {}

    private static List<Key> stops(String typicalGames, String typicalWork) {
        return List.of(
                required(
                        "every",
                        "games",
                        "mean bowlers' games (ten frames) on a lane from one to the next",
                        typicalGames),
                required("work", "min or s", "mean time of the work", typicalWork),
                optional(
                        "spread",
                        "%",
                        "standard deviation of the work, of its mean",
                        "30 % to 100 %",
                        Defaults.WORK_SPREAD));
    }
}
