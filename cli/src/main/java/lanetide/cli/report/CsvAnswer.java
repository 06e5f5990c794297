package lanetide.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The common form of every answer as a table: RFC 4180, but lines end in LF as in all other answers. */
final class CsvAnswer {
    private CsvAnswer() {}

    /** Prints the rows of a table. */
    @FunctionalInterface
    interface Rows {
        void print(CSVPrinter printer) throws IOException;
    }

    /** The text of a table. */
    static String write(List<String> head, Rows rows) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setRecordSeparator("\n")
                .setHeader(head.toArray(String[]::new))
                .get();
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            rows.print(printer);
        } catch (IOException e) {
            throw new UncheckedIOException("a table in memory cannot be written", e);
        }
        return text.toString();
    }
}
