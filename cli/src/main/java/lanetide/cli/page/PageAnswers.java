package lanetide.cli.page;

import java.util.List;
import java.util.Optional;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.recondition.ReoilResult;
import lanetide.squads.study.StudyResult;

/**
 * What a page tells of.
 *
 * @param study what came of playing the event
 * @param fairness whether it is fair; empty if that was not studied
 * @param remedies changes that could make it fairer; empty if none were tried
 * @param reoil when to oil again; empty if that was not studied
 */
public record PageAnswers(
        StudyResult study, Optional<FairnessResult> fairness, List<Remedy> remedies, Optional<ReoilResult> reoil) {
    /** Copies the list. */
    public PageAnswers {
        remedies = List.copyOf(remedies);
    }

    /** What playing the event alone tells. */
    public static PageAnswers of(StudyResult study) {
        return new PageAnswers(study, Optional.empty(), List.of(), Optional.empty());
    }
}
