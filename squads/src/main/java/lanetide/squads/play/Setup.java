package lanetide.squads.play;

import lanetide.des.Simulator;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;

/**
 * What a single playing of an event takes. Its luck, its agents and its clock serve that playing alone.
 *
 * @param event what is played
 * @param physics under which laws
 * @param startingLines the lines bowlers bring; they must know the kinds of bowlers of the event
 * @param luck source of all chance
 * @param records what is written down of the lanes
 * @param observers who watch
 * @param agents gives every bowler the agent that chooses his lines
 * @param balls gives it who throws its balls
 * @param simulator the clock
 */
public record Setup(
        Event event,
        Physics physics,
        StartingLines startingLines,
        LuckSource luck,
        LaneRecords records,
        Observers observers,
        AgentSource agents,
        BallSource balls,
        Simulator simulator) {
    /**
     * A playing that nobody watches, by bowlers as the event has them.
     *
     * @param event what is played
     * @param physics under which laws
     * @param startingLines the lines bowlers bring; they must know the kinds of bowlers of the event
     * @param luck source of all chance
     * @return its setup, which writes down the films
     */
    public static Setup of(Event event, Physics physics, StartingLines startingLines, LuckSource luck) {
        return new Setup(
                event,
                physics,
                startingLines,
                luck,
                LaneRecords.FILMS,
                Observers.NONE,
                new Agents(event, startingLines, physics),
                Setup::withOil,
                new Simulator());
    }

    private static Balls withOil(Setup setup) {
        return new ShotMaker(setup.physics());
    }

    /**
     * The same with other records of the lanes.
     *
     * @param wanted what is written down of them
     * @return the setup
     */
    public Setup recording(LaneRecords wanted) {
        return new Setup(event, physics, startingLines, luck, wanted, observers, agents, balls, simulator);
    }

    /**
     * The same before others' eyes.
     *
     * @param others who watch
     * @return the setup
     */
    public Setup watchedBy(Observers others) {
        return new Setup(event, physics, startingLines, luck, records, others, agents, balls, simulator);
    }
}
