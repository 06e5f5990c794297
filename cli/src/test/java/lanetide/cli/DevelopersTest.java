package lanetide.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanetide.cli.report.WindowWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever is new finds what the table of places promises where it says. */
class DevelopersTest {
    private static final Path ROOT = Path.of("..");
    private static final List<String> MODULES = List.of("des", "oilflow", "squads", "cli");
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
    private static final Pattern PLACE = Pattern.compile("((?:[a-z]+\\.)*)([A-Z]\\w*)(?:\\.(\\w+))?");

    /** A row of the table "looking for". */
    private record Row(String what, String where) {}

    static List<Row> rows() throws IOException {
        List<String> lines = Files.readAllLines(ROOT.resolve("DEVELOPERS.md"));
        return lines.subList(lines.indexOf("| looking for | open |") + 2, lines.size()).stream()
                .takeWhile(line -> line.startsWith("| "))
                .map(line -> line.substring(2, line.length() - 2).split(" \\| "))
                .map(cells -> new Row(cells[0], cells[1]))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everythingNamedIsWhereItIsSaidToBe(Row row) throws IOException {
        Path module = ROOT;
        String room = "";
        List<String> found = new ArrayList<>();
        for (String name : QUOTED.matcher(row.where())
                .results()
                .map(match -> match.group(1))
                .toList()) {
            if (MODULES.contains(name)) {
                module = ROOT.resolve(name);
                room = "";
                continue;
            }
            MatchResult place = PLACE.matcher(name).results().findFirst().orElse(null);
            if (name.contains("/") || name.contains("...") || place == null || place.start() > 0) {
                assertThat(isThere(module, name)).as("%s: %s", row.what(), name).isTrue();
                String rooms = name.replace('.', '/') + "/";
                room = Files.isDirectory(sources(module).resolve(rooms)) ? rooms : room;
            } else {
                room = place.group(1).isEmpty() ? room : place.group(1).replace('.', '/');
                String source = source(module, room + place.group(2));
                assertThat(source)
                        .as("%s: %s", row.what(), name)
                        .contains(place.group(3) == null ? place.group(2) : place.group(3) + "(");
            }
            found.add(name);
        }
        assertThat(found).as(row.what()).isNotEmpty();
    }

    private static String source(Path module, String type) throws IOException {
        Path file = sources(module).resolve(type + ".java");
        return Files.isRegularFile(file) ? Files.readString(file) : "";
    }

    private static Path sources(Path module) {
        return module.resolve("src/main/java/lanetide").resolve(module.getFileName());
    }

    /** A package, a file or a kind of files: by its path from the top, in a module, or by its name alone. */
    private static boolean isThere(Path module, String name) throws IOException {
        String end = name.substring(name.lastIndexOf('*') + 1).replace("...", "");
        if (!end.equals(name)) {
            try (Stream<Path> files = Files.walk(module)) {
                return files.anyMatch(
                        file -> file.toString().replaceFirst("\\.java$", "").endsWith(end));
            }
        }
        if (Files.exists(ROOT.resolve(name))
                || Files.exists(module.resolve(name))
                || Files.isDirectory(sources(module).resolve(name.replace('.', '/')))) {
            return true;
        }
        try (Stream<Path> files = Files.walk(module.resolve("src/main"))) {
            return files.anyMatch(file -> file.endsWith(name));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "where oil is taken off a lane",
                "what an exit window is",
                "who decides to move",
                "what makes a schedule unfair",
                "where a key of a scenario is read",
                "how events are ordered"
            })
    void whatTheNewAskFirstIsInTheTable(String question) throws IOException {
        assertThat(rows()).extracting(Row::what).anyMatch(what -> what.startsWith(question));
    }

    @Test
    void theReadmeSaysOfTheWindowWhatTheCodeDoes() throws IOException {
        assertThat(Files.readString(ROOT.resolve("README.md")).replace('\n', ' '))
                .contains(WindowWords.MEANING);
    }
}
