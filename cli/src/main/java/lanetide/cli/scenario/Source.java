package lanetide.cli.scenario;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/**
 * A scenario as it is written, from which another one can be.
 *
 * @param root the whole file
 * @param entries what is written of each listed bowler, by squad, then by what the event calls him
 */
public record Source(MappingNode root, Map<String, Map<String, MappingNode>> entries) {
    /** Copies the map. */
    public Source {
        entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }
}
