package lanetide.cli.fit;

import java.util.List;
import lanetide.squads.fit.FitResult;
import lanetide.squads.fit.Suspicion;

/** What has to be told of a fit where its own answer is not shown. */
public final class FitNotice {
    private static final FitWords WORDS = new FitWords(false);

    private FitNotice() {}

    /**
     * Readings that do not belong.
     *
     * @param result what came of the fit
     * @return a sentence each; none if all belong
     */
    public static List<String> of(FitResult result) {
        return result.suspicions().stream()
                .filter(one -> one.verdict() != Suspicion.Verdict.NOT_SHOWN)
                .map(one -> "Something measured does not belong. "
                        + (one.verdict() == Suspicion.Verdict.NAMED ? "" : "It may be this: ") + WORDS.of(one)
                        + " Look it up with `lanetide fit`.")
                .toList();
    }
}
