package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.OilTime;
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
            int squad = i;
            SquadDraft.lastBefore(drafts, i).map(drafts::indexOf).ifPresent(before -> {
                if (squads.get(squad).startMs() >= squads.get(before).startMs()) {
                    check(
                            squads.get(before),
                            drafts.get(before).games().orElseThrow(),
                            squads.get(squad),
                            drafts.get(squad));
                }
            });
        }
        for (int i = 0; i < squads.size(); i++) {
            checkOiling(squads.get(i), drafts.get(i));
            if (SquadDraft.lastBefore(drafts, i).isEmpty()) {
                checkFirst(squads.get(i), drafts.get(i));
            }
        }
    }

    private void checkOiling(Squad squad, SquadDraft draft) {
        Section section = draft.section();
        OilTime oiling = squad.arrangements().oiling();
        if (squad.conditioning() == Conditioning.NONE) {
            for (Key<?> key : List.of(EventKeys.OIL_AT, EventKeys.OIL_REST)) {
                section.refuse(
                        key,
                        NoticeCode.CONFLICTING_KEYS,
                        ", but nothing is oiled before squad " + squad.id() + ". Write `oil: fresh` or `oil: over`, or"
                                + " remove `" + key.name() + "`.");
            }
        } else if (oiling.fromMs().orElse(0) >= squad.startMs() && section.has(EventKeys.OIL_AT)) {
            section.refuse(
                    EventKeys.OIL_AT,
                    NoticeCode.OUT_OF_RANGE,
                    ", but practice starts at " + TimeOfDay.write(squad.startMs())
                            + "; the machines must begin before that. Correct the time, or write \"day 2\" for the next"
                            + " day's start.");
        } else if (section.has(EventKeys.OIL_AT)) {
            long doneMs = oiling.fromMs().orElseThrow() + machinesMs(squad, draft);
            long readyMs = doneMs + oiling.restMs();
            if (readyMs > squad.startMs()) {
                section.refuse(
                        EventKeys.OIL_AT,
                        NoticeCode.LANES_NOT_READY,
                        ", but then the machines are done at " + TimeOfDay.write(doneMs) + rested(oiling, readyMs)
                                + ", after practice is to start at " + TimeOfDay.write(squad.startMs()) + ": squad "
                                + squad.id() + " would start late. Oil earlier, or start later.");
            }
        }
    }

    private static String rested(OilTime oiling, long readyMs) {
        return oiling.restMs() == 0 ? "" : " and the oil has lain long enough at " + TimeOfDay.write(readyMs);
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
        long readyMs = machinesMs(squad, draft) + squad.arrangements().oiling().restMs();
        if (squad.startMs() < readyMs && !draft.section().has(EventKeys.OIL_AT)) {
            draft.section()
                    .refuse(
                            EventKeys.START,
                            NoticeCode.LANES_NOT_READY,
                            ", but machines that begin at midnight are done"
                                    + (squad.arrangements().oiling().restMs() == 0 ? "" : " and the oil has rested")
                                    + " at " + TimeOfDay.write(readyMs)
                                    + ": the squad would start late. Start later, or on \"day 2\".");
        }
    }

    private long machinesMs(Squad squad, SquadDraft draft) {
        LaneMachines all = centre.machines();
        int machines = squad.arrangements().machines().orElse(all.combined());
        List<Integer> lanes = draft.lanes().pairs().stream()
                .flatMap(pair -> Stream.of(pair.left(), pair.right()))
                .sorted()
                .toList();
        return MachinePlan.of(all.only(machines), lanes, squad.conditioning()).durationMs();
    }
}
