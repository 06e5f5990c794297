package lanetide.squads.fairness;

import java.util.List;
import java.util.stream.IntStream;

/** How seats or bowlers are sorted. */
final class Classes {
    private final int[] of;
    private final List<String> ids;

    /** The class of each, from 0, and what the classes are called. */
    Classes(int[] of, List<String> ids) {
        this.of = of;
        this.ids = List.copyOf(ids);
    }

    int[] of() {
        return of;
    }

    List<String> ids() {
        return ids;
    }

    int count() {
        return ids.size();
    }

    int size(int index) {
        return (int) IntStream.of(of).filter(c -> c == index).count();
    }
}
