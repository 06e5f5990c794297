package lanetide.cli.scenario.notice;

import java.util.Locale;

/** Every kind of notice. The written code is the constant's name in lower case and never changes its meaning. */
public enum NoticeCode {
    /** The file is larger than a scenario can be. */
    FILE_TOO_LARGE(Severity.ERROR),
    /** The file holds no scenario. */
    FILE_EMPTY(Severity.ERROR),
    /** The file is not UTF-8 text. */
    FILE_NOT_TEXT(Severity.ERROR),
    /** The file is not YAML. */
    SYNTAX_ERROR(Severity.ERROR),
    /** A line is indented with a tab, which YAML does not allow. */
    TAB_INDENTATION(Severity.ERROR),
    /** Lists or maps stand inside each other deeper than any scenario needs. */
    NESTING_TOO_DEEP(Severity.ERROR),
    /** A YAML anchor or alias, which a scenario does not need. */
    ALIAS_REFUSED(Severity.ERROR),
    /** A YAML tag, which a scenario does not need. */
    TAG_REFUSED(Severity.ERROR),
    /** More than one YAML document in the file. */
    SEVERAL_DOCUMENTS(Severity.ERROR),
    /** A key appears twice in one block. */
    DUPLICATE_KEY(Severity.ERROR),
    /** A key that does not exist, or not here. */
    UNKNOWN_KEY(Severity.ERROR),
    /** A key that must be there is not. */
    MISSING_KEY(Severity.ERROR),
    /** Two keys that exclude each other. */
    CONFLICTING_KEYS(Severity.ERROR),
    /** A key without a value. */
    EMPTY_VALUE(Severity.ERROR),
    /** A list, a block or a single value stands where another of the three is expected. */
    WRONG_KIND(Severity.ERROR),
    /** A text holds characters that do not print, or is too long. */
    BAD_TEXT(Severity.ERROR),
    /** A text stands where a number is expected. */
    NOT_A_NUMBER(Severity.ERROR),
    /** A number that is infinite or undefined. */
    NOT_FINITE(Severity.ERROR),
    /** A number with a fraction where only whole numbers make sense. */
    NOT_WHOLE(Severity.ERROR),
    /** A number without its unit. */
    UNIT_MISSING(Severity.ERROR),
    /** A unit that does not belong to the quantity. */
    WRONG_UNIT(Severity.ERROR),
    /** A number below zero where that makes no sense. */
    NEGATIVE_VALUE(Severity.ERROR),
    /** Zero where that makes no sense. */
    ZERO_VALUE(Severity.ERROR),
    /** A number outside its limits. */
    OUT_OF_RANGE(Severity.ERROR),
    /** A time of day that no clock shows. */
    BAD_TIME(Severity.ERROR),
    /** A range of lanes or a pair of lanes that cannot be read. */
    BAD_LANES(Severity.ERROR),
    /** A name that is neither shipped nor defined in the scenario. */
    UNKNOWN_NAME(Severity.ERROR),
    /** A name that must be unique appears twice. */
    DUPLICATE_NAME(Severity.ERROR),
    /** Shares that are not 100 % together. */
    SHARES_NOT_100(Severity.ERROR),
    /** A ratio that the pattern's taper cannot give. */
    TAPER_CANNOT_GIVE_RATIO(Severity.ERROR),
    /** Fewer tape readings, or on fewer boards, than a pattern can be drawn from. */
    TOO_FEW_READINGS(Severity.ERROR),
    /** Tapes that have not one reading for every board at every distance. */
    READINGS_INCOMPLETE(Severity.ERROR),
    /** Two readings of one place. */
    READING_TWICE(Severity.ERROR),
    /** Tapes that cannot hold the stated volume, whatever their error bar. */
    TAPES_CONTRADICT_VOLUME(Severity.ERROR),
    /** Tapes that find oil past the stated length. */
    TAPES_CONTRADICT_LENGTH(Severity.ERROR),
    /** A file named in a scenario that is not beside it. */
    NAMED_FILE_MISSING(Severity.ERROR),
    /** A table without a column it must have. */
    COLUMN_MISSING(Severity.ERROR),
    /** A table of measurements that holds none that is known. */
    TABLE_KIND_UNKNOWN(Severity.ERROR),
    /** A table that holds two kinds of measurements. */
    TABLE_OF_TWO_KINDS(Severity.ERROR),
    /** Two tables of measurements that hold the same. */
    TABLE_TWICE(Severity.ERROR),
    /** Two scores of one bowler in one game. */
    SCORE_TWICE(Severity.ERROR),
    /** A file that a scenario names as its centre's, and that is no centre file. */
    NO_CENTRE_FILE(Severity.ERROR),
    /** A centre file that was fitted from other sets of values than ship with this program. */
    CENTRE_FILE_OLD(Severity.ERROR),
    /** A lane in two pairs, or a pair named twice. */
    LANE_TWICE(Severity.ERROR),
    /** A pair of lanes that do not adjoin. */
    LANES_NOT_ADJOINING(Severity.ERROR),
    /** A range of lanes that leaves one without a partner. */
    LANES_ODD(Severity.ERROR),
    /** A pair that is not among the centre's pairs. */
    UNKNOWN_PAIR(Severity.ERROR),
    /** A lane that is not in use. */
    UNKNOWN_LANE(Severity.ERROR),
    /** A pair that is closed or kept spare, and yet to be used. */
    PAIR_NOT_IN_USE(Severity.ERROR),
    /** More bowlers than the pairs hold. */
    TOO_MANY_BOWLERS(Severity.ERROR),
    /** A squad in which nobody bowls. */
    SQUAD_WITHOUT_BOWLERS(Severity.ERROR),
    /** An entry for which a draw into squads finds no room. */
    NO_SQUAD_LEFT(Severity.ERROR),
    /** A group number that is skipped. */
    GROUP_MISSING(Severity.ERROR),
    /** Partners who are listed in different squads. */
    PARTNERS_IN_SQUADS(Severity.ERROR),
    /** Squads that are not listed in order of start. */
    SQUADS_OUT_OF_ORDER(Severity.ERROR),
    /** A squad that starts before the one before it can possibly be done. */
    SQUAD_OVERLAPS(Severity.ERROR),
    /** The first squad would find bare lanes. */
    FIRST_SQUAD_WITHOUT_OIL(Severity.ERROR),
    /** A rotation that cannot serve these groups, pairs and games. */
    ROTATION_IMPOSSIBLE(Severity.ERROR),
    /** Two groups on one pair in one game. */
    ROTATION_COLLISION(Severity.ERROR),
    /** A ball that the governing body's rules do not allow. */
    BALL_BEYOND_RULES(Severity.ERROR),
    /** A group would come back to a pair, and the scenario forbids it. */
    ROTATION_REPEATS_FORBIDDEN(Severity.ERROR),
    /** A pattern for a squad before which nothing is oiled. */
    PATTERN_NEVER_LAID(Severity.ERROR),
    /** A squad that would find lanes that are cleaned and not oiled, or that nobody has oiled. */
    BARE_LANES(Severity.ERROR),
    /** A group whose lane fails would have no pair to go to. */
    NO_SPARE_PAIR(Severity.ERROR),
    /** More lanes would be worked on at once than there are machines. */
    TOO_FEW_MACHINES(Severity.ERROR),
    /** A break that takes longer than all the games of its squad. */
    BREAK_TOO_LONG(Severity.ERROR),
    /** Values that are each allowed but not together. */
    IMPOSSIBLE_COMBINATION(Severity.ERROR),
    /** Something could not be looked at because of what is wrong elsewhere. */
    NOT_ALL_CHECKED(Severity.WARNING),
    /** A squad that starts before the one before it is expected to be done and the lanes made ready. */
    SQUAD_MAY_OVERLAP(Severity.WARNING),
    /** A squad that is expected to be done after the centre closes. */
    ENDS_AFTER_CLOSING(Severity.WARNING),
    /** A squad whose lanes cannot be made ready from midnight of the first day on. */
    LANES_NOT_READY(Severity.WARNING),
    /** Lane machines that are still at work for another squad when they are to begin. */
    MACHINES_AT_WORK(Severity.WARNING),
    /** A break at a time when its squad will be done. */
    BREAK_AFTER_END(Severity.WARNING),
    /** A bowler who comes when his squad will be done. */
    ARRIVES_AFTER_END(Severity.WARNING),
    /** Lane machines that are slower than published. */
    LANE_TIME_LONG(Severity.WARNING),
    /** A group comes back to a pair it has left. */
    ROTATION_REPEATS_PAIRS(Severity.WARNING),
    /** Pairs on which nobody bowls. */
    PAIRS_EMPTY(Severity.WARNING),
    /** Partners who are listed in different groups. */
    PARTNERS_APART(Severity.WARNING),
    /** A bowler with partners of whom none is listed. */
    PARTNER_ALONE(Severity.WARNING),
    /** A cut over squads that play different numbers of games. */
    CUT_GAMES_DIFFER(Severity.WARNING),
    /** Shares that miss 100 % by rounding and are scaled. */
    SHARES_ROUNDED(Severity.WARNING),
    /** A pair whose left lane has an even number. */
    PAIR_STARTS_EVEN(Severity.WARNING),
    /** A value that changes nothing. */
    VALUE_WITHOUT_EFFECT(Severity.WARNING),
    /** A table of balls without a column that would tell more of them. */
    COLUMN_LEFT_OUT(Severity.WARNING),
    /** A value that is allowed, and that nothing in use has. */
    IMPLAUSIBLE_VALUE(Severity.WARNING),
    /** A film thicker than those that the laws of friction were held to. */
    FILM_BEYOND_FRICTION(Severity.WARNING),
    /** A style that finds no line to the pocket on the fresh pattern. */
    NO_LINE_TO_POCKET(Severity.WARNING),
    /** Mean scores that bowlers do not bowl. */
    MEANS_UNHEARD_OF(Severity.WARNING),
    /** A ball beyond a limit that the governing body sets for another state or test of it. */
    BEYOND_PUBLISHED_LIMIT(Severity.WARNING),
    /** A command that has no answer for the scenario. */
    COMMAND_WITHOUT_ANSWER(Severity.INFO),
    /** A group takes over pairs from one and the same group only. */
    ROTATION_SAME_PREDECESSOR(Severity.INFO),
    /** Partners of different numbers, whose totals do not compare. */
    TEAMS_UNEVEN(Severity.INFO),
    /** Groups that are not all of one size. */
    GROUPS_UNEVEN(Severity.INFO),
    /** The squads that entries name, where the scenario has none. */
    SQUADS_IN_LIST(Severity.INFO),
    /** Bowlers who are listed in more than one squad. */
    BOWLS_AGAIN(Severity.INFO),
    /** A squad whose groups were drawn by lot, and how even they came out. */
    DRAWN_BY_LOT(Severity.INFO),
    /** A column of a table that is not read. */
    COLUMN_IGNORED(Severity.INFO),
    /** A scenario's own values under a shipped name. */
    SHIPPED_NAME_REPLACED(Severity.INFO);

    private final Severity severity;

    NoticeCode(Severity severity) {
        this.severity = severity;
    }

    /**
     * How much notices of this kind matter.
     *
     * @return the severity
     */
    public Severity severity() {
        return severity;
    }

    /**
     * Whether notices of this kind make an answer doubtful, so that every answer tells them.
     *
     * @return true if what is played lies beyond what the model was held to
     */
    public boolean isDoubt() {
        return this == IMPLAUSIBLE_VALUE
                || this == FILM_BEYOND_FRICTION
                || this == NO_LINE_TO_POCKET
                || this == MEANS_UNHEARD_OF;
    }

    /**
     * The code as reports write it.
     *
     * @return for example {@code unknown_key}
     */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
