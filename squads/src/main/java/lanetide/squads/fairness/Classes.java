package lanetide.squads.fairness;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How seats or bowlers are sorted.
 *
 * @param of the class of each, from 0
 * @param ids what the classes are called
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Classes(int[] of, List<String> ids) {
    Classes {
        ids = List.copyOf(ids);
    }

    int count() {
        return ids.size();
    }

    int size(int index) {
        return (int) IntStream.of(of).filter(c -> c == index).count();
    }
}
