package lanetide.squads.play;

import java.util.List;

/** The two lanes of a pair. */
record PairLanes(LaneInPlay left, LaneInPlay right) {
    List<LaneInPlay> both() {
        return List.of(left, right);
    }
}
