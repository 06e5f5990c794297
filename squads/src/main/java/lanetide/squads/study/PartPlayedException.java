package lanetide.squads.study;

/** A run that plays one share of a study has played it, and can go no further without the others. */
public final class PartPlayedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int known;
    private final int all;

    /** So many of all playings of the study are known now. */
    PartPlayedException(int known, int all) {
        super("playings " + known + " of " + all);
        this.known = known;
        this.all = all;
    }

    /**
     * How far the study is.
     *
     * @return number of its playings that are known
     */
    public int known() {
        return known;
    }

    /**
     * How long the study is.
     *
     * @return number of all its playings
     */
    public int all() {
        return all;
    }
}
