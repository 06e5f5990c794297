package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** What is refused before a scenario is looked at, with its line and column. */
class YamlTreeTest {
    private final Notices notices = new Notices("test.yaml");

    private Optional<Node> compose(String text) {
        return new YamlTree(notices).compose(text);
    }

    @Test
    void aBlockIsComposedWithThePlacesOfItsKeys() {
        MappingNode root = (MappingNode) compose("name: A\ngames: 3\n").orElseThrow();

        assertThat(root.getValue()).hasSize(2);
        assertThat(root.getValue()
                        .get(1)
                        .getKeyNode()
                        .getStartMark()
                        .orElseThrow()
                        .getLine())
                .isEqualTo(1);
        assertThat(notices.list()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'a: &x 1'| ALIAS_REFUSED| 1| 4| &x",
                "'a: 1\nb: *x'| ALIAS_REFUSED| 2| 4| *x",
                "'a: !!str 1'| TAG_REFUSED| 1| 4| !!str",
                "'a: !own [1]'| TAG_REFUSED| 1| 4| !own",
                "'a: 1\n---\nb: 2'| SEVERAL_DOCUMENTS| 2| 1| ---",
                "'# nothing'| FILE_EMPTY| 1| 1| ''",
                "'a:\n\tb: 1'| TAB_INDENTATION| 2| 1| 'b: 1'",
                "'a: 1\nb: [1'| SYNTAX_ERROR| 2| 6| 'b: [1'",
                "'a: \"x'| SYNTAX_ERROR| 1| 6| 'a: \"x'"
            })
    void whatIsNotSafeOrNotYamlIsRefusedAtItsPlace(String text, NoticeCode code, int line, int column, String value) {
        assertThat(compose(text)).isEmpty();
        Yaml.assertRefused(notices, code, line, column, value);
    }

    @Test
    void twentyLevelsAreReadAndTwentyOneAreNot() {
        assertThat(compose("[".repeat(20) + "]".repeat(20))).isPresent();
        assertThat(compose("[".repeat(21) + "]".repeat(21))).isEmpty();
        assertThat(notices.list()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo(NoticeCode.NESTING_TOO_DEEP);
            assertThat(notice.value()).isEqualTo("level 21");
            assertThat(notice.column()).isEqualTo(21);
        });
    }

    @Test
    void listsBesideEachOtherAreNotDeep() {
        assertThat(compose("[" + "[1],".repeat(30) + "2]")).isPresent();
        assertThat(notices.list()).extracting(Notice::message).isEmpty();
    }
}
