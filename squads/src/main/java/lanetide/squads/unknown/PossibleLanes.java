package lanetide.squads.unknown;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.LaidRatio;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.Topography;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LaneShapes;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * How the lanes of a centre differ under a set of values: how far each is from level, where nobody measured it, and how
 * much a machine lays on it of any pattern. A set has lanes of its own, the same in all playings, as a centre has.
 */
final class PossibleLanes {
    /** Draws further out are taken for this, so that machines lay something. */
    private static final double MOST_DEVIATIONS = 3;

    private final ValueSet set;
    private final RandomStreams streams;

    PossibleLanes(ValueSet set) {
        this.set = set;
        this.streams = new RandomStreams(set.seed());
    }

    /** A centre with such lanes; plans are those of its squads. */
    Centre of(Centre centre, List<Squad> squads, List<SquadPlan> plans) {
        List<String> names = squads.stream().map(Squad::id).toList();
        Map<Integer, Topography> shapes =
                LaneShapes.of(centre.pairs(), centre.topographies(), value("lane-tilt"), LaneSurvey.LIMIT_M, streams);
        return centre.withLanes(
                shapes,
                laying(
                        centre,
                        tape -> plans.get(Math.max(0, names.indexOf(tape.when().squad())))
                                .patterns()
                                .on(tape.lane())));
    }

    private LaneMachines laying(Centre centre, Function<TapeTaken, OilPattern> patternOf) {
        Map<Integer, LaidRatio> laid = new HashMap<>();
        Map<OilPattern, OilFilm> sheets = new HashMap<>();
        for (int lane : centre.laneNumbers()) {
            List<TapeTaken> tapes = centre.findings().laidOn(lane);
            double drawn = normal(oil(lane));
            laid.put(
                    lane,
                    tapes.isEmpty()
                            ? LaidRatio.even(1 + value("lane-oil") * drawn)
                            : taped(
                                    tape -> sheets.computeIfAbsent(
                                            patternOf.apply(tape), laidBy -> OilFilm.fresh(laidBy, LaneGrid.DEFAULT)),
                                    tapes,
                                    drawn));
        }
        return centre.machines().laying(laid);
    }

    private static String oil(int lane) {
        return "centre/lane/" + lane + "/oil";
    }

    private static LaidRatio taped(Function<TapeTaken, OilFilm> sheet, List<TapeTaken> tapes, double drawn) {
        return new TapedLane(
                        tape -> FilmTapes.units(sheet.apply(tape), tape.board(), tape.distanceM()),
                        tapes,
                        TapedLane.FRESH_SHARE,
                        TapedLane.FRESH_FIELD)
                .ratio(drawn);
    }

    private double normal(String stream) {
        double drawn =
                ZigguratSampler.NormalizedGaussian.of(streams.stream(stream)).sample();
        return Math.max(-MOST_DEVIATIONS, Math.min(MOST_DEVIATIONS, drawn));
    }

    private double value(String id) {
        return set.of(PlayModel.UNKNOWNS.of(id));
    }
}
