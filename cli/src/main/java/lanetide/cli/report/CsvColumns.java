package lanetide.cli.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * A table column by column: what stands in its head, and what in a row.
 *
 * @param <T> what a row is about
 */
public final class CsvColumns<T> {
    private final List<String> heads = new ArrayList<>();
    private final List<Function<T, ?>> cells = new ArrayList<>();

    /** Adds a column. */
    public CsvColumns<T> add(String head, Function<T, ?> cell) {
        heads.add(head);
        cells.add(cell);
        return this;
    }

    /** Adds a column of numbers with so many decimals; a cell for NaN stays empty. */
    public CsvColumns<T> add(String head, ToDoubleFunction<T> value, int decimals) {
        return add(head, row -> CsvRows.number(value.applyAsDouble(row), decimals));
    }

    /** Adds a column of a quantity of a thing that a row may be without; its cell then stays empty. */
    public <V> CsvColumns<T> add(String head, Function<T, Optional<V>> thing, ToDoubleFunction<V> value, int decimals) {
        return add(
                head,
                row -> thing.apply(row)
                        .map(found -> CsvRows.number(value.applyAsDouble(found), decimals))
                        .orElse(""));
    }

    /** The table. */
    public String table(Collection<T> things) {
        return CsvRows.table(
                heads,
                rows -> things.forEach(thing -> rows.row(
                        cells.stream().<Object>map(cell -> cell.apply(thing)).toList())));
    }
}
