package lanetide.cli.scenario.value;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * A table of comma-separated values beside a scenario (RFC 4180): a header, then rows. Semicolons or tabs may stand in
 * place of the commas. Capitals, spaces and signs in the header do not matter, nor do empty cells at the end of a row.
 * A notice's column counts cells.
 *
 * @param separator what stands between cells: a comma, a semicolon or a tab
 * @param header the first row, with the titles
 * @param rows the rows below the header
 */
public record CsvTable(char separator, Row header, List<Row> rows) {
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"?");

    /** A number with a decimal comma, and its unit if it has one. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("^([+-]?\\d+),(\\d+)( ?[^\\d,]*)$");

    /** The column of every title, from the titles that each column may have. */
    public static <T> Map<String, T> columns(Map<T, List<String>> titles) {
        Map<String, T> columns = new HashMap<>();
        titles.forEach((column, spelled) -> spelled.forEach(title -> columns.put(title, column)));
        return columns;
    }

    /** A row that holds anything, and the line it begins on. */
    public record Row(int line, List<String> cells) {
        /** A cell without blanks around it; empty if the row is shorter. */
        public String cell(int place) {
            return place < cells.size() ? cells.get(place).strip() : "";
        }

        /** A cell as a scenario would hold it, with something else written into it. */
        public ScalarNode node(int place, String written) {
            Mark mark = new Mark("", 0, line - 1, place, new int[0], 0);
            return new ScalarNode(
                    written.isEmpty() ? Tag.NULL : Tag.STR,
                    true,
                    written,
                    ScalarStyle.PLAIN,
                    Optional.of(mark),
                    Optional.of(mark));
        }
    }

    /** Reads a table; empty, with a notice, if it is none. The example shows a row as it should be. */
    public static Optional<CsvTable> read(byte[] bytes, Notices notices, String columns, String example) {
        Optional<String> text = new SourceText(notices).readTable(bytes);
        char separator = text.map(CsvTable::separator).orElse(',');
        return text.flatMap(found -> parse(found, separator, notices, columns, example))
                .map(rows -> rows.isEmpty()
                        ? new CsvTable(separator, new Row(1, List.of()), List.of())
                        : new CsvTable(separator, rows.get(0), rows.subList(1, rows.size())));
    }

    /** The separator of which the first row has most outside quotes; the comma among equals. */
    private static char separator(String text) {
        String bare = text.lines()
                .filter(line -> !line.isBlank())
                .findFirst()
                .map(line -> QUOTED.matcher(line).replaceAll(""))
                .orElse("");
        return SEPARATORS.stream()
                .max(Comparator.comparingLong((Character separator) ->
                                bare.chars().filter(c -> c == separator).count())
                        .thenComparing(separator -> -SEPARATORS.indexOf(separator)))
                .orElseThrow();
    }

    private static Optional<List<Row>> parse(
            String text, char separator, Notices notices, String columns, String example) {
        List<Row> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            for (CSVRecord record : parser) {
                List<String> cells = record.toList();
                long breaks = cells.stream()
                        .mapToLong(cell -> cell.chars().filter(c -> c == '\n').count())
                        .sum();
                int filled = filled(cells);
                if (filled > 0) {
                    rows.add(new Row((int) (parser.getCurrentLineNumber() - breaks), cells.subList(0, filled)));
                }
            }
            return Optional.of(rows);
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            int line = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1;
            notices.add(
                    NoticeCode.SYNTAX_ERROR,
                    new Place(line, 1),
                    "",
                    "",
                    "The table cannot be read from here on: a quote does not end, or something stands after one. Each row"
                            + " must be `" + columns + "`, such as `" + example + "`.");
            return Optional.empty();
        }
    }

    /** How many cells there are up to the last that is not empty. */
    private static int filled(List<String> cells) {
        int filled = cells.size();
        while (filled > 0 && cells.get(filled - 1).isBlank()) {
            filled--;
        }
        return filled;
    }

    /** A number as scenarios write it: with a point, where commas do not separate and one stands in its place. */
    public String number(String cell) {
        return separator == ',' ? cell : DECIMAL_COMMA.matcher(cell).replaceFirst("$1.$2$3");
    }

    /** Where each known column stands; columns that are not known, or appear twice, are told and passed over. */
    public <T> Map<T, Integer> places(Map<String, T> known, Notices notices, String read) {
        Map<T, Integer> places = new LinkedHashMap<>();
        for (int i = 0; i < header.cells().size(); i++) {
            String title = header.cells().get(i);
            T column = known.get(plain(title));
            if (column == null || places.putIfAbsent(column, i) != null) {
                notices.add(
                        NoticeCode.COLUMN_IGNORED,
                        new Place(header.line(), i + 1),
                        "",
                        title,
                        "The column `" + Notices.quote(title) + "` is not read; " + read + " are.");
            }
        }
        return places;
    }

    /** Says that a column is missing that the table must have. */
    public void columnMissing(Notices notices, String wanted, String rule) {
        String found = Notices.quote(String.join(String.valueOf(separator), header.cells()));
        notices.add(
                NoticeCode.COLUMN_MISSING,
                new Place(header.line(), 1),
                "",
                found,
                "The header is `" + found + "` and has no column `" + wanted + "`; the first row must name " + rule
                        + ", separated by commas, semicolons or tabs.");
    }

    /** Whether a row has no more cells than the header; a notice if it has. */
    public boolean fits(Row row, Notices notices, String advice) {
        boolean fits = row.cells().size() <= header.cells().size();
        if (!fits) {
            notices.add(
                    NoticeCode.SYNTAX_ERROR,
                    new Place(row.line(), header.cells().size() + 1),
                    "",
                    String.join(String.valueOf(separator), row.cells()),
                    "The row has " + row.cells().size() + " cells and the header "
                            + header.cells().size() + "; there must be as many. " + advice);
        }
        return fits;
    }

    /** A title without capitals, spaces and signs; letters of any script stay. */
    public static String plain(String title) {
        return title.toLowerCase(Locale.ROOT).replaceAll("[\u00b5\u03bc]", "u").replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
