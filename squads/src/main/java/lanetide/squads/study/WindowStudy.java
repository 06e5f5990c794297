package lanetide.squads.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.NestedMean;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Event;

/**
 * How far lines have gone since the fresh pattern when a squad comes and when it leaves, whatever is true of what is
 * not known. It watches one playing under each set of values and looks at a left and a right lane.
 */
public final class WindowStudy {
    private static final int MOST_LANES = 2;
    private static final double LEVEL = 0.9;
    /** A line that is found under fewer of the sets is not told. */
    private static final double FOUND_SHARE = 0.9;

    private final PossibleEvents events;

    /** A study of an event under the sets of values that its playings go through. */
    WindowStudy(PossibleEvents events) {
        this.events = events;
    }

    /**
     * When lanes are looked at.
     *
     * @param squad name of a squad
     * @param afterGame 0 when it comes, its last game when it leaves
     */
    public record Moment(String squad, int afterGame) {}

    /**
     * How far a style's line has gone.
     *
     * @param moment when
     * @param style the style
     * @param hand its delivery side
     * @param boards by how much further in than on the fresh pattern the line leaves it (boards), mean over the lanes
     *     and the sets; empty if it meets the pocket under fewer than nine sets in ten
     * @param ci90 interval for what is true, with the luck of one playing; empty where {@code boards} is
     */
    public record Move(
            Moment moment, String style, Hand hand, OptionalDouble boards, Optional<ConfidenceInterval> ci90) {}

    /**
     * What was seen of a style in one playing.
     *
     * @param style the style
     * @param hand its delivery side
     * @param boards by how much further in than on the fresh pattern its line leaves it, by moment
     */
    record OfKind(String style, Hand hand, List<OptionalDouble> boards) {}

    /** What was seen in one playing, style by style. */
    record Seen(List<OfKind> kinds) {}

    /**
     * Who watches a playing: somebody the first one under each set of values; nobody the others, and where all values
     * are as usual.
     */
    Optional<WindowEye> watching(int number) {
        return events.sets() == 1 || number >= events.sets()
                ? Optional.empty()
                : Optional.of(new WindowEye(events.under(number + 1), lanes(), moments()));
    }

    private List<Integer> lanes() {
        return events.event().lanesToLookAt(MOST_LANES);
    }

    private List<Moment> moments() {
        Event event = events.event();
        List<Moment> moments = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            String squad = event.squads().get(s).id();
            moments.add(new Moment(squad, 0));
            moments.add(new Moment(squad, event.games(s)));
        }
        return moments;
    }

    /** What was seen in all playings, in their order: by squad, when it comes and when it leaves, then by style. */
    List<Move> moves(List<Seen> seen) {
        List<Move> moves = new ArrayList<>();
        if (seen.isEmpty()) {
            return moves;
        }
        List<Moment> moments = moments();
        for (int moment = 0; moment < moments.size(); moment++) {
            List<OfKind> kinds = seen.get(0).kinds();
            for (int kind = 0; kind < kinds.size(); kind++) {
                moves.add(move(moments.get(moment), kinds.get(kind), boards(seen, moment, kind)));
            }
        }
        return moves;
    }

    private static double[] boards(List<Seen> seen, int moment, int kind) {
        return seen.stream()
                .map(one -> one.kinds().get(kind).boards().get(moment))
                .flatMapToDouble(OptionalDouble::stream)
                .toArray();
    }

    private Move move(Moment moment, OfKind kind, double[] boards) {
        if (boards.length < Math.max(2, FOUND_SHARE * events.sets())) {
            return new Move(moment, kind.style(), kind.hand(), OptionalDouble.empty(), Optional.empty());
        }
        NestedMean found = NestedMean.of(boards, boards.length);
        return new Move(
                moment,
                kind.style(),
                kind.hand(),
                OptionalDouble.of(found.mean()),
                Optional.of(found.truth().interval(LEVEL)));
    }
}
