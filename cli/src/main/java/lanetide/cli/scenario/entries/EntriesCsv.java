package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.EntryListKeys;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.cli.scenario.value.Section;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Reads an entry list from comma-separated values (RFC 4180): a header, then one bowler a row. Each row becomes what a
 * scenario would say of the bowler, so that the same faults give the same notices.
 *
 * @param notices takes what is wrong, told of the table
 * @param titles the titles that the scenario has for columns
 * @param drawsLevels whether a bowler with neither level nor average has one drawn
 * @param needsSquads whether each bowler must name his squad, there being several
 */
record EntriesCsv(Notices notices, ColumnTitles titles, boolean drawsLevels, boolean needsSquads) {
    private static final String ID = BowlerKeys.ID.name();
    private static final String FIRST_NAME = EntryListKeys.FIRST_NAME.name();
    private static final String LAST_NAME = EntryListKeys.LAST_NAME.name();
    private static final String LEVEL = BowlerKeys.LEVEL.name();
    private static final String SQUAD = BowlerKeys.SQUAD.name();
    private static final String AVERAGE = BowlerKeys.AVERAGE.name();

    /** The key that a column stands for, by its header in small letters without spaces and signs. */
    private static final Map<String, String> COLUMNS = CsvTable.columns(Map.ofEntries(
            Map.entry(ID, List.of("id", "name", "bowler", "bowlername", "fullname", "player", "competitor", "entrant")),
            Map.entry(FIRST_NAME, List.of("firstname", "forename", "givenname")),
            Map.entry(LAST_NAME, List.of("lastname", "surname", "familyname")),
            Map.entry("hand", List.of("hand", "handed", "bowlinghand")),
            Map.entry("style", List.of("style", "playingstyle")),
            Map.entry(LEVEL, List.of("level", "skill")),
            Map.entry("cover", List.of("cover", "ball", "ballcover", "strikeball")),
            Map.entry("spareCover", List.of("sparecover", "spareball")),
            Map.entry("secondCover", List.of("secondcover", "secondball")),
            Map.entry("tempo", List.of("tempo")),
            Map.entry(AVERAGE, List.of("average", "averagepins", "avg")),
            Map.entry(SQUAD, List.of("squad", "squadid", "shift")),
            Map.entry("group", List.of("group", "groupnumber")),
            Map.entry("team", List.of("team", "teamname")),
            Map.entry("partners", List.of("partners", "doubles", "trio")),
            Map.entry("comes", List.of("comes", "status"))));

    private static final String READ =
            "name, hand, style, level, cover, spare cover, second cover, tempo, average, squad, group, team,"
                    + " partners and comes";
    private static final String ALL =
            "name, average (or level) and, where there are several squads, squad, and may name"
                    + " hand, style, cover, spare cover, second cover, tempo, group, team, partners and comes (a title of your own is told"
                    + " under `columns` of `entries`)";

    /** Columns that hold names of the trade, which lists write with capitals and spaces. */
    private static final Set<String> TRADE_NAMES =
            Set.of("hand", "style", LEVEL, "cover", "spareCover", "secondCover", "comes");

    /** The unit of a column whose cells may be numbers alone. */
    private static final Map<String, String> UNITS = Map.of(AVERAGE, " pins", "tempo", " %");

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");
    private static final Pattern AVERAGE_WITH_FRACTION = Pattern.compile("(\\d+)\\.\\d+( ?pins?)?");
    private static final Pattern NOT_KNOWN = Pattern.compile("[-\u2013\u2014?]|n/a", Pattern.CASE_INSENSITIVE);

    /** Spaces, and those that do not break in a spreadsheet. */
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+");

    /** What the table says of each bowler; empty, with notices, if it cannot be read. */
    Optional<List<Section>> read(byte[] bytes) {
        return CsvTable.read(bytes, notices, "name,hand,style,level,cover", "Anchor,right,tweener,league,urethane")
                .flatMap(this::read);
    }

    private Optional<List<Section>> read(CsvTable table) {
        Map<String, Integer> places = table.places(titles.among(COLUMNS, table), notices, READ);
        if (!isWhole(table, places)) {
            return Optional.empty();
        }
        List<Section> bowlers = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            if (table.fits(row, notices, "Put a name that has a comma into double quotes.")) {
                bowlers.add(bowler(table, row, places, bowlers.size() + 1));
            }
        }
        return Optional.of(bowlers);
    }

    /** Whether the columns are there that must be; a notice for each that is not, unless its title was told wrong. */
    private boolean isWhole(CsvTable table, Map<String, Integer> places) {
        boolean named = places.containsKey(ID) || places.containsKey(LAST_NAME);
        boolean skilled = drawsLevels || places.containsKey(LEVEL) || places.containsKey(AVERAGE);
        if (!named && !titles.has(EntryListKeys.NAME) && !titles.has(EntryListKeys.LAST_NAME)) {
            table.columnMissing(notices, "name", ALL);
        }
        if (!skilled && !titles.has(EntryListKeys.LEVEL) && !titles.has(EntryListKeys.AVERAGE)) {
            table.columnMissing(notices, AVERAGE, ALL);
        }
        boolean sorted = !needsSquads || places.containsKey(SQUAD);
        if (!sorted && !titles.has(EntryListKeys.SQUAD)) {
            table.columnMissing(notices, SQUAD, ALL);
        }
        return named && skilled && sorted;
    }

    private Section bowler(CsvTable table, CsvTable.Row row, Map<String, Integer> places, int number) {
        List<NodeTuple> tuples = new ArrayList<>();
        tuples.add(tuple(row, ID, places.getOrDefault(ID, places.getOrDefault(LAST_NAME, 0)), name(row, places)));
        places.forEach((column, place) -> {
            boolean part = column.equals(ID) || column.equals(FIRST_NAME) || column.equals(LAST_NAME);
            String written = written(column, table.number(cell(row, place)));
            if (!part && !written.isEmpty()) {
                tuples.add(tuple(row, column, place, written));
            }
        });
        ScalarNode start = row.node(0, "row");
        MappingNode node =
                new MappingNode(Tag.MAP, true, tuples, FlowStyle.BLOCK, start.getStartMark(), start.getEndMark());
        return new Section(BowlerKeys.ENTRY, "entries[" + number + "]", node, notices);
    }

    private static NodeTuple tuple(CsvTable.Row row, String key, int place, String written) {
        return new NodeTuple(row.node(place, key), row.node(place, written));
    }

    /** The name, or what there is of first and last name. */
    private static String name(CsvTable.Row row, Map<String, Integer> places) {
        if (places.containsKey(ID)) {
            return cell(row, places.get(ID));
        }
        String first = places.containsKey(FIRST_NAME) ? cell(row, places.get(FIRST_NAME)) + " " : "";
        return (first + cell(row, places.get(LAST_NAME))).strip();
    }

    /** A cell with single spaces between words and none around; empty if it says that nothing is known. */
    private static String cell(CsvTable.Row row, int place) {
        String cell = BLANKS.matcher(row.cell(place)).replaceAll(" ").strip();
        return NOT_KNOWN.matcher(cell).matches() ? "" : cell;
    }

    private String written(String column, String cell) {
        if (column.equals(AVERAGE)) {
            return average(cell);
        }
        if (!TRADE_NAMES.contains(column)) {
            return NUMBER.matcher(cell).matches() ? cell + UNITS.getOrDefault(column, "") : cell;
        }
        String plain =
                BLANKS.matcher(cell.toLowerCase(Locale.ROOT).replace('_', ' ')).replaceAll("-");
        if (column.equals("hand")) {
            return switch (plain) {
                case "r", "rh", "right-handed", "right-hand" -> "right";
                case "l", "lh", "left-handed", "left-hand" -> "left";
                default -> plain;
            };
        }
        return plain;
    }

    private String average(String cell) {
        Matcher fraction = AVERAGE_WITH_FRACTION.matcher(cell);
        if (fraction.matches()) {
            notices.assumptions()
                    .add(
                            DrawnTraits.ASSUMED + AVERAGE,
                            "fractions of averages are dropped, so that 187.9 is 187",
                            "common practice, no source");
            return fraction.group(1) + UNITS.get(AVERAGE);
        }
        return NUMBER.matcher(cell).matches() ? cell + UNITS.get(AVERAGE) : cell;
    }
}
