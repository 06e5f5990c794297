package lanetide.cli.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Scenarios;

/** Where a changed scenario lies, with the tables that it may name. */
final class FuzzFolder {
    /** Small events, each about something else, between them with every block a scenario can have. */
    private static final Path SMALL = Path.of("src", "test", "resources", "lanetide", "cli", "fuzz");

    private final Path folder;

    FuzzFolder(Path folder) {
        this.folder = folder;
    }

    Path resolve(String name) {
        return folder.resolve(name);
    }

    /** What is no character, such as half of a pair, becomes a question mark. */
    Path write(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }

    void write(Map<String, String> files) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            write(file.getKey(), file.getValue());
        }
    }

    /** The changed scenario as an event; empty if it cannot be played. */
    Optional<Scenario> read(String text) throws IOException {
        Path file = write("event.yaml", text);
        return new ScenarioReader(OptionalLong.empty())
                .read(file.toString(), Files.readAllBytes(file))
                .scenario();
    }

    /** Tables beside the shipped scenarios, and those of the small ones. */
    static Map<String, String> tables() throws IOException {
        Map<String, String> tables = new TreeMap<>(contents(Scenarios.FOLDER, ".csv"));
        tables.putAll(contents(SMALL, ".csv"));
        return tables;
    }

    static Map<String, String> smallEvents() throws IOException {
        return contents(SMALL, ".yaml");
    }

    private static Map<String, String> contents(Path folder, String end) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(path -> path.toString().endsWith(end)).toList()) {
                contents.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return contents;
    }
}
