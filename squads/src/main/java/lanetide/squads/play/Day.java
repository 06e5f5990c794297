package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanetide.des.Simulator;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.Levelling;
import lanetide.squads.equipment.Physics;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.ShotObserver;

/**
 * What all squads of a playing share.
 *
 * @param event what is played
 * @param simulator the clock and the events to come
 * @param lanes the lanes, pair by pair in the centre's order
 * @param levelling how films level while nobody plays
 * @param balls throws the balls
 * @param approaches lets bowlers step up
 * @param faults which lanes are out of order
 * @param director decides where bowlers go then
 * @param shotObserver is told of every ball
 * @param recorder writes down what lanes become
 * @param timetable what happened when; squads add to it
 */
record Day(
        Event event,
        Simulator simulator,
        List<PairLanes> lanes,
        Levelling levelling,
        Balls balls,
        Approaches approaches,
        Faults faults,
        Director director,
        ShotObserver shotObserver,
        LaneRecorder recorder,
        List<TimetableEntry> timetable) {
    /** A day at the start of which nobody is on an approach and all lanes are in order. */
    static Day of(
            Event event,
            Simulator simulator,
            List<PairLanes> lanes,
            Levelling levelling,
            Balls balls,
            LaneRecorder recorder,
            List<TimetableEntry> timetable,
            ShotObserver shotObserver,
            RandomStreams streams) {
        List<LaneInPlay> all = PairLanes.all(lanes);
        Faults faults = new Faults(simulator, event.incidents(), all, streams);
        Centre centre = event.centre();
        List<PairLanes> spare = centre.spare().stream()
                .map(pair -> lanes.get(centre.pairs().indexOf(pair)))
                .toList();
        return new Day(
                event,
                simulator,
                lanes,
                levelling,
                balls,
                new Approaches(simulator, event.pace().courtesy(), all),
                faults,
                new Director(event.incidents(), faults, spare),
                shotObserver,
                recorder,
                timetable);
    }

    /** All lanes from left to right. */
    List<LaneInPlay> allLanes() {
        return PairLanes.all(lanes).stream()
                .sorted(Comparator.comparingInt(LaneInPlay::number))
                .toList();
    }

    /** The same day, from now on without anybody who writes down or is shown what happens. */
    Day unwatched(Physics physics) {
        return new Day(
                event,
                simulator,
                lanes,
                levelling,
                balls,
                approaches,
                faults,
                director,
                ShotObserver.NONE,
                new LaneRecorder(LaneRecords.NONE, List.of(), physics, LaneObserver.NONE),
                new ArrayList<>());
    }
}
