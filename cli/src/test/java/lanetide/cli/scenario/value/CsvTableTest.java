package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as spreadsheets save them. */
class CsvTableTest {
    private final Notices notices = new Notices("table.csv");

    @ParameterizedTest
    @ValueSource(chars = {',', ';', '\t'})
    void cellsMayBeSeparatedByCommasSemicolonsOrTabs(char separator) {
        CsvTable table = table("name|hand\n\"Row| the\"|left\n".replace('|', separator));

        assertThat(table.header().cells()).containsExactly("name", "hand");
        assertThat(table.rows())
                .singleElement()
                .satisfies(row -> assertThat(row.cells()).containsExactly("Row" + separator + " the", "left"));
    }

    @Test
    void theFirstRowTellsTheSeparatorByWhatItHasMostOutsideQuotes() {
        assertThat(table("\"a;b;c;d\",e\n").header().cells()).containsExactly("a;b;c;d", "e");
        assertThat(table("\n\n a, or b; c; d\n").header().cells()).containsExactly(" a, or b", " c", " d");
        assertThat(table("alone\n1,5\n").separator()).isEqualTo(',');
    }

    @Test
    void decimalCommasAreReadWhereCommasDoNotSeparate() {
        CsvTable semicolons = table("a;b\n1;2\n");

        assertThat(List.of("10,5", "-0,25 ft", "7,5um", "1,2,3", "Row, the", "10.5"))
                .extracting(semicolons::number)
                .containsExactly("10.5", "-0.25 ft", "7.5um", "1,2,3", "Row, the", "10.5");
        assertThat(table("a,b\n1,2\n").number("10,5")).isEqualTo("10,5");
    }

    @Test
    void namesAreReadInUtf8WithOrWithoutItsMarkAndInTheWesternCodePage() {
        for (byte[] bytes : List.of(
                "name,hand\nJürgen,left\n".getBytes(StandardCharsets.UTF_8),
                "\uFEFFname,hand\nJürgen,left\n".getBytes(StandardCharsets.UTF_8),
                "name,hand\nJürgen,left\n".getBytes(StandardCharsets.ISO_8859_1),
                "name,hand\nJürgen,left\n".getBytes(Charset.forName("windows-1252")))) {
            CsvTable table = table(bytes);

            assertThat(table.header().cells()).containsExactly("name", "hand");
            assertThat(table.rows().get(0).cell(0)).isEqualTo("Jürgen");
        }
    }

    @Test
    void aFileThatIsNoTextIsRefused() {
        assertThat(CsvTable.read(new byte[] {'P', 'K', 3, 4, (byte) 0xff, 0}, notices, "a,b", "1,2"))
                .isEmpty();
        assertThat(notices.list()).extracting(Notice::code).containsExactly(NoticeCode.FILE_NOT_TEXT);
    }

    @Test
    void emptyRowsAndEmptyCellsAtTheEndOfARowDoNotCount() {
        CsvTable table = table("a;b;;\n;;;\n1;;;;;\n\n2;3\n");

        assertThat(table.header().cells()).containsExactly("a", "b");
        assertThat(table.rows())
                .containsExactly(new CsvTable.Row(3, List.of("1")), new CsvTable.Row(5, List.of("2", "3")));
        assertThat(table.rows()).allMatch(row -> table.fits(row, notices, ""));
    }

    private CsvTable table(String text) {
        return table(text.getBytes(StandardCharsets.UTF_8));
    }

    private CsvTable table(byte[] bytes) {
        CsvTable table = CsvTable.read(bytes, notices, "a,b", "1,2").orElseThrow();
        assertThat(notices.list()).isEmpty();
        return table;
    }
}
