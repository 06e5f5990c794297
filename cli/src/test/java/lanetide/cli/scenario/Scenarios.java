package lanetide.cli.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;

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

    /** Reads the sound scenario with one passage replaced. */
    public static Reading readWith(String passage, String replacement) {
        if (!SOUND.contains(passage)) {
            throw new IllegalArgumentException("the sound scenario has no passage '" + passage + "'");
        }
        return read(SOUND.replace(passage, replacement));
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
