package lanetide.squads.play;

import lanetide.oilflow.pocket.Rack;
import lanetide.squads.result.ShotBowled;
import lanetide.squads.watch.ShotObserver;

/** Tells an observer of a squad's balls. */
record ShotReporter(Day day, String squad) {
    /** A ball has just been thrown. */
    void report(String group, BowlerInPlay bowler, LaneInPlay lane, Place place, int standing, int left) {
        if (day.shotObserver() != ShotObserver.NONE) {
            day.shotObserver()
                    .onShot(new ShotBowled(
                            squad,
                            group,
                            bowler.bowler(),
                            day.simulator().nowMs(),
                            lane.number(),
                            place.game(),
                            place.frame(),
                            place.ball(),
                            standing != Rack.FULL,
                            standing,
                            left,
                            day.balls().lastBall()));
        }
    }

    /**
     * Where in the play a ball belongs.
     *
     * @param game from 1; all are 0 in practice
     * @param frame from 1
     * @param ball from 1
     */
    record Place(int game, int frame, int ball) {
        static final Place PRACTICE = new Place(0, 0, 0);
    }
}
