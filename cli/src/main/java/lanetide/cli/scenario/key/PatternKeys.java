package lanetide.cli.scenario.key;

import static lanetide.cli.scenario.key.Key.optional;
import static lanetide.cli.scenario.key.Key.required;
import static lanetide.cli.scenario.key.Key.usual;

import java.util.List;

/** Keys of the oil pattern. */
public final class PatternKeys {
    /** The oil pattern. */
    public static final List<Key> PATTERN = List.of(
            optional("name", "text", "what the pattern is called", "House", "pattern"),
            required("length", "ft or m", "where the oil ends", "36 ft to 44 ft"),
            optional("volume", "mL", "oil on one lane", "20 mL to 30 mL", "required; with tapes, what they hold"),
            optional(
                    "ratio",
                    "n:1",
                    "middle five boards over boards 3 to 7",
                    "2:1 (hard) to 10:1 (house)",
                    "required; not beside tapes"),
            usual("taperFrom", "boards", "from either gutter, where the film starts to rise", Defaults.TAPER_FROM),
            usual("taperTo", "boards", "from either gutter, where it stops rising", Defaults.TAPER_TO),
            usual("decay", "number", "exponent of the fall along the lane", Defaults.DECAY),
            usual("floor", "%", "share of the foul-line film left where the applied oil ends", Defaults.FLOOR),
            optional("buffFrom", "ft or m", "where the applied oil ends and is only buffed on", "27 ft", "length"),
            optional(
                    "buffTo",
                    "%",
                    "share of the foul-line film left at the end of the buffed part",
                    Defaults.BUFF_TO.text(),
                    Defaults.BUFF_TO.text() + "; without buffFrom none"),
            optional("left", "block", "the half at the left-hand gutter, if it differs", "{ratio: 2:1}", "the same"),
            optional("tapes", "block", "the pattern by tape readings", "a block", "by ratio, taper and fall"),
            optional("bands", "block", "your own limits of short, low, sport and so on", "a block", "published ones"));

    /** The left half of a pattern. */
    public static final List<Key> LEFT = List.of(
            optional(
                    "ratio", "n:1", "middle five boards over the left boards 3 to 7", "2:1 to 10:1", "as on the right"),
            optional(
                    "taperFrom",
                    "boards",
                    "from the left-hand gutter, where the film starts to rise",
                    "5 boards",
                    "as on the right"),
            optional(
                    "taperTo",
                    "boards",
                    "from the left-hand gutter, where it stops rising",
                    "14 boards",
                    "as on the right"));

    /** A pattern by tape readings. */
    public static final List<Key> TAPES = List.of(
            usual("error", "units or um", "error bar of every reading", Defaults.TAPE_ERROR),
            optional(
                    "boards",
                    "list of boards",
                    "boards read, from the right-hand gutter; to 20 at most if both halves are alike",
                    "[3, 5, 8, 11, 14, 20]",
                    "file"),
            optional("readings", "list", "one row a distance", "- {at: 8 ft, units: [9, 12, 17, 24, 30, 33]}", "file"),
            optional(
                    "file",
                    "file name",
                    "a CSV table beside the scenario with the columns distance, board, units",
                    "tapes.csv",
                    "boards and readings"));

    /** The readings at one distance. */
    public static final List<Key> TAPE = List.of(
            required("at", "ft or m", "distance from the foul line", "8 ft, 15 ft, 22 ft or 2 ft before the end"),
            required("units", "list of numbers", "units of oil, one a board", "[9, 12, 17, 24, 30, 33]"));

    /** Limits of bands and tiers. */
    public static final List<Key> BANDS = List.of(
            optional("shortTo", "ft or m", "longest short pattern", "35 ft to 37 ft", Defaults.SHORT_TO),
            optional("longFrom", "ft or m", "shortest long pattern", "41 ft to 43 ft", Defaults.LONG_FROM),
            optional("lowBelow", "mL", "less is low volume", "20 mL to 21 mL", Defaults.LOW_BELOW),
            optional("highAbove", "mL", "more is high volume", "23 mL to 24 mL", Defaults.HIGH_ABOVE),
            optional("sportTo", "n:1", "largest ratio of a sport pattern", "3:1 to 4:1", Defaults.SPORT_TO),
            optional("houseFrom", "n:1", "smallest ratio of a house pattern", "6:1 to 8:1", Defaults.HOUSE_FROM));

    private PatternKeys() {}
}
