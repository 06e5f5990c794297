package lanetide.cli.scenario.key;

import java.util.Locale;

/** Whether a listed bowler comes. */
public enum Presence {
    /** He bowls. */
    YES,
    /** He stays away. */
    NO,
    /** He bowls in the place of one who stays away. */
    WAITING;

    /** The word as a scenario has it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
