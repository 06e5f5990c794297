package lanetide.cli.preview;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import lanetide.cli.scenario.Scenario;
import lanetide.des.Replications;
import lanetide.des.random.RandomStreams;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.play.LaneObserver;
import lanetide.squads.play.Observers;
import lanetide.squads.play.Setup;
import lanetide.squads.play.TournamentSimulation;

/**
 * Playings of a scenario's event, each watched by an observer of its own.
 *
 * @param scenario the scenario
 * @param physics its laws and grid
 */
record WatchedPlayings(Scenario scenario, Physics physics) {
    /**
     * Plays.
     *
     * @param playings how often, at least 1
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @param observers makes an observer for a playing, on the thread that plays it
     * @param read what an observer tells after its playing, counted from zero, on the same thread
     * @return what they tell, in order of the playings
     */
    <O extends LaneObserver, T> List<T> run(
            int playings, int threads, IntConsumer onDone, Supplier<O> observers, BiFunction<Integer, O, T> read) {
        Event event = scenario.event();
        StartingLines lines = new StartingLines(event, physics);
        RandomStreams streams = new RandomStreams(scenario.seed());
        return Replications.run(
                playings,
                threads,
                r -> {
                    O observer = observers.get();
                    LuckSource luck = LuckSource.byBall(streams.forReplication(r));
                    new TournamentSimulation(
                                    Setup.of(event, physics, lines, luck).watchedBy(Observers.of(observer)))
                            .play();
                    return read.apply(r, observer);
                },
                onDone);
    }
}
