package lanetide.squads.fairness;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.NestedMean;
import lanetide.squads.qualifying.CutChances;

/**
 * Whether an event is fair.
 *
 * @param plan how it was studied
 * @param playings how often it was played
 * @param rounds independent rounds in these playings
 * @param verdict of the whole event
 * @param effects all advantages, by kind, then in the event's order
 * @param evenness how evenly the advantages of the groups are spread; empty for a single group
 * @param playingsToDecide how many playings in all would decide with 90 % chance, if the advantages are about what they
 *     look like now; empty if decided, or if not even a thousand times as many would
 * @param sets sets of values that the rounds went through in turn; 1 if all values were as usual
 * @param beyondPlaying whether it is undecided and would remain so however often the event were played, since too much
 *     is not known
 * @param reasons facts that go with the advantages; empty where scores do not come from a simulation
 * @param estimates the advantages round by round
 * @param cut what the cut does to whom; empty if the event has none
 */
public record FairnessResult(
        FairnessPlan plan,
        int playings,
        int rounds,
        Verdict verdict,
        List<Effect> effects,
        Optional<Evenness> evenness,
        OptionalInt playingsToDecide,
        int sets,
        boolean beyondPlaying,
        List<Reason> reasons,
        EffectEstimates estimates,
        Optional<CutChances> cut) {
    /** Copies the lists. */
    public FairnessResult {
        effects = List.copyOf(effects);
        reasons = List.copyOf(reasons);
    }

    static FairnessResult of(EffectEstimates found, FairnessPlan plan, int playings) {
        VerdictRule rule = new VerdictRule(plan.marginPins());
        List<Effect> effects = rule.judge(found);
        Verdict verdict = VerdictRule.overall(effects);
        boolean undecided = verdict == Verdict.UNDECIDED;
        boolean beyondPlaying = undecided && found.sets() > 1 && rule.isBeyondPlaying(found);
        int perRound = playings / found.rounds();
        OptionalInt rounds = undecided && !beyondPlaying
                ? new Forecast(found, plan.marginPins()).roundsToDecide(new RandomStreams(plan.seed()))
                : OptionalInt.empty();
        return new FairnessResult(
                plan,
                playings,
                found.rounds(),
                verdict,
                effects,
                Optional.ofNullable(found.estimates().get(EffectKind.GROUP)).map(Evenness::of),
                rounds.isPresent() ? OptionalInt.of(roundedUp(rounds.getAsInt() * perRound)) : rounds,
                found.sets(),
                beyondPlaying,
                List.of(),
                found,
                Optional.empty());
    }

    /** To two digits, since the forecast is no surer than that. */
    private static int roundedUp(int playings) {
        return new BigDecimal(playings)
                .round(new MathContext(2, RoundingMode.CEILING))
                .intValueExact();
    }

    /**
     * What everybody scores where he is drawn.
     *
     * @return the mean over bowlers and playings (pins a game)
     */
    public double meanScore() {
        return estimates.meanScore();
    }

    /**
     * An advantage and what luck does to it.
     *
     * @param kind what it goes with
     * @param id name of its class
     * @param luckVariance variance of a round's own value by luck (pins squared)
     */
    public record LeastSure(EffectKind kind, String id, double luckVariance) {}

    /**
     * The advantage of a squad, or of a style where there is one squad, of which most is not known for certain: its
     * variance between sets less two of that variance's own errors.
     *
     * @return that advantage; empty if the event has neither two squads nor two styles
     */
    public Optional<LeastSure> leastSure() {
        return Stream.of(EffectKind.SQUAD, EffectKind.STYLE)
                .filter(estimates.estimates()::containsKey)
                .findFirst()
                .map(kind -> {
                    Estimate estimate = estimates.estimates().get(kind);
                    int least = IntStream.range(0, estimate.classes())
                            .boxed()
                            .max(Comparator.comparingDouble(index -> notKnownAtLeast(estimate.nested(index))))
                            .orElseThrow();
                    return new LeastSure(
                            kind,
                            estimates.classes(kind).ids().get(least),
                            estimate.nested(least).within());
                });
    }

    private static double notKnownAtLeast(NestedMean found) {
        double error = Math.sqrt(2 / Math.max(1, found.groups() - 1.0)) * found.spread();
        return found.between() - 2 * error;
    }

    /**
     * An advantage round by round.
     *
     * @param kind what it goes with
     * @param id name of its class
     * @return pins a game, by round
     * @throws IllegalArgumentException if there is no such advantage
     */
    public double[] byRound(EffectKind kind, String id) {
        Estimate estimate = estimates.estimates().get(kind);
        int index = estimate == null ? -1 : estimates.classes(kind).ids().indexOf(id);
        if (index < 0) {
            throw new IllegalArgumentException("no advantage of " + kind + " " + id);
        }
        return estimate.ofClass(index);
    }

    FairnessResult because(List<Reason> found) {
        return new FairnessResult(
                plan,
                playings,
                rounds,
                verdict,
                effects,
                evenness,
                playingsToDecide,
                sets,
                beyondPlaying,
                found,
                estimates,
                cut);
    }

    FairnessResult with(CutChances found) {
        return new FairnessResult(
                plan,
                playings,
                rounds,
                verdict,
                effects,
                evenness,
                playingsToDecide,
                sets,
                beyondPlaying,
                reasons,
                estimates,
                Optional.of(found));
    }
}
