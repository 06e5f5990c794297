package lanetide.squads.fairness;

import java.util.List;
import java.util.function.ToIntFunction;

/**
 * One way to sort seats.
 *
 * @param ids what the classes are called
 * @param classOf the class of a seat, from 0
 */
record Factor(List<String> ids, ToIntFunction<Seat> classOf) {
    /** How some seats are sorted. */
    Classes classes(Seats seats) {
        return new Classes(seats.classes(classOf), ids);
    }
}
