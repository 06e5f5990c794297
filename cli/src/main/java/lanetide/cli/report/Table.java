package lanetide.cli.report;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A table of a page.
 *
 * @param id its name in the page, alone there
 * @param caption what it shows, with units
 * @param head heads of the columns
 * @param rows cells, one for each head; the first of a row is its head
 * @param left columns set flush left, the others right
 */
public record Table(String id, String caption, List<String> head, List<List<String>> rows, int left) {
    private static final int SHORT = 14;
    private static final int NARROW = 4;

    /**
     * Copies the lists and checks the rows.
     *
     * @throws IllegalArgumentException if a row has not one cell for each head
     */
    public Table {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != head.size()) {
                throw new IllegalArgumentException(
                        "table " + id + " has " + head.size() + " columns, and a row of " + row.size() + ": " + row);
            }
        }
    }

    /**
     * Whether it is kept together on paper.
     *
     * @return true for at most {@value #SHORT} rows
     */
    public boolean isShort() {
        return rows.size() <= SHORT;
    }

    /**
     * Whether it is too wide for a phone, on which every row then stands as a list.
     *
     * @return true for more than {@value #NARROW} columns
     */
    public boolean isWide() {
        return head.size() > NARROW;
    }

    /** Rows of cells: a head, and below it a row for each thing. */
    public static <T> List<List<String>> rows(List<String> head, Collection<T> things, Function<T, List<String>> row) {
        return Stream.concat(Stream.of(head), things.stream().map(row)).toList();
    }

    /** A row: its first cell, and behind it a cell for each thing. */
    public static <T> List<String> row(String first, Collection<T> things, Function<T, String> cell) {
        return Stream.concat(Stream.of(first), things.stream().map(cell)).toList();
    }

    /** A table whose first row is its head. */
    public static Table of(String id, String caption, List<List<String>> rows, int left) {
        return new Table(id, caption, rows.get(0), rows.subList(1, rows.size()), left);
    }
}
