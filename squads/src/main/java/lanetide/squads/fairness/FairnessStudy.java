package lanetide.squads.fairness;

import java.util.List;
import java.util.function.IntConsumer;
import lanetide.squads.model.Event;
import lanetide.squads.result.EventResult;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Part;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Study;

/**
 * Plays an event in rounds. In a round every bowler keeps his luck while all change seats, so that what remains between
 * two of his scores is what the seats did. The rounds are independent of each other.
 */
public final class FairnessStudy {
    private static final int LARGE_STARTS = 300;

    private FairnessStudy() {}

    /**
     * Playings of one round: in seatings of a number that lets every bowler visit every squad equally often, up to six
     * squads, and two more.
     *
     * @param event the event
     * @return at least 5
     */
    public static int playingsOfRound(Event event) {
        return SeatingRounds.perRound(event.squads().size());
    }

    /**
     * Fewest playings a study of an event can have.
     *
     * @param event the event
     * @return two rounds
     */
    public static int fewestPlayings(Event event) {
        return SeatingRounds.minPlayings(event.squads().size());
    }

    /**
     * Whether an event can be judged at all.
     *
     * @param event the event
     * @return true if it has two bowlers at least, so that they can change seats
     */
    public static boolean hasSeatsToChange(Event event) {
        return SeatingRounds.canChange(new Seats(event));
    }

    /**
     * Whether an event is so large that what is played beside the study itself is cut down: it has a cut, and so many
     * starts that a round tells as much as several of a smaller one.
     *
     * @param event the event
     * @return true if it has a cut and more than 300 starts
     */
    public static boolean isLarge(Event event) {
        return event.cut().isPresent() && new Seats(event).count() > LARGE_STARTS;
    }

    /**
     * Studies an event; the result does not depend on the number of threads.
     *
     * @param event the event
     * @param plan how it is studied
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return what every class of seats and bowlers gains
     * @throws IllegalArgumentException if the event has a single bowler, the plan allows fewer than
     *     {@link #fewestPlayings},
     */
    public static FairnessResult run(Event event, FairnessPlan plan, int threads, IntConsumer onDone) {
        return run(new PossibleEvents(event, 1), plan, Execution.on(threads), onDone);
    }

    /**
     * The same under sets of values, which the rounds go through in turn.
     *
     * @param events the event under its sets
     * @param plan how it is studied
     * @param execution how, as the next studies of its run
     * @param onDone told the number of playings done so far
     * @return what every class of seats and bowlers gains
     * @throws IllegalArgumentException as above
     */
    public static FairnessResult run(
            PossibleEvents events, FairnessPlan plan, Execution execution, IntConsumer onDone) {
        Event event = events.event();
        if (!plan.lanesChange()) {
            return play(
                            new PossibleEvents(UnchangingLanes.withoutPractice(event), events.sets()),
                            plan,
                            execution,
                            onDone)
                    .result();
        }
        FairnessResult result = play(events, plan, execution, onDone).result();
        // What goes with it is told of one playing with the usual values, like every example.
        GroupWear wear = new GroupWear(event, asDrawn(events.amongFirst(1), plan));
        return result.because(Reasons.of(event, result.effects(), result.estimates(), wear));
    }

    /** The same without reasons. */
    static RoundsPlayed play(PossibleEvents events, FairnessPlan plan, Execution execution, IntConsumer onDone) {
        RoundsPlayed played = new RoundsPlayed(events, plan);
        played.playTo(plan.playings() / playingsOfRound(events.event()), execution, onDone);
        return played;
    }

    /** The first playing in which everybody sits where he is drawn. */
    static EventResult asDrawn(PossibleEvents events, FairnessPlan plan) {
        SeatingRounds rounds = new SeatingRounds(events, plan);
        int drawn = rounds.firstAsDrawn();
        return new Study(new SeatedPlayings(events, rounds))
                .play(new Part(drawn, drawn + 1), 1)
                .get(0)
                .result();
    }

    /** What the mean scores of every playing by bowler say (pins a game), wherever they come from. */
    static FairnessResult judge(Event event, SeatingRounds rounds, FairnessPlan plan, List<double[]> scores) {
        return FairnessResult.of(estimates(event, rounds, scores), plan, scores.size());
    }

    /** The advantages in mean scores by bowler (pins a game) of every playing, or of those of the first rounds. */
    static EffectEstimates estimates(Event event, SeatingRounds rounds, List<double[]> scores) {
        return new EffectEstimates(event, rounds.seats(), rounds.rounds(scores), rounds.sets());
    }
}
