package lanetide.squads.fairness;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.play.Setup;
import lanetide.squads.qualifying.CutPlayed;
import lanetide.squads.qualifying.People;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.SquadResult;
import lanetide.squads.study.Design;
import lanetide.squads.study.Playable;
import lanetide.squads.study.Playing;
import lanetide.squads.study.PossibleEvents;

/** An event played in rounds of seatings, ball by ball. */
final class SeatedPlayings implements Design {
    private final SeatingRounds rounds;
    private final PossibleEvents events;
    private final People people;
    private final Map<String, Integer> indexOfBowler = new HashMap<>();

    SeatedPlayings(PossibleEvents events, SeatingRounds rounds) {
        this.rounds = rounds;
        this.events = events;
        this.people = new People(events.event());
        Seats seats = rounds.seats();
        for (int i = 0; i < seats.count(); i++) {
            indexOfBowler.put(seats.bowlers().get(i).id(), i);
        }
    }

    @Override
    public Playing playing(int number) {
        return rounds.playing(number);
    }

    @Override
    public Setup setup(Playing playing) {
        Event seated = rounds.seats(playing.luck()).seated(rounds.bowlerAtSeat(playing));
        Playable changing = events.under(seated, playing.set());
        Playable playable = rounds.isStill(playing) ? changing.staying(UnchangingLanes.of(changing.event())) : changing;
        return playable.setup(LuckSource.byFrame(rounds.luck(playing)));
    }

    /** What the cut of the event does in a playing; empty if it has none. */
    Optional<CutPlayed> cut(EventResult result) {
        return events.event().cut().map(cut -> CutPlayed.of(cut, people, result, indexOfBowler.size()));
    }

    /** Mean score of every bowler (pins a game), by bowler. */
    double[] scores(EventResult result) {
        double[] scores = new double[indexOfBowler.size()];
        for (SquadResult squad : result.squads()) {
            for (BowlerResult bowler : squad.bowlers()) {
                scores[indexOfBowler.get(bowler.bowler().id())] = bowler.meanScore();
            }
        }
        return scores;
    }
}
