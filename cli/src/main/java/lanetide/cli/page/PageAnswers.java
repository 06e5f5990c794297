package lanetide.cli.page;

import java.util.Optional;
import lanetide.cli.fairness.FairnessAnswer;
import lanetide.squads.recondition.ReoilResult;
import lanetide.squads.study.StudyResult;

/**
 * What a page tells of.
 *
 * @param study what came of playing the event
 * @param fairness whether it is fair; empty if that was not studied
 * @param reoil when to oil again; empty if that was not studied
 */
public record PageAnswers(StudyResult study, Optional<FairnessAnswer> fairness, Optional<ReoilResult> reoil) {
    /** What playing the event alone tells. */
    public static PageAnswers of(StudyResult study) {
        return new PageAnswers(study, Optional.empty(), Optional.empty());
    }
}
