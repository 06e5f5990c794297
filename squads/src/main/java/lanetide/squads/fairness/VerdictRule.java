package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanetide.des.stats.EquivalenceTest;
import lanetide.des.stats.Holm;
import lanetide.des.stats.MeanEstimate;
import lanetide.des.stats.NestedMean;

/**
 * From estimates to verdicts.
 *
 * <p>An advantage is <em>fair</em> if its 90 % interval lies within the margin, which is the two one-sided tests at 5 %
 * each (D. J. Schuirmann, "A comparison of the two one-sided tests procedure and the power approach for assessing the
 * equivalence of average bioavailability", Journal of Pharmacokinetics and Biopharmaceutics 15, 1987). It is
 * <em>unfair</em> if it is shown to lie beyond the margin at 5 % after Holm's correction over all advantages of the
 * event (S. Holm, "A simple sequentially rejective multiple test procedure", Scandinavian Journal of Statistics 6,
 * 1979): an event whose every advantage lies within the margin is called unfair, anywhere, in at most one study of
 * twenty.
 *
 * <p>The event is unfair if any advantage is, and fair if all are. The second needs no correction, since every single
 * one of them has to pass (R. L. Berger, "Multiparameter hypothesis testing and acceptance sampling", Technometrics 24,
 * 1982).
 */
record VerdictRule(double marginPins) {
    /** Level of every test. */
    static final double ALPHA = 0.05;

    List<Effect> judge(EffectEstimates found) {
        List<Judged> all = new ArrayList<>();
        found.estimates().forEach((kind, estimate) -> {
            for (int c = 0; c < estimate.classes(); c++) {
                all.add(new Judged(kind, c, estimate));
            }
        });
        double[] unfair = Holm.adjust(
                all.stream().mapToDouble(judged -> beyond(judged.estimate())).toArray());
        List<Effect> effects = new ArrayList<>();
        for (int i = 0; i < unfair.length; i++) {
            effects.add(effect(all.get(i), found.classes(all.get(i).kind()), unfair[i]));
        }
        return effects;
    }

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Judged(EffectKind kind, int index, NestedMean mean, double[] rounds) {
        Judged(EffectKind kind, int index, Estimate estimate) {
            this(kind, index, estimate.nested(index), estimate.ofClass(index));
        }

        MeanEstimate estimate() {
            return mean.truth();
        }
    }

    private Effect effect(Judged judged, Classes classes, double unfairP) {
        EquivalenceTest fair = EquivalenceTest.about0(judged.estimate(), marginPins);
        Verdict verdict =
                unfairP <= ALPHA ? Verdict.UNFAIR : fair.isEquivalent(ALPHA) ? Verdict.FAIR : Verdict.UNDECIDED;
        return new Effect(
                judged.kind(),
                classes.ids().get(judged.index()),
                classes.size(judged.index()),
                judged.estimate().value(),
                judged.estimate().standardError(),
                fair.interval(ALPHA),
                judged.mean().luck().interval(1 - 2 * ALPHA),
                judged.mean().signShare(judged.rounds()),
                unfairP,
                verdict);
    }

    /**
     * Probability of an estimate so far beyond the margin, on either side, if the true value were just the margin: the
     * least favourable of all values within it.
     */
    double beyond(MeanEstimate estimate) {
        MeanEstimate size =
                new MeanEstimate(Math.abs(estimate.value()), estimate.standardError(), estimate.degreesOfFreedom());
        double near = size.twoSidedP(marginPins) / 2;
        double far = size.twoSidedP(-marginPins) / 2;
        return Math.min(1, (size.value() > marginPins ? near : 1 - near) + far);
    }

    /** Whether it would remain undecided however often the event were played, since too much is not known. */
    boolean isBeyondPlaying(EffectEstimates found) {
        List<MeanEstimate> sure = new ArrayList<>();
        found.estimates().values().forEach(estimate -> {
            for (int c = 0; c < estimate.classes(); c++) {
                sure.add(estimate.nested(c).withoutLuck());
            }
        });
        double[] unfair = Holm.adjust(sure.stream().mapToDouble(this::beyond).toArray());
        return Arrays.stream(unfair).allMatch(p -> p > ALPHA)
                && !sure.stream()
                        .allMatch(estimate ->
                                EquivalenceTest.about0(estimate, marginPins).isEquivalent(ALPHA));
    }

    /** The verdict of the event from those of its advantages. */
    static Verdict overall(List<Effect> effects) {
        if (effects.stream().anyMatch(effect -> effect.verdict() == Verdict.UNFAIR)) {
            return Verdict.UNFAIR;
        }
        return effects.stream().allMatch(effect -> effect.verdict() == Verdict.FAIR) ? Verdict.FAIR : Verdict.UNDECIDED;
    }
}
