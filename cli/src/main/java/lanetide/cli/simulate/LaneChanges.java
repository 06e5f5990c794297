package lanetide.cli.simulate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.report.Figures;
import lanetide.cli.report.OilUnits;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.StyleWindow;

/**
 * What play does to the lanes, in sentences.
 *
 * @param squads lanes of some squads
 * @param units units of oil
 */
public record LaneChanges(List<SquadLanes> squads, OilUnits units) {
    /** A window that moves less than this has stayed, as far as a bowler could notice (boards). */
    private static final double NOTICED_BOARDS = 1;

    /** The changes, two sentences a squad. */
    public List<String> sentences() {
        return squads.stream().flatMap(squad -> sentences(squad).stream()).toList();
    }

    /** What one squad does to its lanes, in one or two sentences. */
    public List<String> sentences(SquadLanes squad) {
        return squad.kinds().isEmpty() ? List.of(oil(squad)) : List.of(oil(squad), windows(squad));
    }

    /** The squad that leaves the most worn lanes. */
    public SquadLanes mostWorn() {
        return Collections.min(
                squads, Comparator.comparingDouble(squad -> squad.mean(squad.lastGame(), LaneState::headUnitsLow)));
    }

    private String oil(SquadLanes squad) {
        double before = squad.mean(0, LaneState::headUnitsLow);
        double after = squad.mean(squad.lastGame(), LaneState::headUnitsLow);
        return "Squad " + squad.squad() + " finds " + units.film(before) + " " + units.name()
                + " on the most worn board of the heads and leaves " + units.film(after) + " ("
                + Figures.fixed(100 * (before - after) / before, 0) + " % less). Past the end of the pattern lie "
                + Figures.fixed(squad.mean(squad.lastGame(), LaneState::carrydownMl), 2) + " mL a lane.";
    }

    private static String windows(SquadLanes squad) {
        List<String> inward = new ArrayList<>();
        List<String> outward = new ArrayList<>();
        List<String> gone = new ArrayList<>();
        for (SquadLanes.StyleHand kind : squad.kinds()) {
            Optional<StyleWindow.Boards> after = squad.window(squad.lastGame(), kind);
            double move = after.flatMap(last -> squad.window(0, kind).map(first -> last.middle() - first.middle()))
                    .orElse(0.0);
            if (after.isEmpty()) {
                gone.add(kind.words());
            } else if (Math.abs(move) >= NOTICED_BOARDS) {
                (move > 0 ? inward : outward).add(Figures.fixed(Math.abs(move), 1) + " for " + kind.words());
            }
        }
        return "In squad " + squad.squad() + " the exit window " + moves(inward, outward) + "." + width(squad)
                + (gone.isEmpty() ? "" : " In the end no line meets the pocket for " + String.join(", ", gone) + ".");
    }

    private static String moves(List<String> inward, List<String> outward) {
        List<String> moves = new ArrayList<>();
        if (!inward.isEmpty()) {
            moves.add("moves toward the middle of the lane (boards): " + String.join(", ", inward));
        }
        if (!outward.isEmpty()) {
            moves.add("moves toward the gutter (boards): " + String.join(", ", outward));
        }
        return moves.isEmpty()
                ? "moves by less than " + Figures.fixed(NOTICED_BOARDS, 0) + " board for every style it is known for"
                : String.join("; it ", moves);
    }

    private static String width(SquadLanes squad) {
        OptionalDouble before = squad.meanWidth(0);
        OptionalDouble after = squad.meanWidth(squad.lastGame());
        return before.isEmpty() || after.isEmpty()
                ? ""
                : " Its mean width goes from " + Figures.fixed(before.getAsDouble(), 1) + " to "
                        + Figures.fixed(after.getAsDouble(), 1) + " boards.";
    }
}
