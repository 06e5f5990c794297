package lanetide.squads.rotation.check;

/** How a check came out. */
public enum Outcome {
    /** As good as it can be. */
    HOLDS,
    /** Wrong, or as bad as it can be. */
    FAILS,
    /** Between, or neither good nor bad. */
    NOTE
}
