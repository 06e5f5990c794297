package lanetide.squads.rotation.design;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds every row-complete Latin square with first row and column in natural order, by trying everything. */
final class RowCompleteSearch {

    private final int size;
    private final int[][] square;
    private final boolean[][] inColumn;
    private final boolean[][] adjacent;
    private final List<List<String>> found = new ArrayList<>();

    private RowCompleteSearch(int size) {
        this.size = size;
        this.square = new int[size][size];
        this.inColumn = new boolean[size][size];
        this.adjacent = new boolean[size][size];
    }

    static List<List<String>> normalSquares(int size) {
        RowCompleteSearch search = new RowCompleteSearch(size);
        search.place(0, 0, 0);
        return search.found;
    }

    /** Renames the symbols so that the first row counts up, then sorts the rows by their first symbol. */
    static List<String> normalised(List<String> rows) {
        String first = rows.get(0);
        return rows.stream()
                .map(row -> row.chars()
                        .mapToObj(symbol -> String.valueOf(first.indexOf(symbol) + 1))
                        .collect(Collectors.joining()))
                .sorted()
                .toList();
    }

    private void place(int row, int column, int usedInRow) {
        if (row == size) {
            found.add(written());
        } else if (column == size) {
            place(row + 1, 0, 0);
        } else {
            for (int symbol = 0; symbol < size; symbol++) {
                if (fits(row, column, symbol, usedInRow)) {
                    mark(row, column, symbol, true);
                    place(row, column + 1, usedInRow | 1 << symbol);
                    mark(row, column, symbol, false);
                }
            }
        }
    }

    private boolean fits(int row, int column, int symbol, int usedInRow) {
        boolean natural = (row > 0 || symbol == column) && (column > 0 || symbol == row);
        boolean latin = (usedInRow & 1 << symbol) == 0 && !inColumn[column][symbol];
        return natural && latin && (column == 0 || !adjacent[square[row][column - 1]][symbol]);
    }

    private void mark(int row, int column, int symbol, boolean placed) {
        square[row][column] = symbol;
        inColumn[column][symbol] = placed;
        if (column > 0) {
            adjacent[square[row][column - 1]][symbol] = placed;
        }
    }

    private List<String> written() {
        return IntStream.range(0, size)
                .mapToObj(row -> IntStream.of(square[row])
                        .mapToObj(symbol -> String.valueOf(symbol + 1))
                        .collect(Collectors.joining()))
                .toList();
    }
}
