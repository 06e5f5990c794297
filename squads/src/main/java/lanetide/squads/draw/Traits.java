package lanetide.squads.draw;

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
public record Traits(Optional<Hand> hand, Optional<String> style, OptionalInt averagePins) {}
