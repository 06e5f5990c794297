package lanetide.cli.scenario.entries;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.EntryListKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.notice.Nearest;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;

/**
 * The titles that a scenario has for columns of its entry list.
 *
 * @param written the block that tells them; empty if all are found by usual titles
 */
record ColumnTitles(Optional<Section> written) {
    /** Whether the scenario tells the title of a column. */
    boolean has(Key<String> column) {
        return written.filter(section -> section.has(column)).isPresent();
    }

    /**
     * The keys that columns stand for, by plain title: those the scenario tells, and usual ones for the others. A title
     * that the table does not have, or that is told twice, is refused.
     */
    Map<String, String> among(Map<String, String> usual, CsvTable table) {
        Map<String, String> told = new LinkedHashMap<>();
        for (Key<String> column : EntryListKeys.columns()) {
            written.flatMap(section -> section.find(column).flatMap(title -> section.value(column)))
                    .filter(title -> isThere(title, table))
                    .ifPresent(title -> {
                        if (told.putIfAbsent(CsvTable.plain(title.plain()), keyOf(column)) != null) {
                            title.refuse(
                                    NoticeCode.DUPLICATE_NAME,
                                    ", which is told of another column already; each must have a title of its own.");
                        }
                    });
        }
        Map<String, String> all = new HashMap<>(usual);
        all.values()
                .removeIf(key -> EntryListKeys.columns().stream()
                        .anyMatch(column -> has(column) && keyOf(column).equals(key)));
        all.putAll(told);
        return all;
    }

    /** The key of an entry that a column stands for: its name is the entry's id. */
    private static String keyOf(Key<String> column) {
        return column.equals(EntryListKeys.NAME) ? BowlerKeys.ID.name() : column.name();
    }

    private static boolean isThere(Value title, CsvTable table) {
        List<String> titles = table.header().cells();
        boolean there = titles.stream().anyMatch(each -> CsvTable.plain(each).equals(CsvTable.plain(title.plain())));
        if (!there) {
            title.refuse(
                    NoticeCode.UNKNOWN_NAME,
                    ", which is not the title of a column of the table." + Nearest.question(title.plain(), titles)
                            + " Titles: " + String.join(", ", titles) + ".");
        }
        return there;
    }
}
