package lanetide.cli.report;

/** What an exit window is, in one sentence for all answers. */
public final class WindowWords {
    /** The sentence. */
    public static final String MEANING =
            "the boards at the end of the pattern over which an average shot, laid down where the bowler lays it down,"
                    + " may leave and still hit the pocket.";

    private WindowWords() {}
}
