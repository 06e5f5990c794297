package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Pieces of YAML for tests of single readers. */
final class Yaml {
    private Yaml() {}

    /** What a text is composed into. */
    static Node node(String text, Notices notices) {
        return new YamlTree(notices).compose(text).orElseThrow();
    }

    /** The value after {@code key: }, as it would be written in a scenario. */
    static Value value(String written, String hint, Notices notices) {
        MappingNode block = (MappingNode) node("key: " + written, notices);
        return new Value(block.getValue().get(0).getValueNode(), "key", hint, notices);
    }

    /** The lines of a block. */
    static MappingNode block(String... lines) {
        return (MappingNode) node(String.join("\n", List.of(lines)), new Notices("test.yaml"));
    }

    /** One thing was refused, at that place. */
    static void assertRefused(Notices notices, NoticeCode code, int line, int column, String value) {
        assertThat(notices.list()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo(code);
            assertThat(notice.line()).isEqualTo(line);
            assertThat(notice.column()).isEqualTo(column);
            assertThat(notice.value()).isEqualTo(value);
        });
    }
}
