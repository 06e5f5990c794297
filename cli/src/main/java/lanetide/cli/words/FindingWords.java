package lanetide.cli.words;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import lanetide.squads.rotation.Collision;
import lanetide.squads.rotation.RepeatedVisit;
import lanetide.squads.rotation.RotationFinding;
import lanetide.squads.rotation.SolePredecessor;

/**
 * Findings on a rotation in sentences, with what its groups and pairs are called.
 *
 * @param group the name of a group counted from zero, worded to stand inside a sentence
 * @param pair the name of a pair counted from zero, worded likewise
 */
public record FindingWords(IntFunction<String> group, IntFunction<String> pair) {
    /**
     * A finding in words; games are numbered from one.
     *
     * @param finding a finding
     * @return one sentence
     */
    public String sentence(RotationFinding finding) {
        if (finding instanceof Collision collision) {
            return "Game " + (collision.game() + 1) + ": "
                    + collision.groups().stream().map(group::apply).collect(Collectors.joining(" and "))
                    + " are sent to " + pair.apply(collision.pair()) + " together.";
        }
        if (finding instanceof RepeatedVisit visit) {
            return "Game " + (visit.againGame() + 1) + ": " + group.apply(visit.group()) + " is back on "
                    + pair.apply(visit.pair()) + ", where it bowled in game " + (visit.firstGame() + 1) + ".";
        }
        SolePredecessor sole = (SolePredecessor) finding;
        return "Each of the " + sole.times() + " times " + group.apply(sole.group())
                + " takes over a pair from another group, it is from " + group.apply(sole.predecessor()) + ".";
    }
}
