package lanetide.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.FairnessResult;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The advantages as a table: one row for each. */
public final class FairnessCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator("\n")
            .setHeader(
                    "kind",
                    "id",
                    "bowlers",
                    "advantagePinsPerGame",
                    "standardErrorPins",
                    "low",
                    "high",
                    "unfairP",
                    "verdict")
            .get();

    private FairnessCsv() {}

    /**
     * Writes the table.
     *
     * @param result what came of the study
     * @return the table with its head
     */
    public static String write(FairnessResult result) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            for (Effect effect : result.effects()) {
                printer.printRecord(
                        EffectWords.kind(effect.kind()),
                        effect.id(),
                        effect.bowlers(),
                        Figures.fixed(effect.advantagePins(), 3),
                        Figures.fixed(effect.standardErrorPins(), 4),
                        Figures.fixed(effect.ci90().low(), 3),
                        Figures.fixed(effect.ci90().high(), 3),
                        Figures.fixed(effect.unfairP(), 5),
                        EffectWords.verdict(effect.verdict()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a table in memory cannot be written", e);
        }
        return text.toString();
    }
}
