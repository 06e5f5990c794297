package lanetide.squads.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lanetide.squads.change.RotationRepair.Priority;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;

/**
 * Pairs that cannot be used from some game on. Groups that were to bowl there go to free pairs, spare ones too, which
 * are then no longer spare; only if there are more groups than pairs are groups dissolved, the smallest first, and of
 * those the ones that were to bowl on the lost pairs most often.
 */
public final class PairLoss {
    /** Most bowlers on a pair: two teams of five (common practice, no source). */
    public static final int MAX_ON_A_PAIR = 10;

    private final Event event;
    private final Set<Integer> lost;
    private final Priority priority;
    private final List<Integer> leftLanes;

    private PairLoss(Event event, Set<Integer> lost, Priority priority) {
        this.event = event;
        this.lost = lost;
        this.priority = priority;
        this.leftLanes = event.centre().pairs().stream().map(LanePair::left).toList();
    }

    /**
     * Takes pairs out of an event.
     *
     * @param event the event
     * @param lost pairs that are lost, counted from zero
     * @param fromSquad first squad without them, counted from zero
     * @param fromGame first game of that squad without them, counted from zero; later squads never have them
     * @param priority whether few changes or few repeats matter most
     * @return the changed event. A squad that must regroup between two games stands in it as two squads, the second
     *     without practice or oiling, under the first one's name with a number, and with what is then left of its
     *     breaks and changes of the line-up
     * @throws ImpossibleRotationException if no pair is left, the game does not exist, or the bowlers do not fit on the
     *     pairs that are left
     */
    public static Change of(Event event, Set<Integer> lost, int fromSquad, int fromGame, Priority priority) {
        Rotation first = event.rotations().get(fromSquad);
        if (fromGame < 0 || fromGame >= first.games()) {
            throw new ImpossibleRotationException(
                    "first game without the pairs", fromGame + 1, "1 to " + first.games(), "Correct it.");
        }
        Change change = Change.none(event.withSpare(List.of()));
        int shift = 0;
        for (int squad = fromSquad; squad < event.squads().size(); squad++) {
            int before = change.event().squads().size();
            PairLoss loss = new PairLoss(change.event(), lost, priority);
            change = change.then(loss.squad(squad + shift, squad == fromSquad ? fromGame : 0));
            shift += change.event().squads().size() - before;
        }
        return change.then(Change.none(change.event().withSpare(stillSpare(event, change.event(), lost))));
    }

    /**
     * The spare pairs that are neither lost nor needed: over the whole event, as nobody may be sent to one in any game.
     */
    private static List<LanePair> stillSpare(Event planned, Event changed, Set<Integer> lost) {
        List<LanePair> pairs = planned.centre().pairs();
        return planned.centre().spare().stream()
                .filter(pair -> !lost.contains(pairs.indexOf(pair)))
                .filter(pair -> changed.rotations().stream().noneMatch(now -> now.visits(pairs.indexOf(pair))))
                .toList();
    }

    private Change squad(int at, int fromGame) {
        Squad squad = event.squads().get(at);
        Set<Integer> gone = withoutOthers(at);
        int left = event.centre().pairs().size() - gone.size();
        requireRoom(squad, left);
        Rotation planned = event.rotations().get(at);
        List<Integer> keep = keep(squad, planned, Math.min(left, planned.groups()), fromGame);
        Regrouping.Result groups = regroup(squad, keep);
        Rotation kept = Plans.ofGroups(planned, keep);
        Rotation now = RotationRepair.without(kept, gone, fromGame, leftLanes, priority);
        List<Change.Visit> visits = visits(squad, keep, kept, now);
        boolean split = fromGame > 0 && keep.size() < planned.groups();
        Change change = new Change(
                split
                        ? split(at, groups.groups(), now, fromGame)
                        : Plans.replaced(event, at, List.of(squad.withGroups(groups.groups())), List.of(now)),
                visits,
                groups.moved(),
                Plans.dissolved(squad, keep),
                List.of(),
                List.of());
        return change.parting(groups.parted());
    }

    /** The lost pairs, and those that belong to other squads. */
    private Set<Integer> withoutOthers(int at) {
        Set<Integer> gone = new TreeSet<>(lost);
        List<LanePair> pairs = event.centre().pairs();
        List<LanePair> own = event.plans().get(at).pairs(event.centre());
        IntStream.range(0, pairs.size())
                .filter(pair -> !own.contains(pairs.get(pair)))
                .forEach(gone::add);
        return gone;
    }

    private Event split(int at, List<Group> groups, Rotation now, int fromGame) {
        Squad squad = event.squads().get(at);
        Arrangements arranged = squad.arrangements();
        Squad first = squad.withArrangements(arranged.before(fromGame));
        Squad rest = squad.withId(squad.id() + " (2)")
                .withConditioning(Conditioning.NONE)
                .withPractice(0)
                .withArrangements(arranged.after(fromGame))
                .withGroups(groups);
        return Plans.replaced(
                event,
                at,
                List.of(first, rest),
                List.of(
                        Plans.ofGames(event.rotations().get(at), 0, fromGame),
                        Plans.ofGames(now, fromGame, now.games())));
    }

    private static void requireRoom(Squad squad, int left) {
        int bowlers = squad.groups().stream().mapToInt(Group::size).sum();
        if (bowlers > left * MAX_ON_A_PAIR) {
            throw new ImpossibleRotationException(
                    "number of pairs left for squad " + squad.id(),
                    left,
                    "at least " + ((bowlers + MAX_ON_A_PAIR - 1) / MAX_ON_A_PAIR) + " for its " + bowlers
                            + " bowlers, with at most " + MAX_ON_A_PAIR + " on a pair",
                    "Keep more pairs, or let some bowl in another squad.");
        }
    }

    /** Nobody is moved while every group can go on. */
    private static Regrouping.Result regroup(Squad squad, List<Integer> keep) {
        if (keep.size() == squad.groups().size()) {
            return new Regrouping.Result(squad.groups(), List.of(), List.of());
        }
        List<List<Bowler>> bowlers = squad.groups().stream().map(Group::bowlers).toList();
        List<String> names = squad.groups().stream().map(Group::id).toList();
        return Regrouping.even(squad.id(), bowlers, names, keep);
    }

    private List<Integer> keep(Squad squad, Rotation planned, int number, int fromGame) {
        return IntStream.range(0, planned.groups())
                .boxed()
                .sorted(Comparator.comparingInt(
                                (Integer group) -> -squad.groups().get(group).size())
                        .thenComparingLong(group -> onLostPairs(planned, group, fromGame)))
                .limit(number)
                .sorted()
                .toList();
    }

    private long onLostPairs(Rotation planned, int group, int fromGame) {
        return IntStream.range(fromGame, planned.games())
                .filter(game -> lost.contains(planned.pairOf(game, group)))
                .count();
    }

    private static List<Change.Visit> visits(Squad squad, List<Integer> keep, Rotation planned, Rotation now) {
        List<Change.Visit> visits = new ArrayList<>();
        for (int group = 0; group < now.groups(); group++) {
            String name = squad.groups().get(keep.get(group)).id();
            for (int game = 0; game < now.games(); game++) {
                if (planned.pairOf(game, group) != now.pairOf(game, group)) {
                    visits.add(new Change.Visit(
                            squad.id(), name, game, planned.pairOf(game, group), now.pairOf(game, group)));
                }
            }
        }
        return visits;
    }
}
