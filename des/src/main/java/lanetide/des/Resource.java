package lanetide.des;

import java.util.ArrayDeque;
import java.util.Objects;
import java.util.Queue;

/**
 * Units of which there are few, such as lane machines, and the queue before them: first come, first served. Whoever
 * gets a unit keeps it until it is released.
 *
 * <p>Actions run one at a time and never within each other: what is asked for or released within one of them is granted
 * when that has returned, so that nothing nests, however long the chain. An action that throws ends the call and its
 * exception reaches the caller; who still waits is served at the next change.
 */
public final class Resource {

    private final String name;
    private final int units;
    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private int free;
    private boolean granting;

    /**
     * A resource nobody uses yet.
     *
     * @param name what it is called in error messages
     * @param units how many can be held at a time, at least 1
     * @throws IllegalArgumentException if {@code units < 1}
     */
    public Resource(String name, int units) {
        if (units < 1) {
            throw new IllegalArgumentException("units of '" + name + "' is " + units + ", but must be at least 1");
        }
        this.name = Objects.requireNonNull(name, "name");
        this.units = units;
        this.free = units;
    }

    /**
     * Asks for a unit.
     *
     * @param whenGranted run when the unit is there: before this method returns if one is free, else as soon as
     *     everybody who asked before has been served and a unit is released
     */
    public void acquire(Runnable whenGranted) {
        waiting.add(Objects.requireNonNull(whenGranted, "whenGranted"));
        grant();
    }

    /**
     * Gives a unit back, which goes to the first who waits.
     *
     * @throws IllegalStateException if no unit is held
     */
    public void release() {
        if (free == units) {
            throw new IllegalStateException(
                    "'" + name + "' has all its units (" + units + "), so that none can be released");
        }
        free++;
        grant();
    }

    private void grant() {
        if (granting) {
            return;
        }
        granting = true;
        try {
            while (free > 0 && !waiting.isEmpty()) {
                free--;
                waiting.remove().run();
            }
        } finally {
            granting = false;
        }
    }
}
