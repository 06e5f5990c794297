package lanetide.oilflow.line;

/** How a line was chosen out of the valley of lines that meet the pocket. */
public enum LineBasis {
    /** The style's home line on the pattern, moved two and one to the pocket of the lane at hand. */
    NATURAL,
    /** The line that strikes most often, whatever its launch angle. */
    FREE,
    /** The best line on the other track, where one launch angle has two: an outer one and an inner one. */
    OTHER_TRACK
}
