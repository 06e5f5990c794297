package lanetide.cli.fit;

import lanetide.cli.report.CsvColumns;
import lanetide.squads.fit.FitResult;

/** The readings beside what is said of them, as a table. */
public final class FitCsv {
    private static final FitWords WORDS = new FitWords(false);

    private FitCsv() {}

    /**
     * Writes the table.
     *
     * @param result what came of the fit
     * @return the table with its head
     */
    public static String write(FitResult result) {
        return new CsvColumns<FitResult.Check>()
                .add("kind", check -> FitWords.kind(check.reading()))
                .add("where", check -> WORDS.of(check.reading()))
                .add("unit", check -> FitWords.unit(check.reading()))
                .add("read", check -> check.reading().observed(), 3)
                .add("expected", check -> check.before().mean(), 3)
                .add("expectedDeviation", check -> check.before().deviation(), 3)
                .add("fitted", check -> check.after().mean(), 3)
                .add("fittedDeviation", check -> check.after().deviation(), 3)
                .add("missBefore", FitResult.Check::missBefore, 2)
                .add("missAfter", FitResult.Check::missAfter, 2)
                .table(result.checks());
    }
}
