package lanetide.cli.scenario.reader;

import java.util.List;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;

/** Looks, before anything is played, whether each squad can be done before the next one starts at all. */
final class TimetableCheck {
    private final PlayEstimate estimate;
    private final Centre centre;

    TimetableCheck(PaceOfPlay pace, Centre centre) {
        this.estimate = new PlayEstimate(pace);
        this.centre = centre;
    }

    void check(List<SquadDraft> drafts, List<Squad> squads) {
        for (int i = 1; i < squads.size(); i++) {
            if (squads.get(i).startMs() >= squads.get(i - 1).startMs()) {
                check(squads.get(i - 1), drafts.get(i - 1).games().orElseThrow(), squads.get(i), drafts.get(i));
            }
        }
        if (!squads.isEmpty()) {
            checkFirst(squads.get(0), drafts.get(0));
        }
    }

    private void check(Squad before, int games, Squad squad, SquadDraft draft) {
        long possibleMs = before.startMs() + estimate.fastestMs(before, games);
        if (squad.startMs() < possibleMs) {
            draft.section()
                    .refuse(
                            EventKeys.START,
                            NoticeCode.SQUAD_OVERLAPS,
                            ", but squad " + before.id() + " cannot be done before " + TimeOfDay.write(possibleMs)
                                    + " even if every ball were a strike; a squad must start after the one before it"
                                    + " has ended. Start at " + TimeOfDay.write(possibleMs) + " or later, or give"
                                    + " squad " + before.id() + " fewer bowlers a pair, fewer games or a shorter"
                                    + " break.");
        }
    }

    private void checkFirst(Squad squad, SquadDraft draft) {
        long readyMs = machinesMs(squad);
        if (squad.startMs() < readyMs) {
            draft.section()
                    .refuse(
                            EventKeys.START,
                            NoticeCode.LANES_NOT_READY,
                            ", but machines that begin at midnight are done at " + TimeOfDay.write(readyMs)
                                    + ": the squad would start late. Start later, or on \"day 2\".");
        }
    }

    private long machinesMs(Squad squad) {
        LaneMachines all = centre.machines();
        int machines = squad.arrangements().machines().orElse(all.combined());
        return MachinePlan.of(all.only(machines), centre.laneNumbers(), squad.conditioning())
                .durationMs();
    }
}
