package lanetide.squads.draw;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lanetide.oilflow.lane.Hand;

/**
 * What a draw looks at in a bowler, as far as it is known.
 *
 * @param hand delivery side
 * @param style name of the playing style
 * @param averagePins his average (pins)
 */
public record Traits(Optional<Hand> hand, Optional<String> style, OptionalInt averagePins) {
    /**
     * Left-handers.
     *
     * @param some some bowlers
     * @return how many of them are known to be
     */
    public static long left(List<Traits> some) {
        return some.stream()
                .filter(one -> one.hand().filter(Hand.LEFT::equals).isPresent())
                .count();
    }

    /**
     * Players of a style.
     *
     * @param some some bowlers
     * @param style the style's name
     * @return how many of them are known to be
     */
    public static long ofStyle(List<Traits> some, String style) {
        return some.stream()
                .filter(one -> one.style().filter(style::equals).isPresent())
                .count();
    }

    /**
     * Mean average of those whose average is known.
     *
     * @param some some bowlers
     * @param otherwise what to answer if none is known (pins)
     * @return pins
     */
    public static double mean(List<Traits> some, double otherwise) {
        return some.stream()
                .flatMapToInt(one -> one.averagePins().stream())
                .average()
                .orElse(otherwise);
    }
}
