package lanetide.squads.fairness;

import java.util.HashMap;
import java.util.Map;
import lanetide.des.random.RandomStreams;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.play.Setup;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.SquadResult;

/** Scores from playing the event, ball by ball. */
final class EventScores implements ScoreSource {
    private final Seats seats;
    private final Physics physics;
    private final StartingLines lines;
    private final Physics stillPhysics;
    private final StartingLines stillLines;
    private final Map<String, Integer> indexOfBowler = new HashMap<>();

    EventScores(Event event, Seats seats) {
        this.seats = seats;
        this.physics = Physics.under(event.laws());
        this.lines = new StartingLines(event, physics);
        Event still = UnchangingLanes.of(event);
        this.stillPhysics = Physics.under(still.laws());
        this.stillLines = new StartingLines(still, stillPhysics);
        for (int i = 0; i < seats.count(); i++) {
            indexOfBowler.put(seats.bowlers().get(i).id(), i);
        }
    }

    @Override
    public double[] play(int[] bowlerAtSeat, boolean lanesChange, RandomStreams luck) {
        Event seated = seats.seated(bowlerAtSeat);
        return scores(
                lanesChange
                        ? result(seated, physics, lines, luck)
                        : result(UnchangingLanes.of(seated), stillPhysics, stillLines, luck));
    }

    /** The whole playing of the event as it is drawn. */
    EventResult asDrawn(RandomStreams luck) {
        return result(seats.seated(seats.asDrawn()), physics, lines, luck);
    }

    private static EventResult result(Event event, Physics physics, StartingLines lines, RandomStreams luck) {
        return new TournamentSimulation(Setup.of(event, physics, lines, LuckSource.byFrame(luck))).play();
    }

    private double[] scores(EventResult result) {
        double[] scores = new double[seats.count()];
        for (SquadResult squad : result.squads()) {
            for (BowlerResult bowler : squad.bowlers()) {
                scores[indexOfBowler.get(bowler.bowler().id())] = bowler.meanScore();
            }
        }
        return scores;
    }
}
