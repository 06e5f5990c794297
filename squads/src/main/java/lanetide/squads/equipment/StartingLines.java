package lanetide.squads.equipment;

import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.Player;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;

/**
 * The line every bowler brings to an event: what a player of his kind plays on the fresh pattern of a lane, which is
 * all that a pattern sheet and practice elsewhere can tell him. Each is worked out once for all playings of the event,
 * when the first who needs it comes.
 */
public final class StartingLines {
    private final Set<OilPattern> patterns;
    private final Physics physics;
    private final Map<OilPattern, PatternLines> byPattern;

    /**
     * Works out the lines.
     *
     * @param event the event
     * @param physics the laws
     */
    public StartingLines(Event event, Physics physics) {
        this(event, physics, new ConcurrentHashMap<>());
    }

    private StartingLines(Event event, Physics physics, Map<OilPattern, PatternLines> byPattern) {
        this.patterns = Stream.concat(
                        Stream.of(event.pattern()),
                        event.plans().stream().flatMap(plan -> plan.patterns().all()))
                .collect(Collectors.toUnmodifiableSet());
        this.physics = physics;
        this.byPattern = byPattern;
    }

    /**
     * The lines that are brought to another event under the same laws. What is found for one serves the other where
     * their patterns are the same.
     *
     * @param other the other event
     * @return its lines
     */
    public StartingLines broughtTo(Event other) {
        return new StartingLines(other, physics, byPattern);
    }

    /**
     * The lines on a pattern.
     *
     * @param pattern the event's pattern, or one of a squad's lanes
     * @return the lines of all kinds of bowlers
     * @throws IllegalArgumentException if no squad plays on it
     */
    public PatternLines on(OilPattern pattern) {
        if (!patterns.contains(pattern)) {
            throw new IllegalArgumentException("no squad of the event plays on pattern " + pattern.id());
        }
        return byPattern.computeIfAbsent(pattern, played -> new PatternLines(played, physics));
    }

    /**
     * A bowler as the oil model sees him at a full rack.
     *
     * @param bowler the bowler
     * @param event the event, for its surface
     * @param physics the laws
     * @return the player
     */
    public static Player player(Bowler bowler, Event event, Physics physics) {
        return player(bowler, bowler.hand(), event, physics);
    }

    /** The same with another delivery side, for comparing bowlers of both hands. */
    static Player player(Bowler bowler, Hand hand, Event event, Physics physics) {
        return player(bowler, hand, bowler.cover(), event, physics);
    }

    /**
     * The same with another delivery side and another ball.
     *
     * @param bowler the bowler
     * @param hand his delivery side
     * @param cover his ball's cover
     * @param event the event, for its surface
     * @param physics the laws
     * @return the player
     */
    public static Player player(Bowler bowler, Hand hand, Coverstock cover, Event event, Physics physics) {
        return new Player(
                bowler.style(),
                bowler.level().spread(),
                hand,
                physics.contact(cover, event.centre().surface()));
    }
}
