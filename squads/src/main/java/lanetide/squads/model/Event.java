package lanetide.squads.model;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.Require;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.rotation.Rotation;

/**
 * A whole event, ready to be played.
 *
 * @param name what the director calls it
 * @param centre the lanes
 * @param squads at least one, on lanes that they share in order of start
 * @param plans one for each squad: who plays where in which game, and on which patterns
 * @param pace how long things take
 * @param laws the laws of friction and oil it is played under
 * @param bowling what its bowlers have in common
 * @param incidents what can go wrong with lanes, and what is done then
 * @param cut who goes on from qualifying; empty if nobody is left out
 */
public record Event(
        String name,
        Centre centre,
        List<Squad> squads,
        List<SquadPlan> plans,
        PaceOfPlay pace,
        Laws laws,
        Bowling bowling,
        Incidents incidents,
        Optional<Cut> cut) {
    /**
     * Copies the lists and checks that they fit together.
     *
     * @throws IllegalArgumentException if there is no squad, a squad's name appears twice, squads on the same lanes are
     *     not in order of start, a rotation does not fit its squad or the centre, sends two groups to one pair or one
     *     to a spare pair, a squad finds bare lanes, a group's or a bowler's name appears twice in a squad, a squad has
     *     nobody for its last game, uses more machines than there are, or has lanes of its own that are not the
     *     centre's or that its rotation leaves, or a planned fault or a pattern is on a lane that is not there
     */
    public Event {
        Require.named(name, "event");
        squads = List.copyOf(squads);
        plans = List.copyOf(plans);
        if (squads.isEmpty() || plans.size() != squads.size()) {
            throw new IllegalArgumentException(
                    "an event needs squads, and a rotation for each: " + squads.size() + " and " + plans.size());
        }
        requireDistinct(squads.stream().map(Squad::id), "squad", "the event");
        for (int i = 0; i < squads.size(); i++) {
            checkSquad(squads.get(i), plans.get(i), centre);
        }
        requireInOrder(squads, plans, centre);
        requireOiled(squads, plans, centre);
        for (PlannedFault fault : incidents.planned()) {
            if (!centre.laneNumbers().contains(fault.lane())) {
                throw new IllegalArgumentException(
                        "a fault is planned on lane " + fault.lane() + ", which is not among the centre's lanes");
            }
        }
    }

    /**
     * An event without a cut.
     *
     * @param name what the director calls it
     * @param centre the lanes
     * @param squads in order of start, at least one
     * @param plans one for each squad: who plays where in which game, and on which patterns
     * @param pace how long things take
     * @param laws the laws of friction and oil it is played under
     * @param bowling what its bowlers have in common
     * @param incidents what can go wrong with lanes, and what is done then
     * @throws IllegalArgumentException as above
     */
    public Event(
            String name,
            Centre centre,
            List<Squad> squads,
            List<SquadPlan> plans,
            PaceOfPlay pace,
            Laws laws,
            Bowling bowling,
            Incidents incidents) {
        this(name, centre, squads, plans, pace, laws, bowling, incidents, Optional.empty());
    }

    /**
     * The same event with a cut.
     *
     * @param rule who goes on from qualifying; empty if nobody is left out
     * @return the event
     */
    public Event withCut(Optional<Cut> rule) {
        return new Event(name, centre, squads, plans, pace, laws, bowling, incidents, rule);
    }

    /**
     * The same event with other incidents.
     *
     * @param other what can go wrong with lanes, and what is done then
     * @return the event
     */
    public Event withIncidents(Incidents other) {
        return new Event(name, centre, squads, plans, pace, laws, bowling, other, cut);
    }

    /**
     * Tapes that read what machines laid: taken before a squad that found its lanes cleaned and oiled.
     *
     * @param tapes tapes taken at the event
     * @return those on oil that nobody has played on
     */
    public List<TapeTaken> onFreshOil(List<TapeTaken> tapes) {
        return tapes.stream().filter(tape -> isFresh(tape.when())).toList();
    }

    /**
     * Whether nobody has played on the oil since it was laid on a clean lane.
     *
     * @param when a time
     * @return true before a squad that found its lanes cleaned and oiled
     */
    public boolean isFresh(When when) {
        return when.afterGame() == 0
                && squads.stream()
                        .anyMatch(squad ->
                                squad.id().equals(when.squad()) && squad.conditioning() == Conditioning.STRIP_AND_OIL);
    }

    /**
     * The same event in another centre.
     *
     * @param other a centre with the same lanes
     * @return the event
     * @throws IllegalArgumentException as for a new event
     */
    public Event in(Centre other) {
        return new Event(name, other, squads, plans, pace, laws, bowling, incidents, cut);
    }

    /**
     * The same event under another name, as one that has changed.
     *
     * @param called what it is called now
     * @return the event
     */
    public Event named(String called) {
        return new Event(called, centre, squads, plans, pace, laws, bowling, incidents, cut);
    }

    /**
     * The same event at another pace.
     *
     * @param other how long things take
     * @return the event
     */
    public Event withPace(PaceOfPlay other) {
        return new Event(name, centre, squads, plans, other, laws, bowling, incidents, cut);
    }

    /**
     * The same event under other laws.
     *
     * @param other the laws of friction and oil
     * @return the event
     */
    public Event withLaws(Laws other) {
        return new Event(name, centre, squads, plans, pace, other, bowling, incidents, cut);
    }

    /**
     * The same event with bowlers who choose their lines by something else.
     *
     * @param knowledge what they go by
     * @return the event
     */
    public Event withKnowledge(Knowledge knowledge) {
        Bowling other = new Bowling(knowledge, bowling.tiringShare(), bowling.scoring());
        return new Event(name, centre, squads, plans, pace, laws, other, incidents, cut);
    }

    /**
     * The same event with its squads changed one by one; each keeps its plan.
     *
     * @param others in order of start, as many as there are
     * @return the event
     * @throws IllegalArgumentException as for a new event
     */
    public Event withSquads(List<Squad> others) {
        return withSquads(others, plans);
    }

    /**
     * The same event with other squads.
     *
     * @param others in order of start, at least one
     * @param otherPlans one for each of them
     * @return the event
     * @throws IllegalArgumentException as for a new event
     */
    public Event withSquads(List<Squad> others, List<SquadPlan> otherPlans) {
        return new Event(name, centre, others, otherPlans, pace, laws, bowling, incidents, cut);
    }

    /**
     * The same event with other rotations, on the same oil.
     *
     * @param others one for each squad
     * @return the event
     * @throws IllegalArgumentException as for a new event
     */
    public Event withRotations(List<Rotation> others) {
        if (others.size() != plans.size()) {
            throw new IllegalArgumentException(
                    "rotations (" + others.size() + ") must be as many as squads (" + plans.size() + ")");
        }
        return withSquads(
                squads,
                IntStream.range(0, plans.size())
                        .mapToObj(squad -> plans.get(squad).withRotation(others.get(squad)))
                        .toList());
    }

    /**
     * Whether who comes is not known.
     *
     * @return true if a squad's bowlers are drawn by shares
     */
    public boolean isDrawn() {
        return squads.stream().anyMatch(squad -> squad.field().isPresent());
    }

    /**
     * The same event with others who might come as well, where a squad's bowlers are drawn by shares; itself where all
     * are listed.
     *
     * @param streams family of the round
     * @return the event
     */
    public Event asTheyCome(RandomStreams streams) {
        return isDrawn()
                ? withSquads(
                        squads.stream().map(squad -> squad.asTheyCome(streams)).toList())
                : this;
    }

    /**
     * Which group plays which pair in which game.
     *
     * @return one rotation for each squad
     */
    public List<Rotation> rotations() {
        return plans.stream().map(SquadPlan::rotation).toList();
    }

    /**
     * How many games every group of a squad plays.
     *
     * @param squad the squad's place in {@link #squads()}
     * @return games, at least 1
     */
    public int games(int squad) {
        return plans.get(squad).games();
    }

    /**
     * Games of a squad.
     *
     * @param squad its name
     * @return games every group of it plays
     * @throws IllegalArgumentException if there is no such squad
     */
    public int games(String squad) {
        return games(squad(squad));
    }

    /**
     * The place of a squad.
     *
     * @param name its name
     * @return its place in {@link #squads()}
     * @throws IllegalArgumentException if there is no such squad
     */
    public int squad(String name) {
        return IntStream.range(0, squads.size())
                .filter(s -> squads.get(s).id().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no squad " + name));
    }

    /**
     * The centre as a squad has it.
     *
     * @param squad the squad's place in {@link #squads()}
     * @return the centre, in which pairs are spare too that are not the squad's
     */
    public Centre centre(int squad) {
        return centre.keeping(plans.get(squad).own());
    }

    /**
     * Whether two squads need some lane both, so that one must wait for the other.
     *
     * @param one a squad's place in {@link #squads()}
     * @param other another's
     * @return false if each has lanes of its own
     */
    public boolean shareLanes(int one, int other) {
        return !Collections.disjoint(
                plans.get(one).pairs(centre), plans.get(other).pairs(centre));
    }

    /**
     * Whether every squad has all lanes.
     *
     * @return false if some have lanes of their own
     */
    public boolean sharesAllLanes() {
        return plans.stream().allMatch(plan -> plan.own().isEmpty());
    }

    /**
     * Lanes that stand for all where not all can be looked at.
     *
     * @param most so many at most of the lanes of each squad
     * @return lane numbers, in order of the squads
     */
    public List<Integer> lanesToLookAt(int most) {
        return IntStream.range(0, plans.size())
                .mapToObj(squad -> centre(squad).lanesToLookAt(most))
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    /**
     * What is laid on a lane if it is oiled before a squad.
     *
     * @param squad the squad's place in {@link #squads()}
     * @param lane lane number
     * @return the pattern
     */
    public OilPattern pattern(int squad, int lane) {
        return plans.get(squad).patterns().on(lane);
    }

    /**
     * The pattern by which the event is told: the one of the most lanes, over all squads; of several the first.
     *
     * @return the pattern
     */
    public OilPattern pattern() {
        return patterns().get(0);
    }

    /**
     * All patterns that squads play on.
     *
     * @return those of more lanes, over all squads, first; of equals the earlier one
     */
    public List<OilPattern> patterns() {
        Map<OilPattern, Integer> lanes = new LinkedHashMap<>();
        for (SquadPlan plan : plans) {
            plan.lanes(centre).forEach(lane -> lanes.merge(plan.patterns().on(lane), 1, Integer::sum));
        }
        return lanes.keySet().stream()
                .sorted(Comparator.comparingInt(pattern -> -lanes.get(pattern)))
                .toList();
    }

    /**
     * The same event with one pattern on all lanes before all squads.
     *
     * @param pattern the pattern
     * @return the event
     */
    public Event on(OilPattern pattern) {
        return withSquads(
                squads,
                plans.stream()
                        .map(plan -> plan.withPatterns(LanePatterns.everywhere(pattern)))
                        .toList());
    }

    /**
     * Games that a squad plays on one pair.
     *
     * @param squad the squad's place in {@link #squads()}
     * @return games of groups, the mean over the pairs that are not spare
     */
    public double gamesOnPair(int squad) {
        return (double) games(squad)
                * squads.get(squad).groups().size()
                / centre(squad).rotationPairs().size();
    }

    /**
     * The same event with other pairs kept spare.
     *
     * @param spare some of the centre's pairs
     * @return the event
     * @throws IllegalArgumentException as for a new event
     */
    public Event withSpare(List<LanePair> spare) {
        return new Event(name, centre.withSpare(spare), squads, plans, pace, laws, bowling, incidents, cut);
    }

    private static void requireOiled(List<Squad> squads, List<SquadPlan> plans, Centre centre) {
        Set<Integer> oiled = new HashSet<>();
        for (int i = 0; i < squads.size(); i++) {
            List<Integer> lanes = plans.get(i).lanes(centre);
            if (!squads.get(i).conditioning().laysOil() && !oiled.containsAll(lanes)) {
                throw new IllegalArgumentException((i == 0 ? "the first squad, " : "squad ")
                        + squads.get(i).id() + (i == 0 ? "," : "") + " would find bare lanes");
            }
            oiled.addAll(lanes);
        }
    }

    private static void requireOnOwnPairs(SquadPlan plan, Centre centre, String where) {
        if (!centre.pairs().containsAll(plan.own())) {
            throw new IllegalArgumentException(
                    where + " has pairs " + plan.own() + " of its own, which are not all the centre's");
        }
        List<LanePair> pairs = plan.pairs(centre);
        for (int pair = 0; pair < centre.pairs().size(); pair++) {
            if (plan.rotation().visits(pair) && !pairs.contains(centre.pairs().get(pair))) {
                throw new IllegalArgumentException("the rotation of " + where + " sends a group to pair "
                        + centre.pairs().get(pair).id() + ", which is not its own");
            }
        }
    }

    private static void requireInOrder(List<Squad> squads, List<SquadPlan> plans, Centre centre) {
        for (int i = 1; i < squads.size(); i++) {
            for (int before = i - 1; before >= 0; before--) {
                if (squads.get(i).startMs() < squads.get(before).startMs()
                        && !Collections.disjoint(
                                plans.get(before).pairs(centre), plans.get(i).pairs(centre))) {
                    throw new IllegalArgumentException("squad " + squads.get(i).id() + " starts before squad "
                            + squads.get(before).id() + "; list squads in order of start");
                }
            }
        }
    }

    private static void checkSquad(Squad squad, SquadPlan plan, Centre centre) {
        Rotation rotation = plan.rotation();
        if (rotation.groups() != squad.groups().size()
                || rotation.pairs() != centre.pairs().size()) {
            throw new IllegalArgumentException("squad " + squad.id() + " has "
                    + squad.groups().size() + " groups on " + centre.pairs().size() + " pairs, its rotation "
                    + rotation.groups() + " on " + rotation.pairs());
        }
        String where = "squad " + squad.id();
        requireDistinct(squad.groups().stream().map(Group::id), "group", where);
        requireDistinct(squad.everybody().stream().map(Bowler::id), "bowler", where);
        long left = squad.groups().stream().mapToLong(Group::size).sum()
                - squad.arrangements().changes().stream()
                        .filter(LineUpChange.Absence.class::isInstance)
                        .count();
        if (left == 0) {
            throw new IllegalArgumentException(where + " has nobody left for its last game; leave one bowler in");
        }
        int machines = squad.arrangements().machines().orElse(1);
        if (machines > centre.machines().most()) {
            throw new IllegalArgumentException(
                    where + " has " + machines + " lanes worked on at once, but there are only "
                            + centre.machines().most() + " machines");
        }
        for (int lane : plan.patterns().others().keySet()) {
            if (!centre.laneNumbers().contains(lane)) {
                throw new IllegalArgumentException(
                        where + " has a pattern for lane " + lane + ", which is not among the centre's lanes");
            }
        }
        requireOneGroupOnAPair(rotation, where);
        requireSparePairsFree(rotation, centre, where);
        requireOnOwnPairs(plan, centre, where);
    }

    private static void requireOneGroupOnAPair(Rotation rotation, String where) {
        for (int game = 0; game < rotation.games(); game++) {
            for (int pair = 0; pair < rotation.pairs(); pair++) {
                List<Integer> groups = rotation.groupsOn(game, pair);
                if (groups.size() > 1) {
                    throw new IllegalArgumentException("the rotation of " + where + " sends " + groups.size()
                            + " groups to pair " + (pair + 1) + " in game " + (game + 1) + "; send one");
                }
            }
        }
    }

    private static void requireSparePairsFree(Rotation rotation, Centre centre, String where) {
        for (LanePair spare : centre.spare()) {
            if (rotation.visits(centre.pairs().indexOf(spare))) {
                throw new IllegalArgumentException("the rotation of " + where + " sends a group to pair " + spare.id()
                        + ", which is spare; leave it free");
            }
        }
    }

    private static void requireDistinct(Stream<String> names, String what, String where) {
        Set<String> seen = new HashSet<>();
        names.filter(name -> !seen.add(name)).findFirst().ifPresent(name -> {
            throw new IllegalArgumentException(what + " " + name + " appears twice in " + where);
        });
    }
}
