package lanetide.cli.report.page;

import java.util.Optional;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.play.StudyResult;
import lanetide.squads.recondition.ReoilResult;

/**
 * What a page tells of.
 *
 * @param study what came of playing the event
 * @param fairness whether it is fair; empty if that was not studied
 * @param reoil when to oil again; empty if that was not studied
 */
public record PageAnswers(StudyResult study, Optional<FairnessResult> fairness, Optional<ReoilResult> reoil) {}
