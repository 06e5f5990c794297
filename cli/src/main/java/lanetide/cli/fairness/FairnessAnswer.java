package lanetide.cli.fairness;

import java.util.List;
import java.util.Optional;
import lanetide.squads.fairness.Bounds;
import lanetide.squads.fairness.FairnessComparison;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.measure.WhatToMeasure;
import lanetide.squads.study.WearStudy;

/**
 * All that {@code fairness} found.
 *
 * @param result what came of the study
 * @param bounds the same if bowlers followed the lanes otherwise; empty if that was not asked for
 * @param remedies changes that could mend it; empty if none were tried
 * @param measure what the least sure advantage hangs on and what would narrow it; empty if that was not asked for
 * @param late what late changes do to the event as planned; empty without any
 * @param wear what each stretch of the worn lanes does to squads and styles; empty where that was not looked at
 * @param withoutCut whether the cut is left out, because late changes let a squad go on in two parts
 */
public record FairnessAnswer(
        FairnessResult result,
        Optional<Bounds> bounds,
        List<Remedy> remedies,
        Optional<WhatToMeasure> measure,
        Optional<FairnessComparison> late,
        List<WearStudy.Wear> wear,
        boolean withoutCut) {
    /**
     * What a study alone found.
     *
     * @param result what came of it
     * @return the answer
     */
    public static FairnessAnswer of(FairnessResult result) {
        return new FairnessAnswer(
                result, Optional.empty(), List.of(), Optional.empty(), Optional.empty(), List.of(), false);
    }

    /** Copies the lists. */
    public FairnessAnswer {
        wear = List.copyOf(wear);
        remedies = List.copyOf(remedies);
    }
}
