package lanetide.squads.model;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.Topography;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** The shapes of a centre's lanes: as measured, and elsewhere as chance makes them. */
public final class LaneShapes {
    private LaneShapes() {}

    /**
     * Fills in the lanes that were not measured. Each draws from a stream of its own, so that measuring one lane
     * changes no other.
     *
     * @param pairs the pairs in use
     * @param measured what was measured, by lane number
     * @param spreadM standard deviation of tilt and of crown (m), at least 0; with 0 the other lanes are level
     * @param limitM most of either (m)
     * @param streams source of all chance
     * @return shapes by lane number, of every lane
     */
    public static Map<Integer, Topography> of(
            List<LanePair> pairs,
            Map<Integer, ? extends Topography> measured,
            double spreadM,
            double limitM,
            RandomStreams streams) {
        Map<Integer, Topography> shapes = new HashMap<>(measured);
        pairs.stream()
                .flatMap(pair -> Stream.of(pair.left(), pair.right()))
                .forEach(lane -> shapes.computeIfAbsent(
                        lane, number -> spreadM > 0 ? drawn(number, spreadM, limitM, streams) : Topography.FLAT));
        return shapes;
    }

    private static Topography drawn(int lane, double spreadM, double limitM, RandomStreams streams) {
        NormalizedGaussianSampler luck =
                ZigguratSampler.NormalizedGaussian.of(streams.stream("centre/lane/" + lane + "/topography"));
        return LaneSurvey.drawn(spreadM, limitM, luck::sample);
    }
}
