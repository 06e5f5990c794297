package lanetide.squads.play;

import java.util.List;
import lanetide.des.Simulator;
import lanetide.squads.model.Event;

/**
 * What all squads of a playing share.
 *
 * @param event what is played
 * @param simulator the clock and the events to come
 * @param lanes the lanes, pair by pair in the centre's order
 * @param shots throws the balls
 * @param approaches lets bowlers step up
 * @param recorder writes down what lanes become
 * @param timetable what happened when; squads add to it
 */
record Day(
        Event event,
        Simulator simulator,
        List<PairLanes> lanes,
        ShotMaker shots,
        Approaches approaches,
        LaneRecorder recorder,
        List<TimetableEntry> timetable) {
    /** A day at the start of which nobody is on an approach. */
    Day(
            Event event,
            Simulator simulator,
            List<PairLanes> lanes,
            ShotMaker shots,
            LaneRecorder recorder,
            List<TimetableEntry> timetable) {
        this(
                event,
                simulator,
                lanes,
                shots,
                new Approaches(simulator, event.pace().courtesy(), PairLanes.all(lanes)),
                recorder,
                timetable);
    }

    /** All lanes from left to right. */
    List<LaneInPlay> allLanes() {
        return PairLanes.all(lanes);
    }
}
