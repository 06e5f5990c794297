package lanetide.cli.rotate;

import static lanetide.cli.words.English.count;
import static lanetide.cli.words.English.more;

import java.util.List;
import java.util.Locale;
import lanetide.cli.report.Figures;
import lanetide.cli.words.FindingWords;
import lanetide.squads.rotation.Move;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.check.Outcome;
import lanetide.squads.rotation.check.RotationChecks;
import lanetide.squads.rotation.check.Walk;

/** The structural checks of one squad's rotation, each a sentence with its reason. */
final class RotationCheckWords {
    private final RotationChecks checks;
    private final RotationReport report;
    private final int groups;
    private final int games;
    private final FindingWords names;

    private RotationCheckWords(RotationChecks checks, FindingWords names) {
        this.checks = checks;
        this.report = checks.report();
        this.groups = checks.rotation().groups();
        this.games = checks.rotation().games();
        this.names = names;
    }

    static List<CheckLine> of(RotationChecks checks, FindingWords names) {
        RotationCheckWords words = new RotationCheckWords(checks, names);
        return checks.codes().stream()
                .map(code -> CheckLine.of(code, checks.outcome(code), words.sentence(code, checks.outcome(code))))
                .toList();
    }

    private String sentence(RotationChecks.Code code, Outcome outcome) {
        return switch (code) {
            case PERMUTATION -> permutation();
            case REPEATED_PAIR -> repeatedPair();
            case PREDECESSORS -> predecessors(outcome);
            case CARRY_OVER -> carryOver(outcome);
            case WALKING -> walking();
            case EVEN_PAIRS -> evenPairs(outcome);
            case EXISTENCE -> existence();
        };
    }

    private String permutation() {
        return report.collisions().isEmpty()
                ? "In every game each group has a pair of its own."
                : names.sentence(report.collisions().get(0))
                        + more(report.collisions().size() - 1, "meeting");
    }

    private String repeatedPair() {
        if (report.repeatedVisits().isEmpty()) {
            return checks.walk().longestPairs() > 0
                    ? "Nobody comes back to a pair he has left."
                    : "Nobody leaves his pair, so nobody comes back to one.";
        }
        String first = names.sentence(report.firstRepeatedVisit().orElseThrow());
        String pairs = count(checks.pairsInUse(), "pair");
        return "The first repeated pair: " + first.substring(0, 1).toLowerCase(Locale.ROOT) + first.substring(1)
                + more(report.repeatedVisits().size() - 1, "return")
                + (checks.mustRepeat()
                        ? " With " + count(games, "game") + " on " + pairs
                                + " every rotation that moves must come back."
                        : " With " + pairs + " nobody need come back in up to " + count(checks.pairsInUse(), "game")
                                + ".");
    }

    private String predecessors(Outcome outcome) {
        if (checks.possiblePredecessors() == 0) {
            return "Nobody follows anybody in this plan.";
        }
        int fewest = report.fewestPredecessors();
        int most = report.mostPredecessors();
        if (most == 0) {
            return "Nobody follows another group: each meets only the oil it has left itself.";
        }
        String told = "Each group takes over from "
                + (fewest == most ? count(fewest, "group") : fewest + " to " + most + " groups") + " of the "
                + count(groups - 1, "other") + "; with " + count(games, "game") + " there could be "
                + checks.possiblePredecessors() + ".";
        return outcome == Outcome.FAILS ? told + " " + sole() : told;
    }

    private String sole() {
        return report.solePredecessors().isEmpty()
                ? ""
                : names.sentence(report.solePredecessors().get(0))
                        + more(report.solePredecessors().size() - 1, "group");
    }

    private String carryOver(Outcome outcome) {
        String told = "The carry-over index is " + report.carryOverIndex() + "; evenly spread it would be "
                + report.carryOverMinimum() + ", at worst " + checks.carryOver().maximum() + ".";
        return told
                + switch (outcome) {
                    case HOLDS -> " Nobody can complain about whom he follows.";
                    case FAILS ->
                        " This is the worst there is: every group follows one and the same group at every move, and meets its"
                                + " oil alone.";
                    case NOTE ->
                        games == 1 || report.mostPredecessors() == 0
                                ? " No group meets another's oil."
                                : " " + mostFollowed();
                };
    }

    private String mostFollowed() {
        return checks.mostFollowed()
                .map(arc -> "Most often " + names.group().apply(arc.after()) + " follows "
                        + names.group().apply(arc.before()) + ": " + count(arc.times(), "time") + ".")
                .orElse("");
    }

    private String walking() {
        Walk walk = checks.walk();
        if (walk.longestPairs() == 0) {
            return "Nobody walks.";
        }
        Move longest = walk.longest().orElseThrow();
        String pairs = Figures.plain(walk.longestPairs(), 1) + (walk.longestPairs() == 1 ? " pair" : " pairs");
        return "A move is " + String.format(Locale.ROOT, "%.1f", walk.pairsPerGame())
                + " pairs long on average. The longest, " + pairs + ": "
                + names.group().apply(longest.group())
                + " walks from " + names.pair().apply(longest.from().pair()) + " to "
                + names.pair().apply(longest.to().pair()) + " after game "
                + (longest.from().game() + 1) + ".";
    }

    private String evenPairs(Outcome outcome) {
        int pairs = checks.pairsInUse();
        if (pairs < 3) {
            return "Too few pairs for lanes that move opposite ways.";
        }
        return "If left-lane players moved 1 pair left and right-lane players 1 right (common practice, no source), each would meet "
                + checks.opponents() + " of " + pairs + " opposite groups in " + count(pairs, "game") + "."
                + (outcome == Outcome.HOLDS
                        ? " An odd number of pairs lets everybody meet."
                        : " An even number of pairs is the hazard: each of them would be met twice and the other half never;"
                                + " with one pair more or less all would meet.");
    }

    private String existence() {
        String each = count(groups, "group") + " on " + count(groups, "pair")
                + ", each once on each pair and each following each other exactly once";
        String twice = " `balanced` does it over " + 2 * groups
                + " games, each pair twice and each following twice; one group more or less makes it possible in one round.";
        return switch (checks.existence()) {
            case AVAILABLE -> "A rotation exists for " + each + ": `balanced`, in " + count(groups, "game") + ".";
            case NONE ->
                "Impossible for " + each + ": no rotation of " + groups + " games does it (every one was tried)."
                        + twice;
            case KNOWN_ELSEWHERE ->
                "A rotation is said to exist for " + each + ", but this program has no rule for it." + twice;
            case UNKNOWN -> "This program knows of no rotation for " + each + "." + twice;
        };
    }
}
