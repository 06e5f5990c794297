package lanetide.squads.study;

/**
 * How well scores are known after playing until they should be known well enough.
 *
 * @param wantedPins half the width that was wanted (pins a game)
 * @param reachedPins half the width of the widest 95 % interval of a squad's mean score (pins a game)
 * @param met whether that is narrow enough
 * @param projected playings it would roughly take, or the number played if it is narrow enough
 */
public record Precision(double wantedPins, double reachedPins, boolean met, long projected) {}
