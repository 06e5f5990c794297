package lanetide.cli.scenario.reader;

import lanetide.squads.change.LateStart;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Event;
import lanetide.squads.study.DayClock;

/**
 * When lanes are ready for the next squad: when the one before is done on the mean of playings without oil, and the
 * machines after it; to the next whole minute, as times are written.
 *
 * @param seed master seed of all chance
 */
public record LanesReady(long seed) implements LateStart.Ready {
    private static final long MINUTE_MS = 60_000;

    @Override
    public long ms(Event event, int before) {
        long endMs = DayClock.of(event, seed).squads().get(before).end().meanMs();
        long readyMs =
                endMs + MachinePlan.of(event, event.squads().get(before + 1)).durationMs();
        return -Math.floorDiv(-readyMs, MINUTE_MS) * MINUTE_MS;
    }
}
