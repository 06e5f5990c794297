package lanetide.squads.model;

import java.util.List;
import java.util.stream.Stream;
import lanetide.squads.rotation.Rotation;

/**
 * What is planned for a squad on the lanes.
 *
 * @param rotation which group plays which pair in which game, over all pairs of the centre
 * @param patterns what is laid if lanes are oiled before it, else what was laid there last
 * @param own the pairs that it has to itself, from left to right; none if it has all of the centre's
 */
public record SquadPlan(Rotation rotation, LanePatterns patterns, List<LanePair> own) {
    /** Copies the list. */
    public SquadPlan {
        own = List.copyOf(own);
    }

    /**
     * What is planned for a squad on all lanes.
     *
     * @param rotation which group plays which pair in which game
     * @param patterns what is laid if lanes are oiled before it
     */
    public SquadPlan(Rotation rotation, LanePatterns patterns) {
        this(rotation, patterns, List.of());
    }

    /**
     * How many games every group plays.
     *
     * @return games, at least 1
     */
    public int games() {
        return rotation.games();
    }

    /**
     * The pairs that are made ready for it and that nobody else has meanwhile.
     *
     * @param centre the centre
     * @return its own pairs, else all
     */
    public List<LanePair> pairs(Centre centre) {
        return own.isEmpty() ? centre.pairs() : own;
    }

    /**
     * The lanes of these pairs.
     *
     * @param centre the centre
     * @return lane numbers from left to right
     */
    public List<Integer> lanes(Centre centre) {
        return pairs(centre).stream()
                .flatMap(pair -> Stream.of(pair.left(), pair.right()))
                .sorted()
                .toList();
    }

    /**
     * The same on the same oil by another rotation.
     *
     * @param other which group plays which pair in which game
     * @return the plan
     */
    public SquadPlan withRotation(Rotation other) {
        return new SquadPlan(other, patterns, own);
    }

    /**
     * The same on other oil.
     *
     * @param others what is laid if lanes are oiled before it
     * @return the plan
     */
    public SquadPlan withPatterns(LanePatterns others) {
        return new SquadPlan(rotation, others, own);
    }
}
