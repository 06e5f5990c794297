package lanetide.squads.rotation.design;

import java.util.Optional;

/**
 * Looks for sets of places on a ring in which every distance occurs equally often (cyclic difference sets), in an order
 * in which no two neighbours lie the same distance apart. Depth first, and given up after so many steps.
 */
final class DifferenceSets {
    private static final int MAX_STEPS = 200_000;

    private final int places;
    private final int[] chosen;
    private final int timesEach;
    private final int[] times;
    private final boolean[] isTaken;
    private final boolean[] isStepUsed;
    private int steps;

    private DifferenceSets(int places, int size) {
        this.places = places;
        this.chosen = new int[size];
        this.timesEach = size * (size - 1) / (places - 1);
        this.times = new int[places];
        this.isTaken = new boolean[places];
        this.isStepUsed = new boolean[places];
    }

    /** Such a set of this size that starts at place 0; empty if there is none, or none is found in time. */
    static Optional<int[]> find(int places, int size) {
        if (size < 3 || size >= places || size * (size - 1) % (places - 1) != 0) {
            return Optional.empty();
        }
        DifferenceSets search = new DifferenceSets(places, size);
        search.isTaken[0] = true;
        return search.extend(1) ? Optional.of(search.chosen) : Optional.empty();
    }

    private boolean extend(int size) {
        if (size == chosen.length) {
            return true;
        }
        for (int place = 1; place < places && steps < MAX_STEPS; place++) {
            steps++;
            int step = Math.floorMod(place - chosen[size - 1], places);
            if (isTaken[place] || isStepUsed[step]) {
                continue;
            }
            mark(place, step, size, 1);
            if (isWithinBounds(place, size) && extend(size + 1)) {
                return true;
            }
            mark(place, step, size, -1);
        }
        return false;
    }

    private void mark(int place, int step, int size, int change) {
        isTaken[place] = change > 0;
        isStepUsed[step] = change > 0;
        chosen[size] = place;
        for (int i = 0; i < size; i++) {
            times[Math.floorMod(place - chosen[i], places)] += change;
            times[Math.floorMod(chosen[i] - place, places)] += change;
        }
    }

    private boolean isWithinBounds(int place, int size) {
        for (int i = 0; i < size; i++) {
            if (times[Math.floorMod(place - chosen[i], places)] > timesEach
                    || times[Math.floorMod(chosen[i] - place, places)] > timesEach) {
                return false;
            }
        }
        return true;
    }
}
