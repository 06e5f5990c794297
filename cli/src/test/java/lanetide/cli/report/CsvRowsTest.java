package lanetide.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import lanetide.squads.model.LanePair;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvRowsTest {
    /** Source: Common Format and MIME Type for CSV Files, Shafranovich, RFC 4180, 2005, section 2. */
    @Test
    void linesEndInCrLfAndQuotesCommasAndBreaksAreQuoted() {
        String table = CsvRows.table(List.of("a", "b"), rows -> rows.row("x \"y\", z\nw", 1.5));

        assertThat(table).isEqualTo("a,b\r\n\"x \"\"y\"\", z\nw\",1.5\r\n");
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.scenario.Scenarios#hostileNames")
    void aHostileNameComesBackAndBeginsNoFormula(String name) throws IOException {
        String table = CsvRows.table(List.of("name"), rows -> rows.row(name));

        try (CSVParser parser = CSVParser.parse(
                table,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            String cell = parser.getRecords().get(0).get(0);
            assertThat(cell).endsWith(name).doesNotMatch("(?s)^\\s*[=+@\\-].*");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"1-2", "3/4", "3-6-10", "1.2.2027", " 11/12"})
    void whatCouldBeADateIsMarkedAsText(String text) {
        assertThat(CsvRows.table(List.of("a"), rows -> rows.row(text))).contains("'" + text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\uFF1D1+1", "\uFF0B1", "\uFF0D1", " \uFF20SUM(A1)"})
    void aFullWidthSignBeginsNoFormula(String text) {
        assertThat(CsvRows.table(List.of("a"), rows -> rows.row(text))).contains("'" + text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-2.3", "0", "12.50", "A/1", "1 and 2", "3 6 10", "13-14 Lions"})
    void whatIsNeitherStays(String text) {
        assertThat(CsvRows.table(List.of("a", "b"), rows -> rows.row(text, 1))).isEqualTo("a,b\r\n" + text + ",1\r\n");
    }

    @Test
    void aPairIsWrittenSoThatNobodyTakesItForADate() {
        assertThat(CsvRows.pair(new LanePair(1, 2))).isEqualTo("1 and 2");
        assertThat(CsvRows.number(Double.NaN, 2)).isEmpty();
        assertThat(CsvRows.number(-0.126, 2)).isEqualTo("-0.13");
    }
}
