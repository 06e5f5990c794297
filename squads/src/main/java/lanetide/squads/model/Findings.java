package lanetide.squads.model;

import java.util.List;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.TapeTaken;

/**
 * What measurements have told of a centre.
 *
 * @param sets sets of values that its measurements leave, equally likely, in an order in which the first few are spread
 *     like all; none where nothing was fitted, and then those that ship are used
 * @param laid what tapes read on its lanes when they were freshly oiled
 */
public record Findings(List<ValueSet> sets, List<TapeTaken> laid) {
    /** Nothing was measured. */
    public static final Findings NONE = new Findings(List.of(), List.of());

    /** Copies the lists. */
    public Findings {
        sets = List.copyOf(sets);
        laid = List.copyOf(laid);
    }

    /**
     * What was read on a lane.
     *
     * @param lane its number
     * @return readings of its fresh oil; none if nobody took any
     */
    public List<TapeTaken> laidOn(int lane) {
        return laid.stream().filter(tape -> tape.lane() == lane).toList();
    }
}
