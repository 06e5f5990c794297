package lanetide.cli.simulate;

import java.util.OptionalInt;

/**
 * Which lanes a text answer shows one by one.
 *
 * @param all whether it shows every lane
 * @param lane the one it shows, if any
 */
public record LaneChoice(boolean all, OptionalInt lane) {
    /** Whether it shows a lane. */
    boolean shows(int number) {
        return all || (lane.isPresent() && lane.getAsInt() == number);
    }
}
