package lanetide.squads.rotation.design;

import lanetide.squads.rotation.ImpossibleRotationException;

/** Moves along the row of pairs, checked. */
final class Steps {

    private Steps() {}

    static void requireNonZero(int step) {
        if (step == 0) {
            throw new ImpossibleRotationException(
                    "step", step, "other than 0", "Let the groups stay if nobody is to move.");
        }
    }
}
