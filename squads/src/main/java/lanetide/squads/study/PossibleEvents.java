package lanetide.squads.study;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
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
    private final int sets;
    private final Map<Integer, Playable> ready;

    /**
     * An event under sets of values.
     *
     * @param event the event, as a scenario has it
     * @param sets number of sets, at least 1; with 1 all values are as usual
     * @throws IllegalArgumentException if {@code sets} is below 1 or above the number of shipped sets
     */
    public PossibleEvents(Event event, int sets) {
        this(event, event, sets, new ConcurrentHashMap<>());
        if (sets < 1 || (sets > 1 && sets > ValueSets.count())) {
            throw new IllegalArgumentException(
                    "sets of values are " + sets + ", but must be at least 1 and at most " + ValueSets.count());
        }
    }

    private PossibleEvents(Event first, Event event, int sets, Map<Integer, Playable> ready) {
        this.first = first;
        this.event = event;
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
     * Another event under the same sets, whose bowlers are of the same kinds, on the same patterns and under the same
     * laws; what has been worked out for one serves the other.
     *
     * @param other the other event, as a scenario has it
     * @return that event under these sets
     */
    public PossibleEvents with(Event other) {
        return new PossibleEvents(first, other, sets, ready);
    }

    /**
     * The same event under fewer sets.
     *
     * @param most so many of the sets, the first ones, at least 1; with 1 all values are as usual
     * @return the event under them
     */
    public PossibleEvents amongFirst(int most) {
        return new PossibleEvents(first, event, Math.min(sets, most), ready);
    }

    /**
     * The event under a set, ready to be played.
     *
     * @param set number of a shipped set, or {@link Playing#DEFAULT_SET}
     * @return the event, the physics and the lines under it
     */
    public Playable under(int set) {
        return under(event, set);
    }

    /**
     * Another event under a set, as for {@link #with}.
     *
     * @param other the other event, as a scenario has it
     * @param set number of a shipped set, or {@link Playing#DEFAULT_SET}
     * @return the other event under the set, with this one's physics and lines
     */
    public Playable under(Event other, int set) {
        ValueSet values = ValueSets.shipped(set);
        Playable shared = ready.computeIfAbsent(set, number -> Playable.of(PlayModel.under(first, values)));
        return shared.with(new PlayModel(other, values, shared.physics().model()).event());
    }
}
