package lanetide.squads.draw;

/** What a draw spreads evenly. */
public enum Rule {
    /** Left-handers. */
    HANDS,
    /** Playing styles. */
    STYLES,
    /** The mean average, of those whose average is known. */
    AVERAGES
}
