package lanetide.cli.report;

import java.util.ArrayList;
import java.util.List;
import lanetide.squads.play.LaneState;

/** What play does to the lanes, in sentences. */
final class LaneChanges {
    /** A move of the best exit board below this is no move a bowler would notice (boards). */
    private static final double NOTICED_BOARDS = 0.5;

    private final List<SquadLanes> squads;
    private final OilUnits units;

    LaneChanges(List<SquadLanes> squads, OilUnits units) {
        this.squads = squads;
        this.units = units;
    }

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        squads.forEach(squad -> sentences.add(oil(squad)));
        squads.forEach(squad -> squad.kinds().forEach(kind -> sentences.add(window(squad, kind))));
        return sentences;
    }

    private String oil(SquadLanes squad) {
        double before = squad.mean(0, LaneState::headUnitsLow);
        double after = squad.mean(squad.lastGame(), LaneState::headUnitsLow);
        return "Squad " + squad.squad() + " finds " + units.film(before) + " " + units.name()
                + " on the most worn board of the heads and leaves " + units.film(after) + " ("
                + Figures.fixed(100 * (before - after) / before, 0) + " % less); "
                + Figures.fixed(squad.mean(squad.lastGame(), LaneState::carrydownMl), 2)
                + " mL a lane lie past the end of the pattern.";
    }

    private static String window(SquadLanes squad, SquadLanes.Kind kind) {
        SquadLanes.Window before = squad.window(0, kind);
        SquadLanes.Window after = squad.window(squad.lastGame(), kind);
        String who = "Squad " + squad.squad() + ", " + kind.words() + ": ";
        if (!before.exists() || !after.exists()) {
            return who + (after.exists() ? "best exit board " + board(after) + " at the end; " : "")
                    + "no line meets the pocket " + (before.exists() ? "at the end." : "at the start.");
        }
        double move = after.best() - before.best();
        String way = Math.abs(move) < NOTICED_BOARDS
                ? "stays at about " + board(before)
                : "moves " + Figures.fixed(Math.abs(move), 1) + " boards " + (move > 0 ? "inward" : "outward")
                        + ", from " + board(before) + " to " + board(after);
        return who + "the best exit board " + way + ".";
    }

    private static String board(SquadLanes.Window window) {
        return Figures.fixed(window.best(), 1);
    }
}
