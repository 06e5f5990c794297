package lanetide.squads.fairness;

/**
 * A fact that goes with an advantage.
 *
 * @param code kind of fact; never changes between versions
 * @param text the fact in one or two sentences
 */
public record Reason(String code, String text) {}
