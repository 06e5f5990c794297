package lanetide.oilflow.film;

import lanetide.oilflow.lane.Hand;

/**
 * An oil pattern: how much oil a machine lays, how far, and how it is spread. Given by what its sheet states
 * ({@link SheetPattern}) or by what tapes read ({@link TapePattern}); never by a machine's program.
 */
public sealed interface OilPattern permits SheetPattern, TapePattern {
    /** Shortest pattern (m from the foul line). */
    double MIN_LENGTH_M = 6;

    /** Longest pattern (m from the foul line): 58 ft. */
    double MAX_LENGTH_M = 17.7;

    /** Least oil on one lane (mL): of less, spread over a pattern, no tape would find any (assumption). */
    double MIN_ML = 0.1;

    /** Most oil on one lane (mL). */
    double MAX_ML = 60;

    /**
     * Exponent of the lengthwise fall: with it the heads hold what tapes on competition patterns found (chosen, with
     * the other values: see the module's README).
     */
    double DEFAULT_DECAY = 5.673;

    /** Share left where the applied oil ends (chosen in the same way). */
    double DEFAULT_FLOOR = 0.06499;

    /** Share of the foul-line film left at the end of a buffed part, unless it is stated (assumption). */
    double DEFAULT_BUFF_TO = 0.05;

    /**
     * A pattern with the usual taper and lengthwise shape, alike from both gutters.
     *
     * @param id its name
     * @param lengthM length (m)
     * @param volumeMl volume (mL)
     * @param ratio ratio
     * @return the pattern
     */
    static SheetPattern of(String id, double lengthM, double volumeMl, double ratio) {
        AcrossShape across = AcrossShape.usual(ratio, lengthM);
        return new SheetPattern(
                id, lengthM, volumeMl, across, across, AlongShape.unbuffed(DEFAULT_DECAY, DEFAULT_FLOOR, lengthM));
    }

    /**
     * Its name.
     *
     * @return name by which scenarios choose it
     */
    String id();

    /**
     * Where the oil ends.
     *
     * @return metres from the foul line
     */
    double lengthM();

    /**
     * Oil on one lane.
     *
     * @return millilitres
     */
    double volumeMl();

    /**
     * Where the inside of the pattern begins.
     *
     * @param gutter the gutter boards are counted from
     * @return board from that gutter from which on the film counts as flat
     */
    double flatFromBoard(Hand gutter);

    /**
     * Whether both halves are mirror images.
     *
     * @return true if the film is the same from both gutters
     */
    boolean isSymmetric();

    /**
     * Whether a board belongs to the inside of the pattern.
     *
     * @param board whole board from the right-hand gutter, 1 to 39
     * @return true from {@link #flatFromBoard} of the nearer gutter on
     */
    default boolean isInside(int board) {
        return board <= 20 ? board >= flatFromBoard(Hand.RIGHT) : 40 - board >= flatFromBoard(Hand.LEFT);
    }
}
