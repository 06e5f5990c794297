package lanetide.squads.rotation.check;

/**
 * One thing that can be told of a rotation from the plan alone, exactly.
 *
 * @param code what is looked at; never changes between versions
 * @param outcome how it stands
 * @param text the same in words, with the reason
 */
public record StructuralCheck(String code, Outcome outcome, String text) {

    /** How a check came out. */
    public enum Outcome {
        /** As good as it can be. */
        HOLDS,
        /** Wrong, or as bad as it can be. */
        FAILS,
        /** Between, or neither good nor bad. */
        NOTE
    }

    static StructuralCheck holds(String code, String text) {
        return new StructuralCheck(code, Outcome.HOLDS, text);
    }

    static StructuralCheck fails(String code, String text) {
        return new StructuralCheck(code, Outcome.FAILS, text);
    }

    static StructuralCheck note(String code, String text) {
        return new StructuralCheck(code, Outcome.NOTE, text);
    }
}
