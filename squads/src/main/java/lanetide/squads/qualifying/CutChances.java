package lanetide.squads.qualifying;

import java.util.List;
import java.util.Optional;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.model.Cut;

/**
 * What the cut of an event does to whom, over the seatings of all rounds: everybody sits in any squad, with the luck he
 * has.
 *
 * @param cut its rule
 * @param people people who are entered
 * @param places places there are
 * @param goingOn people who go on, as a mean; more than there are places only if all who tie go on
 * @param score expected total of the last one who goes on (pins)
 * @param levels those who are entered once: all of them, then by level of skill where there are several, the least
 *     scatter first. None if everybody is entered more than once
 * @param again those who are entered more than once; empty if nobody is
 */
public record CutChances(
        Cut cut, int people, int places, double goingOn, Found score, List<OfLevel> levels, Optional<Again> again) {
    /** Copies the list. */
    public CutChances {
        levels = List.copyOf(levels);
    }

    /**
     * Something that was found over the rounds.
     *
     * @param value its mean
     * @param ci90 its interval, with luck and what is not known
     * @param luck90 its interval with the luck of play alone
     * @param signShare share of the sets of values in which it has the sign it has here, luck taken out; 1 with a
     *     single set
     */
    public record Found(double value, ConfidenceInterval ci90, ConfidenceInterval luck90, double signShare) {}

    /**
     * People of one level of skill who are entered once.
     *
     * @param level its name; empty for all levels together
     * @param people how many they are
     * @param chance their chance to go on, 0 to 1
     * @param squads what it is worth to be placed in each squad, in the event's order; none for a single squad
     */
    public record OfLevel(Optional<String> level, int people, Found chance, List<InSquad> squads) {
        /** Copies the list. */
        public OfLevel {
            squads = List.copyOf(squads);
        }
    }

    /**
     * A place in a squad.
     *
     * @param squad its name
     * @param more the chance to go on of a bowler who is placed there, less his mean over the squads
     */
    public record InSquad(String squad, Found more) {}

    /**
     * People who are entered more than once.
     *
     * @param people how many they are
     * @param chance their chance to go on, 0 to 1
     * @param worth how much of it they owe to being entered again: less the mean over their entries of what it would be
     *     with that one alone
     */
    public record Again(int people, Found chance, Found worth) {}
}
