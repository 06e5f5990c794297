package lanetide.cli.scenario.measured;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.cli.scenario.key.Measure;

/** What can stand in a column of a table of measurements, and the titles that it may have. */
@SuppressWarnings("ImmutableEnumChecker") // the list comes from List.of
enum Column {
    LANE("lane", Measure.NUMBER, "lane", "lanenumber", "laneno"),
    SQUAD("squad", Measure.NUMBER, "squad", "squadid", "squadname"),
    AFTER(
            "after",
            Measure.NUMBER,
            "after",
            "aftergame",
            "aftergames",
            "games",
            "gamesafter",
            "gamesbefore",
            "gamesbowled",
            "gamesdone",
            "gamesplayed",
            "when"),
    DISTANCE(
            "distance",
            Measure.LENGTH,
            "distance",
            "dist",
            "at",
            "downlane",
            "downthelane",
            "fromfoulline",
            "fromthefoulline",
            "distancefromfoulline",
            "distancefromthefoulline"),
    BOARD("board", Measure.NUMBER, "board", "boards", "boardno", "boardnumber", "onboard"),
    OIL("units", Measure.FILM, "oil", "film", "filmthickness", "oilfilm", "oilreading", "reading", "thickness"),
    OIL_ERROR("error", Measure.FILM, Titles.ERROR),
    BOWLER(
            "bowler",
            Measure.NUMBER,
            "bowler",
            "bowlername",
            "bowledby",
            "fullname",
            "name",
            "player",
            "thrownby",
            "who"),
    LAYDOWN(
            "laydown",
            Measure.BOARDS,
            "laydown",
            "laiddown",
            "laiddownat",
            "laiddownon",
            "foulline",
            "atfoulline",
            "atthefoulline",
            "boardatfoulline",
            "boardatthefoulline",
            "boardatlaydown"),
    ARROWS(
            "arrows",
            Measure.BOARDS,
            "arrows",
            "arrow",
            "atarrows",
            "atthearrows",
            "boardatarrows",
            "boardatthearrows",
            "overarrows",
            "overthearrows",
            "target"),
    MET(
            "met",
            Measure.BOARDS,
            "met",
            "metpins",
            "metthepins",
            "pins",
            "pin",
            "pinsmet",
            "atpins",
            "atthepins",
            "boardatpins",
            "boardatthepins",
            "headpin",
            "atheadpin",
            "attheheadpin",
            "boardatheadpin",
            "boardattheheadpin",
            "entry",
            "impact"),
    PASSED(
            "passed",
            Measure.BOARDS,
            "passed",
            "boardpassed",
            "boardatdistance",
            "boardatthedistance",
            "boardthere",
            "crossed",
            "passedat",
            "passedboard",
            "seenon"),
    SEEN_ERROR("error", Measure.BOARDS, Titles.ERROR),
    SPEED("speed", Measure.SPEED, "speed", "ballspeed", "releasespeed", "speedatrelease"),
    REVS("revs", Measure.REV_RATE, "revs", "rev", "revrate", "revolutions", "spin"),
    TIME("time", Measure.NUMBER, "time", "clock", "timeofday", "takenat", "measuredat", "thrownat"),
    ENDED("ended", Measure.NUMBER, "ended", "end", "endedat", "done", "doneat", "finished", "finishedat", "over"),
    GAME("game", Measure.NUMBER, "game", "gameno", "gamenumber", "ingame"),
    SCORE(
            "score",
            Measure.PINS,
            "score",
            "scores",
            "gamescore",
            "pincount",
            "pinfall",
            "pins",
            "result",
            "scratch",
            "scratchscore",
            "total");

    /** Endings of a title that say a unit, by unit. */
    private static final Map<Measure, Map<String, List<String>>> ENDINGS = Map.of(
            Measure.LENGTH,
            Map.of(
                    "ft", List.of("ft", "feet", "foot"),
                    "m", List.of("m", "metre", "metres", "meter", "meters"),
                    "cm", List.of("cm"),
                    "in", List.of("in", "inches")),
            Measure.FILM,
            Map.of(
                    "units", List.of("units", "unit", "unitsofoil"),
                    "um", List.of("um", "micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers")),
            Measure.SPEED,
            Map.of("mph", List.of("mph"), "m/s", List.of("ms", "mps"), "km/h", List.of("kmh", "kph")),
            Measure.REV_RATE,
            Map.of("rpm", List.of("rpm")),
            Measure.BOARDS,
            Map.of("boards", List.of("boards", "board")),
            Measure.PINS,
            Map.of("pins", List.of("pins")));

    private final String word;
    private final Measure measure;
    private final List<String> names;

    Column(String word, Measure measure, String... names) {
        this.word = word;
        this.measure = measure;
        this.names = List.of(names);
    }

    /** What notices call the column. */
    String word() {
        return word;
    }

    /**
     * The titles of the column, in small letters without spaces and signs, each with the unit of its numbers. A title
     * may end in a unit, and a unit that no other column has may stand alone.
     */
    Map<String, String> titles() {
        Map<String, String> endings = new HashMap<>();
        ENDINGS.getOrDefault(measure, Map.of())
                .forEach((unit, spelled) -> spelled.forEach(ending -> endings.put(ending, unit)));
        Map<String, String> titles = new HashMap<>();
        for (String name : names) {
            endings.forEach((ending, unit) -> {
                titles.put(name + ending, unit);
                titles.put(name + "in" + ending, unit);
            });
        }
        names.forEach(name -> titles.put(name, measure.usualUnit().symbol()));
        if (this == DISTANCE || this == OIL || this == SPEED || this == REVS) {
            endings.forEach(titles::putIfAbsent);
        }
        return titles;
    }

    /** Titles that several columns have. */
    private static final class Titles {
        static final String[] ERROR = {
            "error", "errorbar", "giveortake", "plusminus", "plusorminus", "sd", "standarddeviation", "uncertainty"
        };
    }
}
