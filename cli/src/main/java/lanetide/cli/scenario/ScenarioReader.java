package lanetide.cli.scenario;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.reader.EventReader;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.SourceText;
import lanetide.cli.scenario.value.Value;
import lanetide.cli.scenario.value.YamlTree;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Reads scenario files. Every fault is found in one pass; a file that is no scenario at all, or is made to do harm, is
 * refused before it is parsed.
 */
public final class ScenarioReader {
    /** Most bytes a scenario may have; more need not be read to be refused. */
    public static final int MAX_BYTES = SourceText.MAX_BYTES;

    private final OptionalLong seed;

    /**
     * A reader.
     *
     * @param seed the seed to use in place of each file's own, if any
     */
    public ScenarioReader(OptionalLong seed) {
        this.seed = seed;
    }

    /**
     * Reads a file.
     *
     * @param file its name, for the notices
     * @param bytes its bytes; of a file larger than {@link #MAX_BYTES}, one more than that will do
     * @return the scenario, or why there is none
     */
    public Reading read(String file, byte[] bytes) {
        Notices notices = new Notices(file);
        Optional<String> sha256 = bytes.length > MAX_BYTES ? Optional.empty() : Optional.of(SourceText.sha256(bytes));
        Optional<Node> root = new SourceText(notices).read(bytes).flatMap(new YamlTree(notices)::compose);
        Optional<Section> section = root.flatMap(node -> new Value(node, "", "", notices).section(EventKeys.SCENARIO));
        NamedFiles files = new NamedFiles(file);
        Optional<EventReader.Planned> event = section.flatMap(
                scenario -> notices.keepingWhatIsFound(() -> new EventReader(notices, seed, files).read(scenario)));
        event.ifPresent(planned -> notices.assumptions().addNamesOf(planned.event()));
        return new Reading(
                sha256,
                files.sha256(),
                Stream.concat(Stream.of(Path.of(file)), files.looked().stream()).toList(),
                event.map(seeded -> new Scenario(
                        file,
                        sha256.orElseThrow(),
                        seeded.seed(),
                        seeded.event(),
                        seeded.measurements(),
                        seeded.designs(),
                        seeded.bands(),
                        seeded.names(),
                        seeded.policy(),
                        seeded.drawn(),
                        seeded.waiting(),
                        seeded.clock(),
                        notices.assumptions().list(),
                        Reading.doubts(notices.list()))),
                notices.list(),
                event.flatMap(read -> root.filter(MappingNode.class::isInstance)
                        .map(node -> new Source((MappingNode) node, read.entries()))));
    }
}
