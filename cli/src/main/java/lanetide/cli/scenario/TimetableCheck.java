package lanetide.cli.scenario;

import java.util.List;
import lanetide.squads.model.Centre;
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
        for (int i = 1; i < squads.size(); i++) {
            if (squads.get(i).startMs() >= squads.get(i - 1).startMs()) {
                check(squads.get(i - 1), drafts.get(i - 1).games(), squads.get(i), drafts.get(i));
            }
        }
    }

    private void check(Squad before, int games, Squad squad, SquadDraft draft) {
        long possibleMs = before.startMs() + estimate.fastestMs(before, games);
        long expectedMs = before.startMs() + estimate.usualMs(before, games);
        long readyMs =
                expectedMs + centre.machines().durationMs(2 * centre.pairs().size(), squad.conditioning());
        if (squad.startMs() < possibleMs) {
            refuse(
                    draft,
                    NoticeCode.SQUAD_OVERLAPS,
                    ", but squad " + before.id() + " cannot be done before " + TimeOfDay.write(possibleMs)
                            + " even if every ball were a strike; a squad must start after the one before it has ended."
                            + " Start at " + TimeOfDay.write(readyMs) + " or later.");
        } else if (squad.startMs() < readyMs) {
            refuse(
                    draft,
                    NoticeCode.SQUAD_MAY_OVERLAP,
                    ", but squad " + before.id() + " will be done about " + TimeOfDay.write(expectedMs)
                            + " and the lanes ready about " + TimeOfDay.write(readyMs)
                            + ": the squad would start late. Start at " + TimeOfDay.write(readyMs) + " or later.");
        }
    }

    private static void refuse(SquadDraft draft, NoticeCode code, String problem) {
        draft.section().get("start").ifPresent(start -> start.refuse(code, problem));
    }
}
