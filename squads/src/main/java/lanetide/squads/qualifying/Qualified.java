package lanetide.squads.qualifying;

import java.util.List;

/**
 * Who made the cut in one playing.
 *
 * @param chances the chance of each person: 1 or 0, or what the lot leaves those who tie for the last places
 * @param goingOn people who go on, which is the sum of these chances
 * @param scorePins total of the last one who goes on (pins)
 */
public record Qualified(List<Double> chances, int goingOn, int scorePins) {
    /** Copies the list. */
    public Qualified {
        chances = List.copyOf(chances);
    }
}
