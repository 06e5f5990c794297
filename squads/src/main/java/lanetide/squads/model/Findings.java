package lanetide.squads.model;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.TapeTaken;

/**
 * What measurements have told of a centre.
 *
 * @param sets sets of values that its measurements leave, equally likely, in an order in which the first few are spread
 *     like all; none where nothing was fitted, and then those that ship are used
 * @param laid what tapes read on its lanes when they were freshly oiled
 * @param worn what tapes read on them during the event, after some games; lanes go on from there
 */
public record Findings(List<ValueSet> sets, List<TapeTaken> laid, List<TapeTaken> worn) {
    /** Nothing was measured. */
    public static final Findings NONE = new Findings(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Findings {
        sets = List.copyOf(sets);
        laid = List.copyOf(laid);
        worn = List.copyOf(worn);
    }

    /**
     * The same with other sets, and with tapes taken during the event.
     *
     * @param others sets of values
     * @param during what tapes read after some games
     * @return the findings
     */
    public Findings with(List<ValueSet> others, List<TapeTaken> during) {
        return new Findings(others, laid, during);
    }

    /**
     * The same with further tapes on fresh oil; a reading that is known already does not count twice.
     *
     * @param more what they read
     * @return the findings
     */
    public Findings withLaid(List<TapeTaken> more) {
        List<TapeTaken> all = new ArrayList<>(laid);
        more.stream()
                .filter(tape -> all.stream().noneMatch(other -> other.reads(tape)))
                .forEach(all::add);
        return new Findings(sets, all, worn);
    }

    /**
     * What was read on a lane during the event.
     *
     * @param lane its number
     * @return readings after some games; none if nobody took any
     */
    public List<TapeTaken> wornOn(int lane) {
        return worn.stream().filter(tape -> tape.lane() == lane).toList();
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
