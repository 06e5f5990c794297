package lanetide.cli.fit;

import lanetide.cli.report.Figures;
import lanetide.cli.words.English;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fit.Explanation;
import lanetide.squads.fit.FreshLane;
import lanetide.squads.fit.Reading;
import lanetide.squads.fit.Suspicion;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;

/** Readings, and what is said of them, in words. */
final class FitWords {
    /** From so many deviations on a lane is said to have more or less than its sheet says. */
    private static final double SHOWN = 2;

    /** Readings within so many deviations are said to agree: nine in ten do if all is right. */
    static final double NINE_IN_TEN = 1.645;

    private final boolean metric;

    FitWords(boolean metric) {
        this.metric = metric;
    }

    /** Whether a reading agrees that is so many deviations off. */
    static boolean agrees(double miss) {
        return Math.abs(miss) <= NINE_IN_TEN;
    }

    /** A reading and where it was taken. */
    String of(Reading reading) {
        if (reading instanceof Reading.Fresh fresh) {
            return "lane " + fresh.tape().lane() + ", " + place(fresh.tape()) + ", fresh";
        }
        if (reading instanceof Reading.Worn worn) {
            return "lane " + worn.tape().lane() + ", " + place(worn.tape()) + ", "
                    + of(worn.tape().when());
        }
        if (reading instanceof Reading.Passed passed) {
            return of(passed.ball()) + ", at " + distance(passed.at().distanceM());
        }
        if (reading instanceof Reading.Met met) {
            return of(met.ball());
        }
        if (reading instanceof Reading.Played played) {
            return "where " + played.bowler() + " of squad " + played.squad() + " plays at the arrows, fresh";
        }
        if (reading instanceof Reading.Ended ended) {
            return "end of game " + ended.game().game() + " of squad "
                    + ended.game().squad();
        }
        Reading.Game game = (Reading.Game) reading;
        return "squad " + game.squad() + ", game " + game.game();
    }

    private static String of(BallThrown ball) {
        return ball.bowler().map(name -> "ball of " + name).orElse("a ball")
                + (ball.lane().isPresent() ? ", lane " + ball.lane().getAsInt() : "")
                + ", "
                + of(ball.when());
    }

    private String place(TapeTaken tape) {
        return "board " + tape.board() + " at " + distance(tape.distanceM());
    }

    String distance(double distanceM) {
        return metric ? Figures.plain(distanceM, 1) + " m" : Figures.plain(distanceM / LaneGeometry.FOOT_M, 1) + " ft";
    }

    /** When something was measured. */
    static String of(When when) {
        return when.afterGame() == 0
                ? "as squad " + when.squad() + " found it"
                : "after " + English.count(when.afterGame(), "game") + " of squad " + when.squad();
    }

    /** What a reading counts. */
    static String unit(Reading reading) {
        if (reading instanceof Reading.Ended) {
            return "min";
        }
        if (reading instanceof Reading.Game) {
            return "pins";
        }
        return reading instanceof Reading.OfBall || reading instanceof Reading.Played ? "board" : "units";
    }

    /** A kind of readings. */
    static String kind(Reading reading) {
        if (reading instanceof Reading.Ended) {
            return "ends of games";
        }
        if (reading instanceof Reading.Fresh) {
            return "tapes on fresh oil";
        }
        if (reading instanceof Reading.Worn) {
            return "tapes after play";
        }
        if (reading instanceof Reading.Played) {
            return "lines in practice";
        }
        if (reading instanceof Reading.Passed) {
            return "balls on the lane";
        }
        return reading instanceof Reading.Met ? "balls at the pins" : "scores by game";
    }

    /** Whether a machine has laid what the sheet says. */
    static String of(FreshLane lane) {
        double off = lane.ratio() - 1;
        String by = Figures.plain(100 * Math.abs(off), 0) + " % ";
        String tapes = " (" + English.count(lane.tapes(), "tape") + ", error "
                + Figures.plain(Math.max(1, 100 * lane.error()), 0) + " %)";
        String thirds = Double.isNaN(lane.headRatio()) || Double.isNaN(lane.endRatio())
                ? ""
                : ": " + Figures.plain(100 * lane.headRatio(), 0)
                        + " % of the sheet in the first third of the pattern, "
                        + Figures.plain(100 * lane.endRatio(), 0) + " % in the last";
        return "Lane " + lane.lane() + " has "
                + (Math.abs(off) < SHOWN * lane.error()
                        ? "in all what the sheet says"
                        : by + (off > 0 ? "more" : "less") + " oil than the sheet says")
                + tapes + thirds + ".";
    }

    /** What may have happened. */
    String of(Suspicion suspicion) {
        return English.capital(of(suspicion.what())) + ".";
    }

    private String of(Explanation what) {
        if (what instanceof Explanation.LanesSwapped swapped) {
            return "the tapes of lanes " + swapped.lane() + " and " + swapped.other() + ", " + of(swapped.when())
                    + ", look as if they were each other's";
        }
        if (what instanceof Explanation.SidesSwapped sides) {
            return "the boards of lane " + sides.lane() + ", " + of(sides.when())
                    + ", look as if they were counted from the left-hand gutter";
        }
        if (what instanceof Explanation.OtherUnit unit) {
            return "the tapes " + of(unit.when()) + " look as if they were in "
                    + (unit.times() < 1
                            ? "micrometres and were written as units"
                            : "units and were written as micrometres");
        }
        if (what instanceof Explanation.OtherTime time) {
            return "the tapes said to be " + of(time.when()) + " look as if they were taken " + of(time.other());
        }
        if (what instanceof Explanation.OtherPattern pattern) {
            return "the tapes " + of(pattern.when()) + " look as if they were taken on a pattern about "
                    + distance(Math.abs(pattern.longerM())) + (pattern.longerM() > 0 ? " longer" : " shorter")
                    + " than that of the scenario";
        }
        return "one reading looks wrong by itself: " + of(((Explanation.OneReading) what).reading());
    }
}
