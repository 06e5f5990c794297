package lanetide.squads.machines;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;

/** When the lane machines are at work by the plan, squad by squad; they do the lanes of one squad after another's. */
public final class MachineTours {
    private MachineTours() {}

    /**
     * The work before one squad.
     *
     * @param squad the squad's place in the event
     * @param dueMs when it is to begin (ms from midnight before the first day; below 0 the evening before)
     * @param beginMs when it begins: later than that if the machines are still at work for another squad then
     * @param doneMs when its last lane is done
     * @param readyMs when its oil has lain long enough
     */
    public record Tour(int squad, long dueMs, long beginMs, long doneMs, long readyMs) {}

    /**
     * All work of an event, as if no squad were late.
     *
     * @param event the event
     * @return in the order in which the machines do it, without squads whose lanes are left as they are
     */
    public static List<Tour> of(Event event) {
        List<Integer> order = IntStream.range(0, event.squads().size())
                .filter(s -> event.squads().get(s).conditioning() != Conditioning.NONE)
                .boxed()
                .sorted(Comparator.comparingLong(s -> dueMs(event, s)))
                .toList();
        long[] freeMs = {Long.MIN_VALUE};
        return order.stream()
                .map(s -> {
                    long beginMs = Math.max(freeMs[0], dueMs(event, s));
                    freeMs[0] = beginMs + MachinePlan.of(event, s).durationMs();
                    long restMs = event.squads().get(s).arrangements().oiling().restMs();
                    return new Tour(s, dueMs(event, s), beginMs, freeMs[0], freeMs[0] + restMs);
                })
                .toList();
    }

    private static long dueMs(Event event, int squad) {
        Squad of = event.squads().get(squad);
        return of.arrangements()
                .oiling()
                .beginMs(of.startMs(), MachinePlan.of(event, squad).durationMs());
    }
}
