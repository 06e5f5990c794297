package lanetide.cli.words;

import java.util.OptionalInt;
import lanetide.squads.model.Event;

/** In words what the intervals of an answer hold, and what they do not. */
public final class UnknownWords {
    private UnknownWords() {}

    /**
     * What intervals hold.
     *
     * @param sets sets of values that an answer went through; 1 if all were as usual
     * @param event the event that was played
     * @return one sentence on luck, one on what is not known, and one on who comes if that is not known
     */
    public static String intervals(int sets, Event event) {
        return intervals(sets, !event.centre().findings().sets().isEmpty())
                + (event.isDrawn()
                        ? " Who comes is not known either: in every playing but the first others are drawn by the shares of"
                                + " the field, and what that changes counts as luck."
                        : "");
    }

    private static String intervals(int sets, boolean fitted) {
        if (fitted && sets == 1) {
            return "Intervals hold the luck of play alone: what is not known was taken from the middle of what fits these"
                    + " lanes, and could be otherwise.";
        }
        if (fitted) {
            return "Intervals hold two things. Luck: the same event bowled again comes out otherwise. And what is not"
                    + " known: how slippery, how absorbent, how bowlers follow the lanes. The event was played in turn with "
                    + sets
                    + " sets of values that published facts and what was measured here do not rule out, all equally"
                    + " likely.";
        }
        return sets == 1
                ? "Intervals hold the luck of play alone: values that nobody has measured were taken as usual, and could be"
                        + " otherwise."
                : "Intervals hold two things. Luck: the same event bowled again comes out otherwise. And what is not known:"
                        + " how slippery, how absorbent, how bowlers follow the lanes was nowhere measured, so the event was"
                        + " played in turn with " + sets
                        + " sets of values that published facts do not rule out, all equally likely.";
    }

    /**
     * What a lane or a timetable shown as an example is.
     *
     * @param sets sets of values that an answer went through
     * @param event the event that was played
     * @return what to call it in a heading
     */
    public static String example(int sets, Event event) {
        if (sets == 1) {
            return "first playing";
        }
        return event.centre().findings().sets().isEmpty()
                ? "one playing with the usual values"
                : "one playing with values in the middle of those that fit";
    }

    /**
     * The values that stand for all sets.
     *
     * @param event the event that was played
     * @return what to call them
     */
    public static String values(Event event) {
        return event.centre().findings().sets().isEmpty() ? "usual values" : "middle values";
    }

    /**
     * In how many of the sets something holds, for a table.
     *
     * @param share the share of the sets, 0 to 1
     * @return hundredths
     */
    public static String share(double share) {
        return Math.round(100 * share) + " %";
    }

    /**
     * What more playings would do.
     *
     * @param playings playings that would decide; empty if no number surely would
     * @param beyondPlaying whether too much is not known for any number to decide
     * @return a sentence or two
     */
    public static String settles(OptionalInt playings, boolean beyondPlaying) {
        if (beyondPlaying) {
            return "No number of playings would decide: it hangs on what is not known. Scores of an event like this by squad"
                    + " and game, or tapes of its lanes after play, would tell more than any playing.";
        }
        return playings.isPresent()
                ? "With --replications " + playings.getAsInt()
                        + " it would be fair or unfair with 90 % chance, if the advantages are about what they look like now."
                : "Not even a thousand times as many playings would surely decide: some advantage is about as large as the"
                        + " margin itself. Look at the open ones below, or set another margin.";
    }
}
