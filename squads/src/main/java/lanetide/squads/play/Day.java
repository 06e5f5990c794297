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
 * @param recorder writes down what lanes become
 * @param timetable what happened when; squads add to it
 */
record Day(
        Event event,
        Simulator simulator,
        List<PairLanes> lanes,
        ShotMaker shots,
        LaneRecorder recorder,
        List<TimetableEntry> timetable) {
    /** All lanes from left to right. */
    List<LaneInPlay> allLanes() {
        return lanes.stream().flatMap(pair -> pair.both().stream()).toList();
    }
}
