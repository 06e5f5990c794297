package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.bowler.BowlerAgent;
import lanetide.squads.bowler.KnownBall;
import lanetide.squads.bowler.LearningAgent;
import lanetide.squads.bowler.SteadyAgent;
import lanetide.squads.equipment.PatternLines;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Knowledge;

/** Gives every bowler of a playing the agent that the event has for him. One object serves one thread. */
final class Agents implements AgentSource {
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

    @Override
    public BowlerAgent of(Bowler bowler, Player player, OilPattern pattern) {
        return of(bowler, player, pattern, event.bowling().knowledge());
    }

    BowlerAgent of(Bowler bowler, Player player, OilPattern pattern, Knowledge knowledge) {
        PatternLines lines = startingLines.on(pattern);
        Line start = lines.of(player);
        return switch (knowledge) {
            case SEEN_AND_TOLD -> new LearningAgent(adaptation(bowler), bag(bowler, player, lines));
            case OWN_BALLS -> new LearningAgent(bowler.level().adaptation().byOwnBalls(), bag(bowler, player, lines));
            case EVERYTHING -> new KnowingAgent(player, finder, start);
            case NOTHING -> new SteadyAgent(start);
        };
    }

    /** Where lanes stay as they are laid others' balls tell nothing, so that a seat is worth nothing there. */
    private Adaptation adaptation(Bowler bowler) {
        Adaptation adaptation = bowler.level().adaptation();
        return physics.lanesStay() ? adaptation.byOwnBalls() : adaptation;
    }

    private List<KnownBall> bag(Bowler bowler, Player player, PatternLines lines) {
        List<KnownBall> bag = new ArrayList<>();
        bag.add(known(player, lines));
        bowler.secondCover()
                .map(cover -> StartingLines.player(bowler, player.hand(), cover, event, physics))
                .ifPresent(second -> bag.add(known(second, lines)));
        return bag;
    }

    private static KnownBall known(Player player, PatternLines lines) {
        double friction = player.contact().ball().cover().frictionFactor();
        return new KnownBall(lines.of(player), lines.feel(player), friction);
    }
}
