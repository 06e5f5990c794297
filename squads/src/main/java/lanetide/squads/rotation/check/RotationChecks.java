package lanetide.squads.rotation.check;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.Collision;
import lanetide.squads.rotation.Following;
import lanetide.squads.rotation.Move;
import lanetide.squads.rotation.RepeatedVisit;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationCheck;
import lanetide.squads.rotation.RotationNames;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RowCompleteExistence;

/** The structural checks of one squad's rotation, each a sentence with its reason. */
public final class RotationChecks {
    /** Every group has a pair of its own in every game. */
    public static final String PERMUTATION = "permutation";

    /** Nobody comes back to a pair. */
    public static final String REPEATED_PAIR = "repeated-pair";

    /** How many different groups are followed. */
    public static final String PREDECESSORS = "predecessors";

    /** The carry-over index beside its minimum and maximum. */
    public static final String CARRY_OVER = "carry-over";

    /** How far groups carry their equipment. */
    public static final String WALKING = "walking";

    /** What an even number of pairs does to players who move opposite ways. */
    public static final String EVEN_PAIRS = "even-pairs";

    /** What no rotation can give for these numbers. */
    public static final String EXISTENCE = "existence";

    private final Rotation rotation;
    private final RotationReport report;
    private final CarryOver carryOver;
    private final Walk walk;
    private final int pairsInUse;
    private final RotationNames names;

    private RotationChecks(Rotation rotation, List<Integer> leftLanes, int pairsInUse, RotationNames names) {
        this.rotation = rotation;
        this.report = RotationCheck.of(rotation);
        this.carryOver = CarryOver.of(rotation);
        this.walk = Walk.of(rotation, leftLanes);
        this.pairsInUse = pairsInUse;
        this.names = names;
    }

    /**
     * Checks a rotation.
     *
     * @param rotation a rotation, faulty or not
     * @param leftLanes number of the left lane of each pair
     * @param pairsInUse pairs that are not kept spare, at least as many as groups
     * @param names what groups and pairs are called
     * @return the checks in the order in which a director would ask
     */
    public static List<StructuralCheck> of(
            Rotation rotation, List<Integer> leftLanes, int pairsInUse, RotationNames names) {
        RotationChecks checks = new RotationChecks(rotation, leftLanes, pairsInUse, names);
        if (!checks.report.isPermutation()) {
            return List.of(checks.permutation());
        }
        return List.of(
                checks.permutation(),
                checks.repeatedPair(),
                checks.predecessors(),
                checks.carryOver(),
                checks.walking(),
                checks.evenPairs(),
                checks.existence());
    }

    private StructuralCheck permutation() {
        List<Collision> collisions = report.collisions();
        return collisions.isEmpty()
                ? StructuralCheck.holds(PERMUTATION, "In every game each group has a pair of its own.")
                : StructuralCheck.fails(
                        PERMUTATION, collisions.get(0).sentence(names) + Words.more(collisions.size() - 1, "meeting"));
    }

    private StructuralCheck repeatedPair() {
        List<RepeatedVisit> visits = report.repeatedVisits();
        boolean mustRepeat = rotation.games() > pairsInUse;
        if (visits.isEmpty()) {
            return StructuralCheck.holds(
                    REPEATED_PAIR,
                    walk.longestPairs() > 0
                            ? "Nobody comes back to a pair he has left."
                            : "Nobody leaves his pair, so nobody comes back to one.");
        }
        RepeatedVisit first = report.firstRepeatedVisit().orElseThrow();
        String told = "The first repeated pair: " + Words.lowerFirst(first.sentence(names))
                + Words.more(visits.size() - 1, "return");
        return mustRepeat
                ? StructuralCheck.note(
                        REPEATED_PAIR,
                        told + " With " + Words.count(rotation.games(), "game") + " on "
                                + Words.count(pairsInUse, "pair") + " every rotation that moves must come back.")
                : StructuralCheck.fails(
                        REPEATED_PAIR,
                        told + " With " + Words.count(pairsInUse, "pair") + " nobody need come back in up to "
                                + Words.count(pairsInUse, "game") + ".");
    }

    private StructuralCheck predecessors() {
        int others = rotation.groups() - 1;
        int possible = Math.min(others, rotation.games() - 1);
        int fewest = report.fewestPredecessors();
        int most = report.mostPredecessors();
        if (others == 0 || rotation.games() == 1) {
            return StructuralCheck.note(PREDECESSORS, "Nobody follows anybody in this plan.");
        }
        if (most == 0) {
            return StructuralCheck.note(
                    PREDECESSORS, "Nobody follows another group: each meets only the oil it has left itself.");
        }
        String told = "Each group takes over from "
                + (fewest == most ? Words.count(fewest, "group") : fewest + " to " + most + " groups") + " of the "
                + Words.count(others, "other") + "; with " + Words.count(rotation.games(), "game") + " there could be "
                + possible + ".";
        if (fewest == possible) {
            return StructuralCheck.holds(PREDECESSORS, told);
        }
        return most == 1
                ? StructuralCheck.fails(PREDECESSORS, told + " " + sole())
                : StructuralCheck.note(PREDECESSORS, told);
    }

    private String sole() {
        return report.solePredecessors().isEmpty()
                ? ""
                : report.solePredecessors().get(0).sentence(names)
                        + Words.more(report.solePredecessors().size() - 1, "group");
    }

    private StructuralCheck carryOver() {
        int index = report.carryOverIndex();
        int least = report.carryOverMinimum();
        int most = carryOver.maximum();
        String told = "The carry-over index is " + index + "; evenly spread it would be " + least + ", at worst " + most
                + ".";
        if (rotation.games() == 1 || report.mostPredecessors() == 0) {
            return StructuralCheck.note(CARRY_OVER, told + " No group meets another's oil.");
        }
        if (index == least) {
            return StructuralCheck.holds(CARRY_OVER, told + " Nobody can complain about whom he follows.");
        }
        return index == most
                ? StructuralCheck.fails(
                        CARRY_OVER,
                        told + " This is the worst there is: every group follows one and the same group at every move,"
                                + " and meets its oil alone.")
                : StructuralCheck.note(CARRY_OVER, told + " " + mostFollowed());
    }

    private String mostFollowed() {
        return carryOver.graph().edgeSet().stream()
                .filter(arc -> arc.before() != arc.after())
                .max(Comparator.comparingInt(Following::times)
                        .thenComparing(Comparator.comparingInt(Following::after).reversed())
                        .thenComparing(
                                Comparator.comparingInt(Following::before).reversed()))
                .map(arc -> "Most often " + names.group().apply(arc.after()) + " follows "
                        + names.group().apply(arc.before()) + ": " + Words.count(arc.times(), "time") + ".")
                .orElse("");
    }

    private StructuralCheck walking() {
        if (walk.longestPairs() == 0) {
            return StructuralCheck.holds(WALKING, "Nobody walks.");
        }
        Move longest = walk.longest().orElseThrow();
        return StructuralCheck.note(
                WALKING,
                String.format(
                        Locale.ROOT,
                        "A move is %.1f pairs long on average. The longest, %s: %s walks from %s to %s after game %d.",
                        walk.pairsPerGame(),
                        Words.pairs(walk.longestPairs()),
                        names.group().apply(longest.group()),
                        names.pair().apply(longest.from().pair()),
                        names.pair().apply(longest.to().pair()),
                        longest.from().game() + 1));
    }

    /** A left-lane player shifts by twice the step against a right-lane player, so an even ring halves whom he can meet. */
    private StructuralCheck evenPairs() {
        if (pairsInUse < 3) {
            return StructuralCheck.note(EVEN_PAIRS, "Too few pairs for lanes that move opposite ways.");
        }
        int games = pairsInUse;
        Encounters met = Encounters.of(
                new Ring(-1, 1).plan(pairsInUse, pairsInUse, games),
                new Ring(1, 1).plan(pairsInUse, pairsInUse, games));
        long opponents = met.opponents().getMax();
        String told =
                "If left-lane players moved 1 pair left and right-lane players 1 right (common practice, no source),"
                        + " each would meet " + opponents + " of " + pairsInUse + " opposite groups in "
                        + Words.count(games, "game") + ".";
        return opponents == pairsInUse
                ? StructuralCheck.holds(EVEN_PAIRS, told + " An odd number of pairs lets everybody meet.")
                : StructuralCheck.note(
                        EVEN_PAIRS,
                        told
                                + " An even number of pairs is the hazard: each of them would be met twice and the other half"
                                + " never; with one pair more or less all would meet.");
    }

    private StructuralCheck existence() {
        int groups = rotation.groups();
        String each = Words.count(groups, "group") + " on " + Words.count(groups, "pair")
                + ", each once on each pair and each following each other exactly once";
        return switch (RowCompleteExistence.of(groups)) {
            case AVAILABLE ->
                StructuralCheck.holds(
                        EXISTENCE,
                        "A rotation exists for " + each + ": `balanced`, in " + Words.count(groups, "game") + ".");
            case NONE ->
                StructuralCheck.note(
                        EXISTENCE,
                        "Impossible for " + each + ": no rotation of " + groups
                                + " games does it (every one was tried)." + twice(groups));
            case KNOWN_ELSEWHERE ->
                StructuralCheck.note(
                        EXISTENCE,
                        "A rotation is said to exist for " + each + ", but this program has no rule for it."
                                + twice(groups));
            case UNKNOWN ->
                StructuralCheck.note(EXISTENCE, "This program knows of no rotation for " + each + "." + twice(groups));
        };
    }

    private static String twice(int groups) {
        return " `balanced` does it over " + 2 * groups
                + " games, each pair twice and each following twice; one group more or less makes it possible in one round.";
    }
}
