package lanetide.squads.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.NestedMean;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.model.Event;
import lanetide.squads.watch.Observers;

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
    private final Map<Integer, WindowEye> eyes = new ConcurrentHashMap<>();

    /**
     * A study of an event.
     *
     * @param events the event under the sets of values that its playings go through
     */
    public WindowStudy(PossibleEvents events) {
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
     * Who watches a playing.
     *
     * @param number its number in the study, from 0
     * @return somebody for the first playing under each set of values; nobody for the others, and where all values are
     *     as usual
     */
    public Observers watching(int number) {
        if (events.sets() == 1 || number >= events.sets()) {
            return Observers.NONE;
        }
        WindowEye eye = new WindowEye(events.under(number + 1), lanes(), moments());
        eyes.put(number, eye);
        return Observers.of(eye);
    }

    private List<Integer> lanes() {
        return events.event().centre().lanesToLookAt(MOST_LANES);
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

    /**
     * What was seen; the playings that are watched must be over.
     *
     * @return by squad, when it comes and when it leaves, then by style and hand; empty where all values are as usual
     */
    public List<Move> moves() {
        List<Move> moves = new ArrayList<>();
        if (eyes.isEmpty()) {
            return moves;
        }
        // Means do not hang on the order in which threads came.
        List<WindowEye> inOrder = eyes.entrySet().stream()
                .sorted(Comparator.comparingInt(Map.Entry::getKey))
                .map(Map.Entry::getValue)
                .toList();
        for (Moment moment : moments()) {
            List<TypicalPlayer> kinds = inOrder.get(0).kinds();
            for (int kind = 0; kind < kinds.size(); kind++) {
                moves.add(move(moment, kinds.get(kind), boards(inOrder, moment, kind)));
            }
        }
        return moves;
    }

    private static double[] boards(List<WindowEye> eyes, Moment moment, int kind) {
        return eyes.stream()
                .map(eye -> eye.moved(moment, kind))
                .flatMapToDouble(OptionalDouble::stream)
                .toArray();
    }

    private Move move(Moment moment, TypicalPlayer kind, double[] boards) {
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
