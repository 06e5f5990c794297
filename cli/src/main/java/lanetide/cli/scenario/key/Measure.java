package lanetide.cli.scenario.key;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;

/** The kinds of quantity in a scenario, the units each may be written in, and the base unit it is turned into. */
@SuppressWarnings("ImmutableEnumChecker") // the lists come from List.of
public enum Measure {
    /** Base unit: metre. */
    LENGTH(Unit.of("ft", LaneGeometry.FOOT_M), Unit.of("m", 1), Unit.of("cm", 0.01), Unit.of("in", 0.0254)),
    /** Base unit: millilitre. */
    VOLUME(Unit.of("mL", 1, "ml"), Unit.of("uL", 0.001, "ul", "\u00b5L", "\u03bcL")),
    /** Base unit: the number n of n:1. */
    RATIO(Unit.of(":1", 1)),
    /** Base unit: millisecond. The one kind that may be written in parts, such as 2 h 30 min. */
    TIME(Unit.of("min", 60_000), Unit.of("s", 1000), Unit.of("h", 3_600_000)),
    /** Base unit: one (100 %). */
    SHARE(Unit.of("%", 0.01)),
    /** Base unit: metre a second. */
    SPEED(Unit.of("mph", Release.MPH_MPS), Unit.of("m/s", 1), Unit.of("km/h", 1 / 3.6)),
    /** Base unit: radian a second. */
    REV_RATE(Unit.of("rpm", Release.RPM_RADPS)),
    /** Base unit: radian. */
    ANGLE(Unit.of("deg", StrictMath.PI / 180, "degrees")),
    /** Base unit: micrometre. */
    ROUGHNESS(Unit.of("um", 1, "\u00b5m", "\u03bcm"), Unit.of("microinch", 0.0254)),
    /** Base unit: kilogram. */
    WEIGHT(Unit.of("lb", 0.45359237), Unit.of("kg", 1)),
    /** Base unit: unit of oil. */
    FILM(Unit.of("units", 1, "unit"), Unit.of("um", 1 / OilFilm.UNIT_UM, "\u00b5m", "\u03bcm")),
    /** Base unit: board. */
    BOARDS(Unit.of("boards", 1, "board")),
    /** Base unit: lane pair. */
    PAIRS(Unit.of("pairs", 1, "pair")),
    /** Base unit: game. */
    GAMES(Unit.of("games", 1, "game")),
    /** Base unit: pin. */
    PINS(Unit.of("pins", 1, "pin")),
    /** Base unit: shot. */
    SHOTS(Unit.of("shots", 1, "shot")),
    /** A number without a unit. */
    NUMBER(Unit.of("", 1));

    private final List<Unit> units;

    Measure(Unit... units) {
        this.units = List.of(units);
    }

    /** Whether a number of this kind needs a unit. */
    public boolean hasUnit() {
        return this != NUMBER;
    }

    /** The unit that reports write. */
    public Unit usualUnit() {
        return units.get(0);
    }

    /** The unit that is spelled so; empty if this kind has none. */
    public Optional<Unit> unit(String spelling) {
        return units.stream()
                .filter(unit -> unit.spellings().contains(spelling))
                .findFirst();
    }

    /** Every way to write any of the units. */
    public List<String> spellings() {
        return units.stream().flatMap(unit -> unit.spellings().stream()).toList();
    }

    /** The units in words, such as {@code ft, m or in}. */
    public String unitsInWords() {
        String all = units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
        int last = all.lastIndexOf(", ");
        return last < 0 ? all : all.substring(0, last) + " or" + all.substring(last + 1);
    }
}
