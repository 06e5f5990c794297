package lanetide.squads.recondition;

import java.util.List;
import java.util.Optional;

/**
 * When to oil again.
 *
 * @param plan how it was studied
 * @param sets sets of values that the playings went through in turn; 1 if all values were as usual
 * @param intervals the best interval on every basis
 * @param leastRegret what is regretted least if lanes are oiled all in one go; empty if all values were as usual
 * @param curve the curve behind them, by games
 * @param oilOver strip and oil against oiling over
 * @param asPlanned the event's own oilings and what they cost
 * @param best the cheapest oilings of the event
 * @param pairAllAtOnce cost of a pair's share of oiling all lanes in one go
 * @param pairAlone cost of oiling a pair alone
 */
public record ReoilResult(
        ReoilPlan plan,
        int sets,
        List<Interval> intervals,
        Optional<LeastRegret> leastRegret,
        List<CurvePoint> curve,
        OilOver oilOver,
        EventOiling asPlanned,
        EventOiling best,
        double pairAllAtOnce,
        double pairAlone) {
    /** Copies the lists. */
    public ReoilResult {
        intervals = List.copyOf(intervals);
        curve = List.copyOf(curve);
    }

    /**
     * The interval on a basis.
     *
     * @param basis the basis
     * @return its interval
     */
    public Interval interval(Basis basis) {
        return intervals.stream()
                .filter(interval -> interval.basis() == basis)
                .findFirst()
                .orElseThrow();
    }
}
