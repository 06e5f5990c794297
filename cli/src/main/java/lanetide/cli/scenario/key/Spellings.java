package lanetide.cli.scenario.key;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How the units of a scenario may be written. */
public final class Spellings {
    private Spellings() {}

    /**
     * Every spelling of every unit of the kind that a unit belongs to.
     *
     * @param unit a unit as the tables of keys write it, such as {@code ft} or {@code n:1}
     * @return all spellings of its kind; empty if it is no unit
     */
    public static Optional<List<String>> ofKindWith(String unit) {
        String symbol = unit.startsWith("n:") ? unit.substring(1) : unit;
        return Arrays.stream(Measure.values())
                .filter(measure -> measure.hasUnit() && measure.unit(symbol).isPresent())
                .findFirst()
                .map(Measure::spellings);
    }
}
