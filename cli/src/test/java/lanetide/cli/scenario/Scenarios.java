package lanetide.cli.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lanetide.squads.model.Bowler;

/** Scenario files for tests. */
public final class Scenarios {
    /** The folder of scenarios, seen from this module. */
    public static final Path FOLDER = Path.of("..", "scenarios");

    /** A small scenario without faults. */
    public static final String SOUND = """
            name: Practice night
            seed: 1
            centre:
              lanes: 1 to 4
              surface: hard-synthetic
            pattern:
              length: 39 ft
              volume: 23 mL
              ratio: 4:1
            games: 3
            practice: 10 min
            rotation: stay
            squads:
              - {id: A, start: "18:00", oil: fresh}
            field:
              perSquad: 8
              hands: {right: 75 %, left: 25 %}
              styles: {stroker: 50 %, tweener: 50 %}
              levels: {scratch: 50 %, league: 50 %}
              covers: {urethane: 25 %, medium-reactive: 75 %}
            """;

    private Scenarios() {}

    /** The scenarios that come with the program. */
    public static List<Path> shipped() {
        return yamlIn(FOLDER);
    }

    /** The scenarios with one fault each. */
    public static List<Path> faulty() {
        return yamlIn(FOLDER.resolve("faulty"));
    }

    /** Reads a text as a scenario. */
    public static Reading read(String text) {
        return new ScenarioReader(OptionalLong.empty()).read("test.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    /** A bowler of the sound scenario. */
    public static Bowler oneBowler() {
        return read(SOUND)
                .scenario()
                .orElseThrow()
                .event()
                .squads()
                .get(0)
                .groups()
                .get(0)
                .bowlers()
                .get(0);
    }

    /** Reads the sound scenario with one passage replaced. */
    public static Reading readWith(String passage, String replacement) {
        if (!SOUND.contains(passage)) {
            throw new IllegalArgumentException("the sound scenario has no passage '" + passage + "'");
        }
        return read(SOUND.replace(passage, replacement));
    }

    /** Names that a page, a table, a calendar or a graph could take for something else. */
    public static List<String> hostileNames() {
        return List.of(
                "<script>alert(1)</script><img src=x onerror=alert(1)> & </title>",
                "\"; =HYPERLINK(\"file:///etc/passwd\")",
                "=1+1",
                "@SUM(A1), -2 + 3",
                "\u05de\u05d5\u05e2\u05d3\u05d5\u05df \u0628\u0637\u0648\u0644\u0629 2 // A-1",
                "BEGIN:VEVENT\\nDTSTART;x=y,z \\ end",
                "Long ".repeat(39) + "Cup 1");
    }

    /** A text as a double-quoted scalar of YAML. */
    public static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static List<Path> yamlIn(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
