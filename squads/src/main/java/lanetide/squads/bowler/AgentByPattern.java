package lanetide.squads.bowler;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.IntFunction;
import lanetide.oilflow.line.Line;

/**
 * A bowler on lanes with several patterns, who knows from their sheets what lies where: on each pattern he begins with
 * the line that he brings for it, and goes by what he has learnt on that pattern alone.
 *
 * @param <P> what tells patterns apart; he knows their names from the sheets and sees nothing of the oil
 */
public final class AgentByPattern<P> implements BowlerAgent {
    private final IntFunction<P> patternOf;
    private final Function<P, BowlerAgent> agentFor;
    private final Map<P, BowlerAgent> agents = new LinkedHashMap<>();
    private BowlerAgent now;

    /**
     * A bowler who has thrown no ball yet.
     *
     * @param usual the pattern he begins on
     * @param patternOf what is laid on a lane, by its number
     * @param agentFor how he chooses his lines on a pattern
     */
    public AgentByPattern(P usual, IntFunction<P> patternOf, Function<P, BowlerAgent> agentFor) {
        this.patternOf = patternOf;
        this.agentFor = agentFor;
        this.now = agents.computeIfAbsent(usual, agentFor);
    }

    @Override
    public BowlerAgent on(int lane) {
        return agents.computeIfAbsent(patternOf.apply(lane), agentFor);
    }

    @Override
    public void stepUp(int lane, int gamesOnOil, OptionalDouble told) {
        now = on(lane);
        now.stepUp(lane, gamesOnOil, told);
    }

    @Override
    public Line line(int lane) {
        return on(lane).line(lane);
    }

    @Override
    public int ball() {
        return now.ball();
    }

    @Override
    public int ballChanges() {
        return agents.values().stream().mapToInt(BowlerAgent::ballChanges).sum();
    }

    @Override
    public Optional<LaneRead> learn(int lane, Sight sight) {
        return on(lane).learn(lane, sight);
    }

    @Override
    public void watch(int lane, LaneRead read, double unlike) {
        on(lane).watch(lane, read, unlike);
    }

    @Override
    public OptionalDouble moved(int lane) {
        return on(lane).moved(lane);
    }

    @Override
    public void moveOn() {
        agents.values().forEach(BowlerAgent::moveOn);
    }
}
