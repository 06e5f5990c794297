package lanetide.cli.scenario.lanes;

import java.util.Collection;
import java.util.List;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.LanePair;

/** Reads the lanes that a squad has to itself. */
public final class OwnLanes {
    private OwnLanes() {}

    /**
     * The lanes of a squad.
     *
     * @param squad its block
     * @param all the lanes of the centre
     * @return those that it names, else all; none, with notices, if they are wrong
     */
    public static Lanes read(Section squad, Lanes all) {
        if (!squad.has(EventKeys.SQUAD_LANES) || all.pairs().isEmpty()) {
            return all;
        }
        Value value = squad.value(EventKeys.SQUAD_LANES).orElseThrow();
        Collection<LanePair> named = value.isScalar() ? LaneRange.read(value) : PairList.read(value);
        named.forEach(pair -> sayIfNotInUse(pair, value, all));
        List<LanePair> pairs = all.pairs().stream().filter(named::contains).toList();
        if (!pairs.isEmpty() && all.spare().containsAll(pairs)) {
            value.say(
                    NoticeCode.BAD_LANES,
                    value.plain(),
                    value.path() + " names spare pairs alone; at least one must have a group. Name more.");
        }
        return new Lanes(pairs, all.closed(), all.spare());
    }

    private static void sayIfNotInUse(LanePair pair, Value value, Lanes all) {
        if (all.closed().contains(pair)) {
            value.say(
                    NoticeCode.PAIR_NOT_IN_USE,
                    pair.id(),
                    value.path() + " names " + pair.id()
                            + ", but that pair is closed; a squad must have pairs in use. Leave it out.");
        } else if (!all.pairs().contains(pair)) {
            value.say(
                    NoticeCode.UNKNOWN_PAIR,
                    pair.id(),
                    value.path() + " names " + pair.id() + ", which is not a pair of the centre. Its pairs are "
                            + Lanes.named(all.pairs()) + ".");
        }
    }
}
