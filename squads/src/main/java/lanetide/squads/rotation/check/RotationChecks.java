package lanetide.squads.rotation.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.Following;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.design.RowCompleteExistence;

/**
 * The structural checks of one squad's rotation: how each stands, and the numbers that it rests on.
 *
 * @param rotation the rotation, faulty or not
 * @param report its findings and figures
 * @param carryOver who follows whom in it
 * @param walk how far groups carry their equipment
 * @param pairsInUse pairs that are not kept spare, at least as many as groups
 */
public record RotationChecks(Rotation rotation, RotationReport report, CarryOver carryOver, Walk walk, int pairsInUse) {
    /** What is looked at, in the order in which a director would ask; never changes between versions. */
    public enum Code {
        /** Every group has a pair of its own in every game. */
        PERMUTATION,
        /** Nobody comes back to a pair. */
        REPEATED_PAIR,
        /** How many different groups are followed. */
        PREDECESSORS,
        /** The carry-over index beside its minimum and maximum. */
        CARRY_OVER,
        /** How far groups carry their equipment. */
        WALKING,
        /** What an even number of pairs does to players who move opposite ways. */
        EVEN_PAIRS,
        /** What no rotation can give for these numbers. */
        EXISTENCE
    }

    /**
     * Looks a rotation over.
     *
     * @param rotation a rotation, faulty or not
     * @param leftLanes number of the left lane of each pair
     * @param pairsInUse pairs that are not kept spare, at least as many as groups
     * @return its checks
     */
    public static RotationChecks of(Rotation rotation, List<Integer> leftLanes, int pairsInUse) {
        return new RotationChecks(
                rotation,
                RotationReport.of(rotation),
                CarryOver.of(rotation),
                Walk.of(rotation, leftLanes),
                pairsInUse);
    }

    /**
     * The checks that mean something.
     *
     * @return all, or only the first where groups meet
     */
    public List<Code> codes() {
        return report.isPermutation() ? List.of(Code.values()) : List.of(Code.PERMUTATION);
    }

    /**
     * How a check stands.
     *
     * @param code what is looked at
     * @return its outcome
     */
    public Outcome outcome(Code code) {
        return switch (code) {
            case PERMUTATION -> report.isPermutation() ? Outcome.HOLDS : Outcome.FAILS;
            case REPEATED_PAIR ->
                report.repeatedVisits().isEmpty() ? Outcome.HOLDS : mustRepeat() ? Outcome.NOTE : Outcome.FAILS;
            case PREDECESSORS -> predecessors();
            case CARRY_OVER -> carriedOver();
            case WALKING -> walk.longestPairs() == 0 ? Outcome.HOLDS : Outcome.NOTE;
            case EVEN_PAIRS -> pairsInUse >= 3 && opponents() == pairsInUse ? Outcome.HOLDS : Outcome.NOTE;
            case EXISTENCE -> existence() == RowCompleteExistence.AVAILABLE ? Outcome.HOLDS : Outcome.NOTE;
        };
    }

    /**
     * Whether every rotation that moves must come back.
     *
     * @return whether there are more games than pairs in use
     */
    public boolean mustRepeat() {
        return rotation.games() > pairsInUse;
    }

    /**
     * How many different groups each could follow in so many games.
     *
     * @return 0 if nobody can follow anybody
     */
    public int possiblePredecessors() {
        return Math.min(rotation.groups(), rotation.games()) - 1;
    }

    /**
     * How many of the opposite groups each would meet in as many games as there are pairs, if left-lane players moved 1
     * pair left and right-lane players 1 pair right: against one another they move 2 pairs, which on an even number of
     * pairs is a round of half of them.
     *
     * @return half the pairs where their number is even, else all
     */
    public int opponents() {
        return pairsInUse % 2 == 0 ? pairsInUse / 2 : pairsInUse;
    }

    /**
     * Whether as many groups can each follow each other once.
     *
     * @return what is known of it
     */
    public RowCompleteExistence existence() {
        return RowCompleteExistence.of(rotation.groups());
    }

    /**
     * Which group follows which other most often.
     *
     * @return the lowest groups among equals; empty if nobody follows another
     */
    public Optional<Following> mostFollowed() {
        return carryOver.graph().edgeSet().stream()
                .filter(arc -> arc.before() != arc.after())
                .min(Comparator.comparingInt((Following arc) -> -arc.times())
                        .thenComparingInt(Following::after)
                        .thenComparingInt(Following::before));
    }

    private Outcome predecessors() {
        if (possiblePredecessors() == 0 || report.mostPredecessors() == 0) {
            return Outcome.NOTE;
        }
        if (report.fewestPredecessors() == possiblePredecessors()) {
            return Outcome.HOLDS;
        }
        return report.mostPredecessors() == 1 ? Outcome.FAILS : Outcome.NOTE;
    }

    private Outcome carriedOver() {
        if (rotation.games() == 1 || report.mostPredecessors() == 0) {
            return Outcome.NOTE;
        }
        if (report.carryOverIndex() == report.carryOverMinimum()) {
            return Outcome.HOLDS;
        }
        return report.carryOverIndex() == carryOver.maximum() ? Outcome.FAILS : Outcome.NOTE;
    }
}
