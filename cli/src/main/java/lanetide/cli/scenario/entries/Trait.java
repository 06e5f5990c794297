package lanetide.cli.scenario.entries;

import java.util.Locale;
import java.util.Set;

/** What may be drawn of a bowler of whom the entries do not say it. */
public enum Trait {
    /** The side he delivers from. */
    HAND,
    /** How he plays. */
    STYLE,
    /** How good he is. */
    LEVEL,
    /** The cover of his strike ball. */
    COVER,
    /** The time he takes over a shot. */
    TEMPO;

    /**
     * The name as scenarios write it.
     *
     * @return the key of an entry, such as {@code style}
     */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * A bowler's kind as an answer shows it.
     *
     * @param kind what he is taken for, in words
     * @param drawn what was drawn of him
     * @return the words, marked if this trait was drawn
     */
    public String shown(String kind, Set<Trait> drawn) {
        return drawn.contains(this) ? kind + " (drawn)" : kind;
    }
}
