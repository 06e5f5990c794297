package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.squads.change.LateStart;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Event;
import lanetide.squads.study.DayClock;

/**
 * When lanes are ready for the next squad: when the one before is done on the mean of playings without oil, and the
 * machines after it; to the next whole minute, as times are written. An event is played once, however many of its
 * squads are asked for in turn. One object serves one look at a day.
 */
public final class LanesReady implements LateStart.Ready {
    private static final long MINUTE_MS = 60_000;

    private final long seed;
    private Optional<Played> last = Optional.empty();

    /** An event and its clock. */
    private record Played(Event event, DayClock clock) {}

    /**
     * By the clock of a seed.
     *
     * @param seed master seed of all chance
     */
    public LanesReady(long seed) {
        this.seed = seed;
    }

    /** The clock of an event. */
    DayClock clock(Event event) {
        Played played = last.filter(known -> known.event().equals(event))
                .orElseGet(() -> new Played(event, DayClock.of(event, seed)));
        last = Optional.of(played);
        return played.clock();
    }

    @Override
    public long ms(Event event, int before) {
        long endMs = clock(event).squads().get(before).end().meanMs();
        long readyMs =
                endMs + MachinePlan.of(event, event.squads().get(before + 1)).durationMs();
        return -Math.floorDiv(-readyMs, MINUTE_MS) * MINUTE_MS;
    }
}
