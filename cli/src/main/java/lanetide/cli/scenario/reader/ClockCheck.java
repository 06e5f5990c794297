package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.change.Change;
import lanetide.squads.change.LateStart;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.machines.MachineTours;
import lanetide.squads.model.Break;
import lanetide.squads.model.Event;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.OilTime;
import lanetide.squads.model.Squad;
import lanetide.squads.study.DayClock;

/**
 * Looks by the clock of an event whether squads start and end, break and are joined when their director plans it.
 *
 * @param event the event
 * @param seed master seed of all chance
 * @param drafts its squads as the file states them
 * @param closes the closing hour; empty if none is set
 */
record ClockCheck(Event event, long seed, List<SquadDraft> drafts, Optional<Closing> closes) {
    private static final long MINUTE_MS = 60_000;

    /** Squads never take so many times the shortest time in which they can be done. */
    private static final double SURELY = 4;

    /**
     * A closing hour.
     *
     * @param value where it stands
     * @param hourMs the hour (ms from midnight)
     */
    record Closing(Value value, long hourMs) {}

    /**
     * Looks at it.
     *
     * @return the clock; empty if the event needs none to be looked at
     */
    Optional<DayClock> check() {
        checkMachines();
        return isNeeded() ? Optional.of(checkByClock()) : Optional.empty();
    }

    private DayClock checkByClock() {
        LanesReady ready = new LanesReady(seed);
        DayClock clock = ready.clock(event);
        Map<String, Change.Start> late = LateStart.waiting(event, ready).starts().stream()
                .collect(Collectors.toMap(Change.Start::squad, start -> start));
        for (int i = 0; i < drafts.size(); i++) {
            Squad squad = event.squads().get(i);
            long endMs = clock.squads().get(i).end().meanMs();
            if (late.containsKey(squad.id())) {
                late(i, late.get(squad.id()), clock);
            }
            checkOilTime(i, clock);
            checkBreaks(squad, drafts.get(i), endMs);
            checkArrivals(squad, drafts.get(i), endMs);
            checkClosing(squad, endMs);
        }
        return clock;
    }

    /** Whether there is anything that the clock has to tell; most days have time enough between squads. */
    private boolean isNeeded() {
        if (closes.isPresent() || !event.incidents().equals(Incidents.NONE)) {
            return true;
        }
        PlayEstimate estimate = new PlayEstimate(event.pace());
        for (int i = 0; i < event.squads().size(); i++) {
            Squad squad = event.squads().get(i);
            boolean isArranged = !squad.arrangements().breaks().isEmpty()
                    || !squad.arrangements().changes().isEmpty()
                    || !squad.arrangements().oiling().equals(OilTime.LAST_MINUTE);
            int at = i;
            boolean waits = IntStream.range(0, i)
                    .filter(before -> event.shareLanes(before, at))
                    .anyMatch(before -> mayWait(before, at, estimate));
            if (isArranged || waits) {
                return true;
            }
        }
        return false;
    }

    private boolean mayWait(int earlier, int squad, PlayEstimate estimate) {
        Squad before = event.squads().get(earlier);
        long surelyMs = before.startMs() + Math.round(SURELY * estimate.fastestMs(before, event.games(earlier)));
        Squad next = event.squads().get(squad);
        return next.startMs() < surelyMs + MachinePlan.of(event, squad).durationMs();
    }

    /** Machines that are still at work for a squad on other lanes. */
    private void checkMachines() {
        List<MachineTours.Tour> tours = MachineTours.of(event);
        for (int i = 1; i < tours.size(); i++) {
            MachineTours.Tour tour = tours.get(i);
            MachineTours.Tour before = tours.get(i - 1);
            if (tour.beginMs() > tour.dueMs() && !event.shareLanes(before.squad(), tour.squad())) {
                Section section = drafts.get(tour.squad()).section();
                String advice = " Oil for one of the two earlier with `oilAt`, or start it later.";
                section.refuse(
                        section.has(EventKeys.OIL_AT) ? EventKeys.OIL_AT : EventKeys.START,
                        NoticeCode.MACHINES_AT_WORK,
                        ", so that the lane machines would have to begin at " + TimeOfDay.write(tour.dueMs())
                                + ", but they are at work for squad "
                                + event.squads().get(before.squad()).id() + " until "
                                + TimeOfDay.write(before.doneMs())
                                + (tour.readyMs()
                                                > event.squads()
                                                        .get(tour.squad())
                                                        .startMs()
                                        ? ": the squad would start late."
                                        : ".")
                                + advice);
            }
        }
    }

    /** A time of oiling at which those before are still there. */
    private void checkOilTime(int at, DayClock clock) {
        long fromMs = event.squads().get(at).arrangements().oiling().fromMs().orElse(Long.MAX_VALUE);
        IntStream.range(0, at)
                .filter(before -> event.shareLanes(before, at))
                .filter(before -> clock.squads().get(before).end().meanMs() > fromMs)
                .max()
                .ifPresent(before -> drafts.get(at)
                        .section()
                        .refuse(
                                EventKeys.OIL_AT,
                                NoticeCode.SQUAD_MAY_OVERLAP,
                                ", but squad " + event.squads().get(before).id() + " will be done about "
                                        + TimeOfDay.write(
                                                clock.squads().get(before).end().meanMs())
                                        + ": the machines would begin then. Choose a later time."));
    }

    private void late(int at, Change.Start start, DayClock clock) {
        IntStream.range(0, at)
                .filter(before -> event.shareLanes(before, at))
                .max()
                .ifPresent(before -> late(at, before, start, clock));
    }

    private void late(int at, int earlier, Change.Start start, DayClock clock) {
        Squad before = event.squads().get(earlier);
        drafts.get(at)
                .section()
                .refuse(
                        EventKeys.START,
                        NoticeCode.SQUAD_MAY_OVERLAP,
                        ", but squad " + before.id() + " will be done about "
                                + TimeOfDay.write(
                                        clock.squads().get(earlier).end().meanMs())
                                + " and the lanes ready about " + TimeOfDay.write(start.nowMs())
                                + ": the squad would start late. Start at " + TimeOfDay.write(start.nowMs())
                                + " or later, or give squad " + before.id()
                                + " fewer bowlers a pair, fewer games or a shorter break.");
    }

    /** The games without the breaks, so that a break is measured against what it interrupts. */
    private void checkBreaks(Squad squad, SquadDraft draft, long endMs) {
        long breaksMs = squad.arrangements().breaks().stream()
                .mapToLong(Break::lengthMs)
                .sum();
        long gamesMs = endMs - squad.startMs() - squad.practiceMs() - breaksMs;
        List<Value> items = draft.section().list(EventKeys.BREAKS);
        for (int i = 0; i < items.size(); i++) {
            Break pause = squad.arrangements().breaks().get(i);
            if (pause.lengthMs() > gamesMs) {
                items.get(i)
                        .child(EventKeys.LENGTH)
                        .ifPresent(
                                value -> value.refuse(
                                        NoticeCode.BREAK_TOO_LONG,
                                        ", longer than all games of squad " + squad.id() + " together (about "
                                                + minutes(gamesMs)
                                                + " min); a break must be shorter. Make two squads of it, or shorten the break."));
            } else if (pause.notBeforeMs() > endMs) {
                items.get(i)
                        .child(EventKeys.AT)
                        .ifPresent(value -> value.refuse(
                                NoticeCode.BREAK_AFTER_END,
                                ", but squad " + squad.id() + " will be done about " + TimeOfDay.write(endMs)
                                        + ": nobody would rest. Choose an earlier time."));
            }
        }
    }

    private static void checkArrivals(Squad squad, SquadDraft draft, long endMs) {
        for (LineUpChange change : squad.arrangements().changes()) {
            if (change instanceof LineUpChange.LateArrival late && late.arrivesMs() > endMs) {
                draft.section()
                        .value()
                        .say(
                                NoticeCode.ARRIVES_AFTER_END,
                                late.bowler(),
                                "Bowler " + late.bowler() + " comes at " + TimeOfDay.write(late.arrivesMs())
                                        + ", but squad " + squad.id() + " will be done about " + TimeOfDay.write(endMs)
                                        + ": he would bowl no game. Correct the time.");
            }
        }
    }

    /** A closing hour at or before a squad's start is one of the next day. */
    private void checkClosing(Squad squad, long endMs) {
        closes.ifPresent(closing -> {
            long openMs = Math.floorMod(closing.hourMs() - squad.startMs() - 1, TimeOfDay.DAY_MS) + 1;
            long closingMs = squad.startMs() + openMs;
            if (endMs > closingMs) {
                closing.value()
                        .refuse(
                                NoticeCode.ENDS_AFTER_CLOSING,
                                ", but squad " + squad.id() + " will be done about " + TimeOfDay.write(endMs) + ", "
                                        + minutes(endMs - closingMs)
                                        + " min after the centre closes. Start it earlier, or give it or the squads before it"
                                        + " fewer bowlers a pair, fewer games or a shorter break.");
            }
        });
    }

    private static long minutes(long timeMs) {
        return (timeMs + MINUTE_MS / 2) / MINUTE_MS;
    }
}
