package lanetide.cli.scenario.lanes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.LanePair;

/** Reads which pairs of lanes are in use, which of a range are closed, and which of those in use are kept spare. */
public final class PairsReader {
    private final Section section;
    private final Set<LanePair> closed;

    private PairsReader(Section section) {
        this.section = section;
        this.closed = listed(CentreKeys.CLOSED);
    }

    /** The pairs; what is wrong has a notice. */
    public static Lanes read(Section centre) {
        PairsReader reader = new PairsReader(centre);
        List<LanePair> pairs = reader.inUse();
        return new Lanes(pairs, reader.closed, reader.spare(pairs));
    }

    private List<LanePair> inUse() {
        Optional<Value> listed = section.value(CentreKeys.PAIRS);
        if (listed.isEmpty()) {
            section.require(CentreKeys.LANES);
            return section.value(CentreKeys.LANES).map(this::ofRange).orElse(List.of());
        }
        if (section.has(CentreKeys.LANES)) {
            conflict(
                    listed.get(),
                    "Both `lanes` and `pairs` are given; the lanes must come from one of the two. Remove the other.");
            return List.of();
        }
        section.value(CentreKeys.CLOSED)
                .ifPresent(value -> conflict(
                        value,
                        "`closed` goes with `lanes`, but `pairs` is given; a closed pair must be left out of `pairs`."
                                + " Remove `closed`."));
        return List.copyOf(PairList.read(listed.get()));
    }

    private static void conflict(Value value, String message) {
        value.say(NoticeCode.CONFLICTING_KEYS, "", message);
    }

    private List<LanePair> ofRange(Value lanes) {
        List<LanePair> pairs = new ArrayList<>(LaneRange.read(lanes));
        if (pairs.isEmpty()) {
            return pairs;
        }
        for (LanePair pair : closed) {
            if (!pairs.remove(pair)) {
                lanes.refuse(
                        NoticeCode.UNKNOWN_PAIR,
                        ", and the closed pair " + pair.id() + " is not among its pairs (" + Lanes.named(pairs)
                                + "). Correct the range or the closed pair.");
            }
        }
        if (pairs.isEmpty()) {
            lanes.refuse(NoticeCode.BAD_LANES, ", and all its pairs are closed; at least one must be in use.");
        }
        return pairs;
    }

    private Set<LanePair> spare(List<LanePair> inUse) {
        Set<LanePair> spare = listed(CentreKeys.SPARE);
        if (!inUse.isEmpty()) {
            section.value(CentreKeys.SPARE).ifPresent(value -> checkSpare(value, spare, inUse));
        }
        return spare;
    }

    private void checkSpare(Value value, Set<LanePair> spare, List<LanePair> inUse) {
        for (LanePair pair : spare) {
            if (closed.contains(pair)) {
                value.say(
                        NoticeCode.PAIR_NOT_IN_USE,
                        pair.id(),
                        value.path() + " names " + pair.id()
                                + ", but that pair is closed; a spare pair must be in use. Remove it from one of the two.");
            } else if (!inUse.contains(pair)) {
                value.say(
                        NoticeCode.UNKNOWN_PAIR,
                        pair.id(),
                        value.path() + " names " + pair.id() + ", which is not a pair of the centre. Its pairs are "
                                + Lanes.named(inUse) + ".");
            }
        }
        if (spare.containsAll(inUse)) {
            value.say(
                    NoticeCode.BAD_LANES,
                    "",
                    value.path() + " keeps all pairs spare; at least one must have a group. Leave one out.");
        }
    }

    private Set<LanePair> listed(Key<Void> key) {
        return section.value(key).map(PairList::read).orElse(Set.of());
    }
}
