package lanetide.squads.play;

import java.util.List;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.PaceOfPlay;

/** The two lanes of a pair. */
record PairLanes(LaneInPlay left, LaneInPlay right) {
    /** Lanes of a pair. */
    static final long LANES = 2;

    /** A centre's pair without oil. */
    static PairLanes bare(LanePair pair, Centre centre, LaneGrid grid) {
        return new PairLanes(bare(pair.left(), centre, grid), bare(pair.right(), centre, grid));
    }

    private static LaneInPlay bare(int lane, Centre centre, LaneGrid grid) {
        return new LaneInPlay(
                lane, grid, centre.topography(lane), centre.findings().wornOn(lane));
    }

    /** The lanes of some pairs. */
    static List<LaneInPlay> all(List<PairLanes> pairs) {
        return pairs.stream().flatMap(pair -> pair.both().stream()).toList();
    }

    /** Lanes from this pair to another, by lane numbers, since pairs of a list need not be neighbours. */
    int apart(PairLanes other) {
        return Math.abs(left.number() - other.left.number());
    }

    /** Time to walk to another pair and to settle there (ms); none to stay. */
    long walkMs(PairLanes to, PaceOfPlay pace) {
        return equals(to) ? 0 : apart(to) * pace.movePerPairMs() / 2 + pace.settleMs();
    }

    List<LaneInPlay> both() {
        return List.of(left, right);
    }
}
