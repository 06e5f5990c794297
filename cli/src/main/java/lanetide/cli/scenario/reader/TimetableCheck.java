package lanetide.cli.scenario.reader;

import java.util.List;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Break;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;

/** Looks whether each squad can be done before the next one starts. */
final class TimetableCheck {
    private final PlayEstimate estimate;
    private final Centre centre;

    TimetableCheck(PaceOfPlay pace, Centre centre) {
        this.estimate = new PlayEstimate(pace);
        this.centre = centre;
    }

    void check(List<SquadDraft> drafts, List<Squad> squads) {
        for (int i = 0; i < squads.size(); i++) {
            checkBreaks(squads.get(i), drafts.get(i));
            checkArrivals(squads.get(i), drafts.get(i));
            if (i > 0 && squads.get(i).startMs() >= squads.get(i - 1).startMs()) {
                check(squads.get(i - 1), drafts.get(i - 1).games().orElseThrow(), squads.get(i), drafts.get(i));
            }
        }
        if (!squads.isEmpty()) {
            checkFirst(squads.get(0), drafts.get(0));
        }
    }

    private void check(Squad before, int games, Squad squad, SquadDraft draft) {
        long possibleMs = before.startMs() + estimate.fastestMs(before, games);
        long expectedMs = before.startMs() + estimate.usualMs(before, games);
        long readyMs = expectedMs + machinesMs(squad);
        if (squad.startMs() < possibleMs) {
            refuse(
                    draft,
                    NoticeCode.SQUAD_OVERLAPS,
                    ", but squad " + before.id() + " cannot be done before " + TimeOfDay.write(possibleMs)
                            + " even if every ball were a strike; a squad must start after the one before it has ended."
                            + " Start at " + TimeOfDay.write(readyMs) + " or later" + orElse(before) + ".");
        } else if (squad.startMs() < readyMs) {
            refuse(
                    draft,
                    NoticeCode.SQUAD_MAY_OVERLAP,
                    ", but squad " + before.id() + " will be done about " + TimeOfDay.write(expectedMs)
                            + " and the lanes ready about " + TimeOfDay.write(readyMs)
                            + ": the squad would start late. Start at " + TimeOfDay.write(readyMs) + " or later"
                            + orElse(before) + ".");
        }
    }

    /** What else would mend an overrun. */
    private static String orElse(Squad before) {
        return ", or give squad " + before.id() + " fewer bowlers a pair, fewer games or a shorter break";
    }

    private long machinesMs(Squad squad) {
        LaneMachines all = centre.machines();
        int machines = squad.arrangements().machines().orElse(all.combined());
        return MachinePlan.of(all.only(machines), centre.laneNumbers(), squad.conditioning())
                .durationMs();
    }

    private void checkFirst(Squad squad, SquadDraft draft) {
        long readyMs = machinesMs(squad);
        if (squad.startMs() < readyMs) {
            refuse(
                    draft,
                    NoticeCode.LANES_NOT_READY,
                    ", but machines that begin at midnight are done at " + TimeOfDay.write(readyMs)
                            + ": the squad would start late. Start later, or on \"day 2\".");
        }
    }

    /** The games without the breaks, so that a break is measured against what it interrupts. */
    private void checkBreaks(Squad squad, SquadDraft draft) {
        long breaksMs = squad.arrangements().breaks().stream()
                .mapToLong(Break::lengthMs)
                .sum();
        long gamesMs = estimate.usualMs(squad, draft.games().orElseThrow()) - squad.practiceMs() - breaksMs;
        List<Value> items = draft.section().list(EventKeys.BREAKS);
        for (int i = 0; i < items.size(); i++) {
            Break pause = squad.arrangements().breaks().get(i);
            long endMs = squad.startMs() + squad.practiceMs() + gamesMs;
            if (pause.lengthMs() > gamesMs) {
                items.get(i)
                        .child(EventKeys.LENGTH)
                        .ifPresent(
                                value -> value.refuse(
                                        NoticeCode.BREAK_TOO_LONG,
                                        ", longer than all games of squad " + squad.id() + " together (about "
                                                + (gamesMs + 30_000) / 60_000
                                                + " min); a break must be shorter. Make two squads of it, or shorten the break."));
            } else if (pause.notBeforeMs() > endMs + breaksMs) {
                items.get(i)
                        .child(EventKeys.AT)
                        .ifPresent(value -> value.refuse(
                                NoticeCode.BREAK_AFTER_END,
                                ", but squad " + squad.id() + " will be done about " + TimeOfDay.write(endMs)
                                        + ": nobody would rest. Choose an earlier time."));
            }
        }
    }

    private void checkArrivals(Squad squad, SquadDraft draft) {
        long endMs = squad.startMs() + estimate.usualMs(squad, draft.games().orElseThrow());
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

    private static void refuse(SquadDraft draft, NoticeCode code, String problem) {
        draft.section().refuse(EventKeys.START, code, problem);
    }
}
