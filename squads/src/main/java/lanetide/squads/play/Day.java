package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanetide.des.Resource;
import lanetide.des.Simulator;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.Levelling;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.SquadPlan;
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
 * @param machines the lane machines, all of which work for one squad at a time
 * @param levelling how films level while nobody plays
 * @param balls throws the balls
 * @param approaches lets bowlers step up
 * @param faults which lanes are out of order
 * @param shotObserver is told of every ball
 * @param recorder writes down what lanes become
 * @param timetable what happened when; squads add to it
 */
record Day(
        Event event,
        Simulator simulator,
        List<PairLanes> lanes,
        Resource machines,
        Levelling levelling,
        Balls balls,
        Approaches approaches,
        Faults faults,
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
        return new Day(
                event,
                simulator,
                lanes,
                new Resource("lane machines", 1),
                levelling,
                balls,
                new Approaches(simulator, event.pace().courtesy(), all),
                new Faults(simulator, event.incidents(), all, streams),
                shotObserver,
                recorder,
                timetable);
    }

    /** All lanes from left to right. */
    List<LaneInPlay> allLanes() {
        return leftToRight(lanes);
    }

    /** The lanes that a squad has, from left to right. */
    List<LaneInPlay> lanes(SquadPlan planned) {
        return leftToRight(
                planned.pairs(event.centre()).stream().map(this::lanes).toList());
    }

    /** Decides where bowlers of a squad go whose lanes fail: to spare pairs that the squad has. */
    Director director(SquadPlan planned) {
        List<LanePair> pairs = planned.pairs(event.centre());
        return new Director(
                event.incidents(),
                faults,
                event.centre().spare().stream()
                        .filter(pairs::contains)
                        .map(this::lanes)
                        .toList());
    }

    private PairLanes lanes(LanePair pair) {
        return lanes.get(event.centre().pairs().indexOf(pair));
    }

    private static List<LaneInPlay> leftToRight(List<PairLanes> pairs) {
        return PairLanes.all(pairs).stream()
                .sorted(Comparator.comparingInt(LaneInPlay::number))
                .toList();
    }

    /** The same day, from now on without anybody who writes down or is shown what happens. */
    Day unwatched(Setup setup) {
        return new Day(
                event,
                simulator,
                lanes,
                machines,
                levelling,
                balls,
                approaches,
                faults,
                ShotObserver.NONE,
                new LaneRecorder(
                        LaneRecords.NONE, List.of(), setup.startingLines(), setup.physics(), LaneObserver.NONE),
                new ArrayList<>());
    }
}
