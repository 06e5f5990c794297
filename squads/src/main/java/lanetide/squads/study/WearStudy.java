package lanetide.squads.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.NestedMean;
import lanetide.oilflow.film.ByStretch;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.unknown.ValueSets;
import lanetide.squads.watch.Observers;

/**
 * What each stretch of the worn lanes does to each style in each squad, whatever is true of what is not known: to where
 * a good shot on the line of the fresh pattern meets the pins, and to how often the line that is moved to strikes. It
 * watches one playing under each set of values and looks at a left and a right lane before the first and the last game
 * of every squad.
 */
public final class WearStudy {
    private static final int MOST_LANES = 2;
    private static final double LEVEL = 0.9;

    private final PossibleEvents events;
    /** What was seen in each playing, in their order. */
    private final List<Seen> seen;

    private WearStudy(PossibleEvents events, List<Seen> seen) {
        this.events = events;
        this.seen = seen;
    }

    /**
     * What wear does to a style in one playing.
     *
     * @param style the style
     * @param hand its delivery side
     * @param squads by squad; empty if it met none of the lanes looked at
     */
    record OfKind(String style, Hand hand, List<Optional<WearEye.Seen>> squads) {}

    /** What was seen in one playing, style by style. */
    record Seen(List<OfKind> kinds) {}

    /**
     * What wear does to a style in a squad, mean over its first and last game, the lanes and the sets.
     *
     * @param squad the squad
     * @param style the style
     * @param hand its delivery side
     * @param boards at the pins, on the line of the fresh pattern, stretch by stretch (boards)
     * @param strikes how many more of 100 first balls strike, after moving, than on the lanes as they were laid,
     *     stretch by stretch; where no move meets the pocket nobody moves
     * @param allStrikesCi90 interval of all of {@code strikes} for what is true, with the luck of one playing; empty
     *     where one playing was watched
     */
    public record Wear(
            String squad,
            String style,
            Hand hand,
            ByStretch boards,
            ByStretch strikes,
            Optional<ConfidenceInterval> allStrikesCi90) {}

    /**
     * Plays an event once under each set of values.
     *
     * @param events the event under its sets
     * @param seed master seed of all chance
     * @param execution how, as the next study of its run
     * @param onDone told the number of playings done so far
     * @return by squad, then by style and hand; a squad that met none of the lanes looked at is left out
     * @throws PartPlayedException as {@link Study#play(Part, Execution, Class, IntFunction, IntConsumer)} does
     */
    public static List<Wear> run(PossibleEvents events, long seed, Execution execution, IntConsumer onDone) {
        List<Seen> seen = new Study(Repeated.of(events, seed))
                .play(
                        Part.first(events.sets()),
                        execution,
                        Seen.class,
                        number -> {
                            WearEye eye = new WearEye(
                                    events.under(ValueSets.ofRound(number, events.sets())),
                                    events.event().lanesToLookAt(MOST_LANES));
                            return Watch.by(Observers.of(eye), summary -> eye.seen());
                        },
                        onDone);
        return new WearStudy(events, seen).found();
    }

    private List<Wear> found() {
        List<Wear> found = new ArrayList<>();
        for (int squad = 0; squad < events.event().squads().size(); squad++) {
            for (int kind = 0; kind < seen.get(0).kinds().size(); kind++) {
                wear(squad, kind).ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<Wear> wear(int squad, int kind) {
        OfKind typical = seen.get(0).kinds().get(kind);
        List<WearEye.Seen> all = seen.stream()
                .flatMap(one -> one.kinds().get(kind).squads().get(squad).stream())
                .toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        double[] strikes = all.stream().mapToDouble(one -> one.strikes().all()).toArray();
        return Optional.of(new Wear(
                events.event().squads().get(squad).id(),
                typical.style(),
                typical.hand(),
                ByStretch.mean(all.stream().map(WearEye.Seen::boards).toList()),
                ByStretch.mean(all.stream().map(WearEye.Seen::strikes).toList()),
                strikes.length < 2
                        ? Optional.empty()
                        : Optional.of(
                                NestedMean.of(strikes, strikes.length).truth().interval(LEVEL))));
    }
}
