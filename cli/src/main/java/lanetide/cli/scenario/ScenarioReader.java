package lanetide.cli.scenario;

import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Reads scenario files. Every fault is found in one pass; a file that is no scenario at all, or is made to do harm, is
 * refused before it is parsed.
 */
public final class ScenarioReader {
    /** Most bytes a scenario may have; more need not be read to be refused. */
    public static final int MOST_BYTES = SourceText.MOST_BYTES;

    /** Largest seed: twelve digits, which every program that reads JSON keeps exact. */
    public static final long LARGEST_SEED = 999_999_999_999L;

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
     * @param bytes its bytes; of a file larger than {@link #MOST_BYTES}, one more than that will do
     * @return the scenario, or why there is none
     */
    public Reading read(String file, byte[] bytes) {
        Notices notices = new Notices(file);
        Optional<String> sha256 = bytes.length > MOST_BYTES ? Optional.empty() : Optional.of(sha256(bytes));
        Optional<Node> root = new SourceText(notices).read(bytes).flatMap(new YamlTree(notices)::compose);
        Optional<Section> section = root.flatMap(node -> new Value(node, "", "", notices).section(Block.SCENARIO));
        Assumptions assumptions = new Assumptions();
        NamedFiles files = new NamedFiles(file);
        Optional<EventReader.Planned> event = section.flatMap(scenario ->
                notices.keepingWhatIsFound(() -> new EventReader(notices, assumptions, seed, files).read(scenario)));
        event.ifPresent(planned -> assumptions.addNamesOf(planned.event()));
        return new Reading(
                sha256,
                files.sha256(),
                Stream.concat(Stream.of(Path.of(file)), files.looked().stream()).toList(),
                event.map(seeded -> new Scenario(
                        file,
                        sha256.orElseThrow(),
                        seeded.seed(),
                        seeded.event(),
                        seeded.design(),
                        seeded.bands(),
                        seeded.names(),
                        seeded.policy(),
                        assumptions.list())),
                notices.list());
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256, which every Java platform must provide, is missing", e);
        }
    }
}
