package lanetide.squads.study;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.model.Event;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;

/**
 * An event under the sets of values that a study goes through in turn. What all playings under a set share is worked
 * out once, when the first of them is wanted, whichever thread wants it.
 */
public final class PossibleEvents {
    private final Event first;
    private final Event event;
    /** What is done to the event once it is known who comes. */
    private final UnaryOperator<Event> onceTheyCame;

    private final int sets;
    private final Map<Integer, Playable> ready;

    /**
     * An event under sets of values.
     *
     * @param event the event, as a scenario has it
     * @param sets number of sets, at least 1; with 1 all values are as usual
     * @throws IllegalArgumentException if {@code sets} is below 1 or above the number of sets there are
     */
    public PossibleEvents(Event event, int sets) {
        this(event, event, UnaryOperator.identity(), sets, new ConcurrentHashMap<>());
        int most = ValueSets.of(event).size();
        if (sets < 1 || (sets > 1 && sets > most)) {
            throw new IllegalArgumentException(
                    "sets of values are " + sets + ", but must be at least 1 and at most " + most);
        }
    }

    private PossibleEvents(
            Event first, Event event, UnaryOperator<Event> onceTheyCame, int sets, Map<Integer, Playable> ready) {
        this.first = first;
        this.event = event;
        this.onceTheyCame = onceTheyCame;
        this.sets = sets;
        this.ready = ready;
    }

    /**
     * The event with the usual values.
     *
     * @return the event, as a scenario has it
     */
    public Event event() {
        return event;
    }

    /**
     * The number of sets.
     *
     * @return 1 if all values are as usual
     */
    public int sets() {
        return sets;
    }

    /**
     * Another event under the same sets, on the same patterns and under the same laws; what has been worked out for one
     * serves the other.
     *
     * @param other the other event, as a scenario has it
     * @return that event under these sets
     */
    public PossibleEvents with(Event other) {
        return with(other, UnaryOperator.identity());
    }

    /**
     * The same for an event in which something is done once it is known who comes.
     *
     * @param other the other event, as a scenario has it
     * @param done what is done to it, in every round
     * @return that event under these sets
     */
    public PossibleEvents with(Event other, UnaryOperator<Event> done) {
        return new PossibleEvents(first, other, done, sets, ready);
    }

    /**
     * The event with those who come in a round. Who is drawn by shares is drawn anew for every round but the first,
     * which has those of the scenario.
     *
     * @param luck the luck of the round, from 0
     * @param streams family of the round
     * @return the event, with usual values
     */
    public Event inRound(int luck, RandomStreams streams) {
        return luck == 0 ? event : onceTheyCame.apply(event.asTheyCome(streams));
    }

    /**
     * The same event under fewer sets.
     *
     * @param most so many of the sets, the first ones, at least 1; with 1 all values are as usual
     * @return the event under them
     */
    public PossibleEvents amongFirst(int most) {
        return new PossibleEvents(first, event, onceTheyCame, Math.min(sets, most), ready);
    }

    /**
     * The event under a set, ready to be played.
     *
     * @param set number of a set from 1, or {@link Playing#DEFAULT_SET}
     * @return the event, the physics and the lines under it
     */
    public Playable under(int set) {
        return under(event, set);
    }

    /**
     * Another event under a set, as for {@link #with}.
     *
     * @param other the other event, as a scenario has it
     * @param set number of a set from 1, or {@link Playing#DEFAULT_SET}
     * @return the other event under the set, with this one's physics and lines
     */
    public Playable under(Event other, int set) {
        ValueSet values = ValueSets.of(first, set);
        Playable shared = ready.computeIfAbsent(set, number -> Playable.of(PlayModel.under(first, values)));
        return shared.with(new PlayModel(other, values, shared.physics().model()).event());
    }
}
