package lanetide.cli.scenario.key;

import java.util.List;
import lanetide.cli.scenario.key.Form.Each;
import lanetide.cli.scenario.key.Form.Quantity;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.cli.scenario.key.Form.Text;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternBands;
import lanetide.oilflow.film.TapeTable;
import lanetide.oilflow.lane.LaneGeometry;

/** Keys of the oil pattern. */
public final class PatternKeys {
    /** Volumes of oil on one lane. */
    public static final Quantity<Double> VOLUMES =
            Form.quantity(Measure.VOLUME, "mL", Range.between(OilPattern.MIN_ML, OilPattern.MAX_ML));

    /** A board that is read. */
    public static final Quantity<Integer> BOARD = Form.whole(1, LaneGeometry.BOARDS);

    /** The film that a tape reads, in units. */
    public static final Quantity<Double> FILM = Form.number(0, TapeTable.MAX_UNITS);

    private static final PatternBands PUBLISHED = PatternBands.PUBLISHED;
    private static final Quantity<Double> LENGTHS =
            Form.length("ft or m", OilPattern.MIN_LENGTH_M, OilPattern.MAX_LENGTH_M);
    private static final Quantity<Double> RATIOS = ratios(14);
    private static final Quantity<Double> STARTS = Form.boards(2, 12);
    private static final Quantity<Double> ENDS = Form.boards(2.5, 17);

    /** The oil pattern. */
    public static final Block PATTERN = new Block("pattern");

    public static final Key<String> NAME =
            PATTERN.key("name", new Text(false), "what the pattern is called").usual("House", "pattern");
    public static final Key<Double> LENGTH =
            PATTERN.key("length", LENGTHS, "where the oil ends").required("36 ft to 44 ft");
    public static final Key<Double> VOLUME = PATTERN.key("volume", VOLUMES, "oil on one lane")
            .optional("20 mL to 30 mL", "required; with tapes, what they hold");
    public static final Key<Double> RATIO = PATTERN.key("ratio", RATIOS, "middle five boards over boards 3 to 7")
            .optional("2:1 (hard) to 10:1 (house)", "required; not beside tapes");
    public static final Key<Double> TAPER_FROM = PATTERN.key(
                    "taperFrom", STARTS, "from either gutter, where the film starts to rise")
            .optional("5 boards to 3:1, 8.5 boards from 5:1 on 40 ft", "by ratio and length");
    public static final Key<Double> TAPER_TO = PATTERN.key("taperTo", ENDS, "from either gutter, where it stops rising")
            .optional("14 boards to 3:1, 13.5 boards from 5:1 on 40 ft", "by ratio and length");
    public static final Key<Double> DECAY = PATTERN.key(
                    "decay", Form.number(0, 6), "exponent of the fall along the lane")
            .assumed(OilPattern.DEFAULT_DECAY, Sources.CHOSEN);
    public static final Key<Double> FLOOR = PATTERN.key(
                    "floor", Form.share(0, 1), "share of the foul-line film left where the applied oil ends")
            .assumed(OilPattern.DEFAULT_FLOOR, Sources.CHOSEN);
    public static final Key<Double> BUFF_FROM = PATTERN.key(
                    "buffFrom",
                    Form.length("ft or m", 3, OilPattern.MAX_LENGTH_M),
                    "where the applied oil ends and is only buffed on")
            .optional("25 ft to 30 ft", "length");
    public static final Key<Double> BUFF_TO = PATTERN.key(
                    "buffTo",
                    Form.share(0, 1),
                    "with buffFrom, share of the foul-line film left at the end of the buffed part")
            .assumed(OilPattern.DEFAULT_BUFF_TO, Sources.ASSUMPTION);
    public static final Key<Void> LEFT_HALF = PATTERN.key(
                    "left", Structure.BLOCK, "the half at the left-hand gutter, if it differs")
            .optional("{ratio: 2:1}", "the same");
    public static final Key<Void> BY_TAPES = PATTERN.key("tapes", Structure.BLOCK, "the pattern by tape readings")
            .optional("a block", "by ratio, taper and fall");
    public static final Key<Void> OWN_BANDS = PATTERN.key(
                    "bands", Structure.BLOCK, "your own limits of short, low, sport and so on")
            .optional("a block", "published ones");

    /** The left half of a pattern. */
    public static final Block LEFT = new Block("pattern.left");

    public static final Key<Double> LEFT_RATIO = LEFT.key(
                    "ratio", RATIOS, "middle five boards over the left boards 3 to 7")
            .optional("2:1 to 10:1", "as on the right");
    public static final Key<Double> LEFT_TAPER_FROM =
            leftTaper("taperFrom", STARTS, "from the left-hand gutter, where the film starts to rise", "5 boards");
    public static final Key<Double> LEFT_TAPER_TO =
            leftTaper("taperTo", ENDS, "from the left-hand gutter, where it stops rising", "14 boards");

    /** A further pattern, under its name. */
    public static final Block FURTHER = further();

    /** A pattern by tape readings. */
    public static final Block TAPES = new Block("pattern.tapes");

    public static final Key<Double> ERROR = TAPES.key(
                    "error",
                    Form.quantity(Measure.FILM, "units or um", Range.between(0, 20)),
                    "error bar of every reading")
            .assumed(2.0, Sources.ASSUMPTION);
    public static final Key<List<Integer>> BOARDS = TAPES.key(
                    "boards",
                    new Each<>("list of boards", BOARD),
                    "boards read, from the right-hand gutter; to 20 at most if both halves are alike")
            .optional("[3, 5, 8, 11, 14, 20]", "file");
    public static final Key<Void> READINGS = TAPES.key("readings", Structure.LIST, "one row a distance")
            .optional("- {at: 8 ft, units: [9, 12, 17, 24, 30, 33]}", "file");
    public static final Key<Void> FILE = TAPES.key(
                    "file", Structure.FILE, "a CSV table beside the scenario with the columns distance, board, units")
            .optional("tapes.csv", "boards and readings");

    /** The readings at one distance. */
    public static final Block TAPE = new Block("pattern.tapes.readings");

    public static final Key<Double> AT = TAPE.key(
                    "at", Form.length("ft or m", 0, LaneGeometry.HEAD_PIN_M), "distance from the foul line")
            .required("8 ft, 15 ft, 22 ft or 2 ft before the end");
    public static final Key<List<Double>> UNITS = TAPE.key(
                    "units", new Each<>("list of numbers", FILM), "units of oil, one a board")
            .required("[9, 12, 17, 24, 30, 33]");

    /** Limits of bands and tiers. */
    public static final Block BANDS = new Block("pattern.bands");

    public static final Key<Double> SHORT_TO = BANDS.key("shortTo", LENGTHS, "longest short pattern")
            .assumed("35 ft to 37 ft", PUBLISHED.shortToM(), PatternBands.LENGTH_SOURCE);
    public static final Key<Double> LONG_FROM = BANDS.key("longFrom", LENGTHS, "shortest long pattern")
            .assumed("41 ft to 43 ft", PUBLISHED.longFromM(), PatternBands.LENGTH_SOURCE);
    public static final Key<Double> LOW_BELOW = BANDS.key("lowBelow", VOLUMES, "less is low volume")
            .assumed("20 mL to 21 mL", PUBLISHED.lowBelowMl(), PatternBands.VOLUME_SOURCE);
    public static final Key<Double> HIGH_ABOVE = BANDS.key("highAbove", VOLUMES, "more is high volume")
            .assumed("23 mL to 24 mL", PUBLISHED.highAboveMl(), PatternBands.VOLUME_SOURCE);
    public static final Key<Double> SPORT_TO = BANDS.key("sportTo", ratios(100), "largest ratio of a sport pattern")
            .assumed("3:1 to 4:1", PUBLISHED.sportTo(), PatternBands.RATIO_SOURCE);
    public static final Key<Double> HOUSE_FROM = BANDS.key(
                    "houseFrom", ratios(100), "smallest ratio of a house pattern")
            .assumed("6:1 to 8:1", PUBLISHED.houseFrom(), PatternBands.RATIO_SOURCE);

    private PatternKeys() {}

    /** As the first pattern, but for its name, which stands above, and for the limits by which patterns are sorted. */
    private static Block further() {
        Block block = new Block("patterns.NAME");
        PATTERN.keys().stream()
                .filter(key -> !key.equals(NAME) && !key.equals(OWN_BANDS))
                .forEach(block::add);
        return block;
    }

    private static Quantity<Double> ratios(double largest) {
        return Form.quantity(Measure.RATIO, "n:1", Range.between(1, largest));
    }

    private static Key<Double> leftTaper(String name, Form<Double> form, String meaning, String typical) {
        return LEFT.key(name, form, meaning)
                .optional(typical, "as stated for the right; else by its own ratio, and length");
    }
}
