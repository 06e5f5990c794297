package lanetide.oilflow.film;

/** The film-splitting laws a scenario can choose from, with their usual values. */
public enum SplitModel {
    /** {@link ForwardRollSplit}, the usual one. */
    FORWARD_ROLL("forward-roll") {
        @Override
        public FilmSplit law(double coveragePerUm) {
            return new ForwardRollSplit(coveragePerUm);
        }
    },
    /** {@link WalkerFetskoSplit}. */
    WALKER_FETSKO("walker-fetsko") {
        @Override
        public FilmSplit law(double coveragePerUm) {
            return WalkerFetskoSplit.covering(coveragePerUm);
        }
    },
    /** Lanes stay as they were laid, whatever law governs a ball on its way. For asking what their change does. */
    NONE("none") {
        @Override
        public FilmSplit law(double coveragePerUm) {
            return FilmSplit.NONE;
        }
    };

    private final String id;

    SplitModel(String id) {
        this.id = id;
    }

    /**
     * The name scenarios use.
     *
     * @return the name
     */
    public String id() {
        return id;
    }

    /**
     * The law.
     *
     * @param coveragePerUm coverage of a thin film (1/um), above 0 to 1000; a law without transfer has none
     * @return the law with this coverage, its other values as usual
     */
    public abstract FilmSplit law(double coveragePerUm);

    /**
     * The law with its usual values.
     *
     * @return the law
     */
    public FilmSplit law() {
        return law(ForwardRollSplit.DEFAULT_COVERAGE_PER_UM);
    }
}
