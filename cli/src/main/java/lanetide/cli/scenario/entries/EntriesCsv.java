package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.BowlerKeys;
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
 */
record EntriesCsv(Notices notices) {
    private static final String FIRST_NAME = "first name";
    private static final String LAST_NAME = "last name";

    /** The key that a column stands for, by its header in small letters without spaces and signs. */
    private static final Map<String, String> COLUMNS = CsvTable.columns(Map.ofEntries(
            Map.entry("id", List.of("id", "name", "bowler", "bowlername", "fullname")),
            Map.entry(FIRST_NAME, List.of("firstname", "forename", "givenname")),
            Map.entry(LAST_NAME, List.of("lastname", "surname", "familyname")),
            Map.entry("hand", List.of("hand", "handed", "bowlinghand")),
            Map.entry("style", List.of("style", "playingstyle")),
            Map.entry("level", List.of("level", "skill")),
            Map.entry("cover", List.of("cover", "ball", "ballcover", "strikeball")),
            Map.entry("spareCover", List.of("sparecover", "spareball")),
            Map.entry("secondCover", List.of("secondcover", "secondball")),
            Map.entry("tempo", List.of("tempo")),
            Map.entry("average", List.of("average", "averagepins", "avg")),
            Map.entry("squad", List.of("squad", "squadid")),
            Map.entry("group", List.of("group", "groupnumber"))));

    private static final String MAY = "spare cover, second cover, tempo, average, squad and group";
    private static final String ALL = "name, hand, style, cover and level (or average), and may name " + MAY;
    private static final List<String> REQUIRED = List.of("hand", "style", "cover");

    /** Columns whose empty cells say nothing. */
    private static final Set<String> OPTIONAL =
            Set.of("level", "spareCover", "secondCover", "tempo", "average", "squad", "group");

    /** Columns that hold names of the trade, which lists write with capitals and spaces. */
    private static final Set<String> TRADE_NAMES =
            Set.of("hand", "style", "level", "cover", "spareCover", "secondCover");

    /** The unit of a column whose cells may be numbers alone. */
    private static final Map<String, String> UNITS = Map.of("average", " pins", "tempo", " %");

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

    /** What the table says of each bowler; empty, with notices, if it cannot be read. */
    Optional<List<Section>> read(byte[] bytes) {
        return CsvTable.read(bytes, notices, "name,hand,style,level,cover", "Anchor,right,tweener,league,urethane")
                .flatMap(this::read);
    }

    private Optional<List<Section>> read(CsvTable table) {
        Map<String, Integer> places = table.places(COLUMNS, notices, "name, hand, style, level, cover, " + MAY);
        boolean named = places.containsKey("id") || places.containsKey(LAST_NAME);
        if (!named) {
            table.columnMissing(notices, "name", ALL);
        }
        List<String> missing = Stream.concat(
                        REQUIRED.stream(), places.containsKey("average") ? Stream.empty() : Stream.of("level"))
                .filter(column -> !places.containsKey(column))
                .toList();
        missing.forEach(column -> table.columnMissing(notices, column, ALL));
        if (!named || !missing.isEmpty()) {
            return Optional.empty();
        }
        List<Section> bowlers = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            if (table.fits(row, notices, "Put a name that has a comma into double quotes.")) {
                bowlers.add(bowler(row, places, bowlers.size() + 1));
            }
        }
        return Optional.of(bowlers);
    }

    private Section bowler(CsvTable.Row row, Map<String, Integer> places, int number) {
        List<NodeTuple> tuples = new ArrayList<>();
        tuples.add(tuple(row, "id", places.getOrDefault("id", places.getOrDefault(LAST_NAME, 0)), name(row, places)));
        places.forEach((column, place) -> {
            boolean part = column.equals("id") || column.equals(FIRST_NAME) || column.equals(LAST_NAME);
            String written = written(column, row.cell(place));
            if (!part && !(written.isEmpty() && OPTIONAL.contains(column))) {
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
        if (places.containsKey("id")) {
            return row.cell(places.get("id"));
        }
        String first = places.containsKey(FIRST_NAME) ? row.cell(places.get(FIRST_NAME)) + " " : "";
        return (first + row.cell(places.get(LAST_NAME))).strip();
    }

    private static String written(String column, String cell) {
        if (!TRADE_NAMES.contains(column)) {
            return NUMBER.matcher(cell).matches() ? cell + UNITS.getOrDefault(column, "") : cell;
        }
        String plain = cell.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        if (column.equals("hand")) {
            return switch (plain) {
                case "r", "right-handed", "right-hand" -> "right";
                case "l", "left-handed", "left-hand" -> "left";
                default -> plain;
            };
        }
        return plain;
    }
}
