package lanetide.squads.model;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.RotationDesign;

/**
 * The lanes in use. All are made ready alike; rotations send nobody to a spare pair, so that a group whose lane is out
 * of order can go there.
 *
 * @param pairs pairs from left to right, at least one, no lane twice
 * @param surface what the lanes are made of
 * @param machines the lane machines
 * @param topographies how far lanes are from level, by lane number; lanes that are missing are level
 * @param spare those of the pairs that are kept spare, from left to right, not all of them
 * @param findings what measurements have told of it
 */
public record Centre(
        List<LanePair> pairs,
        LaneSurface surface,
        LaneMachines machines,
        Map<Integer, Topography> topographies,
        List<LanePair> spare,
        Findings findings) {
    /**
     * Copies the lists and the map, and checks the lists.
     *
     * @throws IllegalArgumentException if there is no pair, a lane stands in two pairs, a spare pair is none of the
     *     pairs, or all pairs are spare
     */
    public Centre {
        pairs = List.copyOf(pairs);
        topographies = Map.copyOf(topographies);
        spare = pairs.stream().filter(requireAmong(pairs, spare)::contains).toList();
        long lanes = lanes(pairs).distinct().count();
        if (pairs.isEmpty() || lanes != 2L * pairs.size()) {
            throw new IllegalArgumentException(
                    "pairs " + pairs + " must be at least one pair, and no lane may stand in two of them");
        }
        if (spare.size() == pairs.size()) {
            throw new IllegalArgumentException("all pairs are spare: " + spare + "; at least one must have a group");
        }
    }

    /**
     * Lanes of which nothing was measured but their shapes.
     *
     * @param pairs pairs from left to right, at least one, no lane twice
     * @param surface what the lanes are made of
     * @param machines the lane machines
     * @param topographies how far lanes are from level, by lane number; lanes that are missing are level
     * @param spare those of the pairs that are kept spare, not all of them
     * @throws IllegalArgumentException as above
     */
    public Centre(
            List<LanePair> pairs,
            LaneSurface surface,
            LaneMachines machines,
            Map<Integer, Topography> topographies,
            List<LanePair> spare) {
        this(pairs, surface, machines, topographies, spare, Findings.NONE);
    }

    /**
     * The same centre with what measurements have told of it.
     *
     * @param others what they have told
     * @return the centre
     */
    public Centre with(Findings others) {
        return new Centre(pairs, surface, machines, topographies, spare, others);
    }

    /**
     * The same centre with other pairs kept spare.
     *
     * @param others some of its pairs
     * @return the centre
     * @throws IllegalArgumentException as for a new centre
     */
    public Centre withSpare(List<LanePair> others) {
        return new Centre(pairs, surface, machines, topographies, others, findings);
    }

    /**
     * The same centre for somebody who has some of its pairs only.
     *
     * @param own the pairs he has; none for all of them
     * @return the centre, in which all others are spare too
     * @throws IllegalArgumentException if all of his are spare
     */
    public Centre keeping(List<LanePair> own) {
        return own.isEmpty()
                ? this
                : withSpare(pairs.stream()
                        .filter(pair -> !own.contains(pair) || spare.contains(pair))
                        .toList());
    }

    /**
     * The same centre with lanes of other shapes, oiled by other machines.
     *
     * @param shapes how far lanes are from level, by lane number; lanes that are missing are level
     * @param others the lane machines
     * @return the centre
     */
    public Centre withLanes(Map<Integer, Topography> shapes, LaneMachines others) {
        return new Centre(pairs, surface, others, shapes, spare, findings);
    }

    /**
     * The same lanes on another surface.
     *
     * @param other the surface
     * @return the centre
     */
    public Centre onSurface(LaneSurface other) {
        return new Centre(pairs, other, machines, topographies, spare, findings);
    }

    /**
     * The shape of a lane.
     *
     * @param lane its number
     * @return how far it is from level
     */
    public Topography topography(int lane) {
        return topographies.getOrDefault(lane, Topography.FLAT);
    }

    /**
     * All lanes, spare ones too.
     *
     * @return their numbers from left to right
     */
    public List<Integer> laneNumbers() {
        return lanes(pairs).sorted().toList();
    }

    /**
     * Lanes that stand for all where not all can be looked at: evenly over the pairs that are not spare, left and right
     * lanes in turn.
     *
     * @param most so many at most
     * @return lane numbers
     */
    public List<Integer> lanesToLookAt(int most) {
        List<LanePair> used = rotationPairs();
        int count = Math.min(most, 2 * used.size());
        return IntStream.range(0, count)
                .map(i -> {
                    LanePair pair = used.get(i * used.size() / count);
                    return i % 2 == 0 ? pair.left() : pair.right();
                })
                .boxed()
                .toList();
    }

    /**
     * The pairs that groups are sent to.
     *
     * @return the pairs that are not spare, from left to right, at least one
     */
    public List<LanePair> rotationPairs() {
        return pairs.stream().filter(pair -> !spare.contains(pair)).toList();
    }

    /**
     * Plans a rotation that leaves the spare pairs free.
     *
     * @param design how groups move over the other pairs, which are to it a row without gaps
     * @param groups number of groups
     * @param games games each group bowls
     * @return the rotation over all pairs
     * @throws ImpossibleRotationException if the design cannot serve these numbers on the pairs that are not spare
     */
    public Rotation plan(RotationDesign design, int groups, int games) {
        List<Integer> places = IntStream.range(0, pairs.size())
                .filter(pair -> !spare.contains(pairs.get(pair)))
                .boxed()
                .toList();
        return design.plan(groups, places.size(), games).among(places, pairs.size());
    }

    private static List<LanePair> requireAmong(List<LanePair> pairs, List<LanePair> spare) {
        if (!pairs.containsAll(spare)) {
            throw new IllegalArgumentException("spare pairs " + spare + " must be some of the pairs " + pairs);
        }
        return spare;
    }

    private static Stream<Integer> lanes(List<LanePair> pairs) {
        return pairs.stream().flatMap(pair -> Stream.of(pair.left(), pair.right()));
    }
}
