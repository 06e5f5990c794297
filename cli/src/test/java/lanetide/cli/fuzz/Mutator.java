package lanetide.cli.fuzz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Changes scenarios and tables as people, programs and accidents would: values in other units or of another size, keys
 * misspelt, doubled, moved or left out, lists cut short, cells too many or too few.
 */
final class Mutator {
    private static final Pattern NUMBER = Pattern.compile("^([\"']?)([+-]?\\d+(?:\\.\\d+)?)(.*)$", Pattern.DOTALL);

    private static final List<String> ODD = List.of(
            "",
            "0",
            "-1",
            "1",
            "1e9",
            "1e-9",
            "1e309",
            ".nan",
            ".inf",
            "true",
            "null",
            "none",
            "usual",
            "stay",
            "1-2",
            "2-3",
            "1 to 4",
            "\"25:61\"",
            "\"day 2 08:00\"",
            "fresh",
            "over",
            "10 min",
            "1 h 30 min",
            "50 %",
            "39 ft",
            "12 m",
            "23 mL",
            "4:1",
            "=1+1",
            "\uFF1D1",
            "\u00e9\ud83c\udfb3",
            "\"\\t\"",
            "no-such.csv",
            "../x.csv");

    private static final List<String> UNITS = List.of(
            "ft", "m", "mL", ":1", "%", "min", "s", "h", "boards", "games", "pairs", "pins", "deg", "um", "mph");

    private static final List<String> FACTORS =
            List.of("0", "0.001", "0.1", "0.5", "0.9", "0.99", "1.01", "1.1", "2", "10", "1000", "-1");

    /** Names of which any may stand where another one does. */
    private static final List<List<String>> CHOICES = List.of(
            List.of("wood", "hard-synthetic", "textured-synthetic", "worn-synthetic"),
            List.of("straight", "stroker", "tweener", "power"),
            List.of("casual", "league", "scratch", "elite"),
            List.of("plastic", "urethane", "weak-reactive", "medium-reactive", "strong-reactive"),
            List.of("left", "right"),
            List.of("fresh", "over", "ends", "none"),
            List.of("mixed-lubrication", "exponential-stribeck"),
            List.of("forward-roll", "walker-fetsko", "none"),
            List.of("seen-and-told", "own-balls", "everything", "nothing"),
            List.of("stay", "right", "left", "turning", "apart", "balanced", "part-balanced", "drawn"),
            List.of("traditional", "current-frame"),
            List.of("lot", "last-game", "high-game", "all"),
            List.of("counted", "left-out"),
            List.of("best", "sum"),
            List.of("even", "free"),
            List.of("wait", "spare", "split"),
            List.of("one", "two", "none"),
            List.of("yes", "no", "waiting"));

    /** By which a number may be changed and still be one that somebody could mean. */
    private static final List<String> MILD =
            List.of("0", "0.2", "0.5", "0.8", "0.9", "0.97", "1.03", "1.1", "1.25", "2", "5");

    private final UniformRandomProvider luck;

    Mutator(UniformRandomProvider luck) {
        this.luck = luck;
    }

    /** A changed copy of a scenario: one to three changes, most often one. */
    Tree.Block mutate(Tree.Block scenario) {
        Tree.Block copy = (Tree.Block) scenario.copy();
        int changes = luck.nextInt(3) == 0 ? 2 + luck.nextInt(2) : 1;
        for (int i = 0; i < changes; i++) {
            change(copy);
        }
        return copy;
    }

    /**
     * A copy with two to five values changed as somebody might mean them: numbers with their units, names for others of
     * their kind. In every fourth copy one thing is changed as in {@link #mutate}.
     */
    Tree.Block vary(Tree.Block scenario) {
        Tree.Block copy = (Tree.Block) scenario.copy();
        for (int i = 2 + luck.nextInt(4); i > 0; i--) {
            List<Tree> holders = new ArrayList<>();
            collect(copy, holders);
            varyOne(holders.get(luck.nextInt(holders.size())));
        }
        if (luck.nextInt(4) == 0) {
            change(copy);
        }
        return copy;
    }

    private void varyOne(Tree holder) {
        if (holder instanceof Tree.Block block) {
            int at = luck.nextInt(block.all().size());
            Tree.Pair pair = block.all().get(at);
            if (pair.value() instanceof Tree.Leaf leaf) {
                block.all().set(at, new Tree.Pair(pair.key(), new Tree.Leaf(varied(leaf.written()))));
            } else if (luck.nextInt(8) == 0) {
                block.all().remove(at);
            }
        } else if (holder instanceof Tree.Items list) {
            int at = luck.nextInt(list.all().size());
            if (list.all().get(at) instanceof Tree.Leaf leaf) {
                list.all().set(at, new Tree.Leaf(varied(leaf.written())));
            } else if (luck.nextInt(4) == 0) {
                Collections.swap(list.all(), at, luck.nextInt(list.all().size()));
            }
        }
    }

    private String varied(String written) {
        for (List<String> names : CHOICES) {
            if (names.contains(written)) {
                return one(names);
            }
        }
        Matcher number = NUMBER.matcher(written);
        if (!number.matches() || number.group(3).contains(":")) {
            return written;
        }
        double product = Double.parseDouble(number.group(2)) * Double.parseDouble(one(MILD));
        return number.group(1) + plain(number.group(2).contains(".") ? product : Math.rint(product)) + number.group(3);
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e9
                ? String.valueOf((long) number)
                : String.format(Locale.ROOT, "%.4f", number);
    }

    private void change(Tree.Block root) {
        List<Tree> holders = new ArrayList<>();
        collect(root, holders);
        Tree holder = holders.get(luck.nextInt(holders.size()));
        if (holder instanceof Tree.Block block) {
            changeBlock(block);
        } else {
            changeItems(((Tree.Items) holder).all());
        }
    }

    private static void collect(Tree tree, List<Tree> holders) {
        if (tree instanceof Tree.Block block && !block.all().isEmpty()) {
            holders.add(block);
            block.all().forEach(pair -> collect(pair.value(), holders));
        } else if (tree instanceof Tree.Items items && !items.all().isEmpty()) {
            holders.add(items);
            items.all().forEach(item -> collect(item, holders));
        }
    }

    private void changeBlock(Tree.Block block) {
        List<Tree.Pair> all = block.all();
        int at = luck.nextInt(all.size());
        Tree.Pair pair = all.get(at);
        switch (luck.nextInt(10)) {
            case 0 -> all.remove(at);
            case 1 ->
                all.add(
                        luck.nextInt(all.size() + 1),
                        new Tree.Pair(pair.key(), pair.value().copy()));
            case 2 -> all.set(at, new Tree.Pair(misspelt(pair.key()), pair.value()));
            case 3 -> {
                int other = luck.nextInt(all.size());
                Tree value = all.get(other).value();
                all.set(other, new Tree.Pair(all.get(other).key(), pair.value()));
                all.set(at, new Tree.Pair(pair.key(), value));
            }
            default -> all.set(at, new Tree.Pair(pair.key(), changed(pair.value())));
        }
    }

    private void changeItems(List<Tree> all) {
        int at = luck.nextInt(all.size());
        switch (luck.nextInt(6)) {
            case 0 -> all.remove(at);
            case 1 -> all.add(all.get(at).copy());
            case 2 -> Collections.swap(all, at, luck.nextInt(all.size()));
            default -> all.set(at, changed(all.get(at)));
        }
    }

    private Tree changed(Tree value) {
        if (value instanceof Tree.Leaf leaf) {
            return luck.nextInt(12) == 0 ? wrapped(leaf) : new Tree.Leaf(changed(leaf.written()));
        }
        if (luck.nextInt(3) == 0) {
            return new Tree.Leaf(one(ODD));
        }
        if (value instanceof Tree.Block block && !block.all().isEmpty()) {
            changeBlock(block);
        } else if (value instanceof Tree.Items items && !items.all().isEmpty()) {
            changeItems(items.all());
        }
        return value;
    }

    private Tree wrapped(Tree.Leaf leaf) {
        return luck.nextBoolean()
                ? new Tree.Items(new ArrayList<>(List.of(leaf)))
                : new Tree.Block(new ArrayList<>(List.of(new Tree.Pair("x", leaf))));
    }

    /** A value with another number, another unit, or quite another one. */
    String changed(String written) {
        Matcher number = NUMBER.matcher(written);
        if (number.matches() && luck.nextInt(4) != 0) {
            if (luck.nextInt(4) == 0) {
                return number.group(1) + number.group(2) + " " + one(UNITS) + number.group(1);
            }
            double product = Double.parseDouble(number.group(2)) * Double.parseDouble(one(FACTORS));
            return number.group(1) + plain(product) + number.group(3);
        }
        return luck.nextInt(3) == 0 ? misspelt(written) : one(ODD);
    }

    private String misspelt(String word) {
        if (word.length() < 2) {
            return word + "x";
        }
        int at = luck.nextInt(word.length() - 1);
        return switch (luck.nextInt(4)) {
            case 0 -> word.substring(0, at) + word.substring(at + 1);
            case 1 -> word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
            case 2 -> word.toUpperCase(Locale.ROOT);
            default -> word.substring(0, at) + "e" + word.substring(at);
        };
    }

    /** A changed copy of a table: its rows, columns or cells. */
    String mutateTable(String table) {
        List<List<String>> rows = new ArrayList<>();
        String separator = table.lines().findFirst().orElse("").contains(";") ? ";" : ",";
        table.lines().forEach(line -> rows.add(new ArrayList<>(List.of(line.split(separator, -1)))));
        for (int i = luck.nextInt(3); i >= 0; i--) {
            changeTable(rows);
        }
        String end = luck.nextInt(4) == 0 ? "\r\n" : "\n";
        String between = luck.nextInt(6) == 0 ? one(List.of(";", "\t", ",")) : separator;
        return String.join(
                        end, rows.stream().map(row -> String.join(between, row)).toList())
                + end;
    }

    private void changeTable(List<List<String>> rows) {
        int at = luck.nextInt(rows.size());
        List<String> row = rows.get(at);
        int cell = luck.nextInt(row.size());
        switch (luck.nextInt(10)) {
            case 0 -> rows.remove(rows.size() > 1 ? at : 0);
            case 1 -> rows.add(luck.nextInt(rows.size() + 1), new ArrayList<>(row));
            case 2 -> row.add(cell, one(ODD));
            case 3 -> row.remove(row.size() > 1 ? cell : 0);
            case 4 -> rows.forEach(each -> Collections.swap(each, 0, Math.min(cell, each.size() - 1)));
            case 5 -> row.set(cell, '"' + row.get(cell));
            default -> row.set(cell, changed(row.get(cell)));
        }
        rows.removeIf(List::isEmpty);
        if (rows.isEmpty()) {
            rows.add(new ArrayList<>(List.of("")));
        }
    }

    private String one(List<String> from) {
        return from.get(luck.nextInt(from.size()));
    }
}
