package lanetide.squads.fairness;

/** What the numbers allow to be said. */
public enum Verdict {
    /** Shown to lie within the margin. */
    FAIR,
    /** Shown to lie beyond the margin. */
    UNFAIR,
    /** Neither is shown yet. */
    UNDECIDED
}
