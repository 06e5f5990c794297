package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.bowler.BowlerAgent;
import lanetide.squads.bowler.KnownBall;
import lanetide.squads.bowler.LearningAgent;
import lanetide.squads.bowler.SteadyAgent;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Knowledge;

/** Gives every bowler of a playing the agent that chooses his lines. One object serves one thread. */
final class Agents {
    private final Event event;
    private final Physics physics;
    private final StartingLines startingLines;
    private final LineFinder finder;

    Agents(Event event, StartingLines startingLines, Physics physics) {
        this.event = event;
        this.physics = physics;
        this.startingLines = startingLines;
        this.finder = new LineFinder(new RowMarch(physics.grid()), physics.carry());
    }

    /** As the event has it. */
    BowlerAgent of(Bowler bowler, Player player) {
        return of(bowler, player, event.bowling().knowledge());
    }

    BowlerAgent of(Bowler bowler, Player player, Knowledge knowledge) {
        Line start = startingLines.of(player);
        return switch (knowledge) {
            case OWN_BALLS -> new LearningAgent(bowler.level().adaptation(), bag(bowler, player));
            case EVERYTHING -> new KnowingAgent(player, finder, start);
            case NOTHING -> new SteadyAgent(start);
        };
    }

    private List<KnownBall> bag(Bowler bowler, Player player) {
        List<KnownBall> bag = new ArrayList<>();
        bag.add(known(player));
        bowler.secondCover()
                .map(cover -> StartingLines.player(bowler, player.hand(), cover, event, physics))
                .ifPresent(second -> bag.add(known(second)));
        return bag;
    }

    private KnownBall known(Player player) {
        double friction = player.contact().ball().cover().frictionFactor();
        return new KnownBall(startingLines.of(player), startingLines.feel(player), friction);
    }
}
