package lanetide.cli.scenario.key;

import java.util.List;
import java.util.Locale;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.cli.scenario.key.Form.Text;

/** Keys of a table of entries beside the scenario. */
public final class EntryListKeys {
    /** The table, in place of a list. */
    public static final Block TABLE = new Block("entries", "entriesTable");

    public static final Key<Void> FILE = TABLE.key(
                    "file", Structure.FILE, "a CSV table beside the scenario, one bowler a row")
            .required("entries.csv");
    public static final Key<Void> COLUMNS = TABLE.key(
                    "columns", Structure.BLOCK, "titles of its columns, where they are not usual ones")
            .optional("{name: Competitor, average: \"Avg 23/24\"}", "found by their titles");

    /** The titles of its columns. */
    public static final Block COLUMN = new Block("entries.columns");

    public static final Key<String> NAME = column("name", "Name");
    public static final Key<String> FIRST_NAME = column("firstName", "First name");
    public static final Key<String> LAST_NAME = column("lastName", "Last name");
    public static final Key<String> HAND = column("hand", "Hand");
    public static final Key<String> STYLE = column("style", "Style");
    public static final Key<String> LEVEL = column("level", "Level");
    public static final Key<String> COVER = column("cover", "Ball");
    public static final Key<String> SPARE_COVER = column("spareCover", "Spare ball");
    public static final Key<String> SECOND_COVER = column("secondCover", "Second ball");
    public static final Key<String> TEMPO = column("tempo", "Tempo");
    public static final Key<String> AVERAGE = column("average", "Avg");
    public static final Key<String> SQUAD = column("squad", "Squad");
    public static final Key<String> GROUP = column("group", "Group");
    public static final Key<String> PARTNERS = column("partners", "Doubles");
    public static final Key<String> COMES = column("comes", "Status");

    private EntryListKeys() {}

    /** Every column. */
    public static List<Key<String>> columns() {
        return List.of(
                NAME,
                FIRST_NAME,
                LAST_NAME,
                HAND,
                STYLE,
                LEVEL,
                COVER,
                SPARE_COVER,
                SECOND_COVER,
                TEMPO,
                AVERAGE,
                SQUAD,
                GROUP,
                PARTNERS,
                COMES);
    }

    private static Key<String> column(String name, String title) {
        return COLUMN.key(name, new Text(false), "title of the column with the " + words(name))
                .optional(title, "found by its title");
    }

    /** A key in words: {@code spareCover} is {@code spare cover}. */
    private static String words(String name) {
        return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }
}
