package lanetide.oilflow.film;

/** The film-splitting laws a scenario can choose from, with their usual values. */
public enum SplitModel {
    /** {@link ForwardRollSplit}, the usual one. */
    FORWARD_ROLL("forward-roll") {
        @Override
        public FilmSplit law() {
            return new ForwardRollSplit(ForwardRollSplit.DEFAULT_COVERAGE_PER_UM);
        }
    },
    /** {@link WalkerFetskoSplit}. */
    WALKER_FETSKO("walker-fetsko") {
        @Override
        public FilmSplit law() {
            return WalkerFetskoSplit.usual();
        }
    },
    /** Lanes stay as they were laid, whatever law governs a ball on its way. For asking what their change does. */
    NONE("none") {
        @Override
        public FilmSplit law() {
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
     * @return a law with its usual values
     */
    public abstract FilmSplit law();
}
