package lanetide.cli.scenario.reader;

import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.squads.change.LateStart;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.machines.MachineTours;
import lanetide.squads.model.Event;
import lanetide.squads.model.OilTime;
import lanetide.squads.study.DayClock;

/**
 * When lanes are ready for a squad: when those before it that have lanes of it are done on the mean of playings without
 * oil, the machines after them, and its oil has rested; to the next whole minute, as times are written. An event is
 * played once, however many of its squads are asked for in turn. One object serves one look at a day.
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
    public long ms(Event event, int squad) {
        OilTime oiling = event.squads().get(squad).arrangements().oiling();
        long workMs = MachinePlan.of(event, squad).durationMs();
        long readyMs =
                Math.max(endMs(event, squad), workMs == 0 ? 0 : oiling.fromMs().orElse(0))
                        + workMs
                        + (workMs == 0 ? 0 : oiling.restMs());
        return -Math.floorDiv(-Math.max(readyMs, queuedMs(event, squad)), MINUTE_MS) * MINUTE_MS;
    }

    /** When the last squad is done that has lanes of a squad before it. */
    private long endMs(Event event, int squad) {
        return IntStream.range(0, squad)
                .filter(before -> event.shareLanes(before, squad))
                .mapToLong(before -> clock(event).squads().get(before).end().meanMs())
                .max()
                .orElse(0);
    }

    /** When machines that work for squads on other lanes first have done those of a squad. */
    private static long queuedMs(Event event, int squad) {
        return event.sharesAllLanes()
                ? 0
                : MachineTours.of(event).stream()
                        .filter(tour -> tour.squad() == squad)
                        .mapToLong(MachineTours.Tour::readyMs)
                        .findFirst()
                        .orElse(0);
    }
}
