package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NamedFilesTest {
    @TempDir
    private Path folder;

    private final Notices notices = new Notices("test.yaml");
    private NamedFiles files;

    @BeforeEach
    void namedByAScenarioInTheFolder() {
        files = new NamedFiles(folder.resolve("event.yaml").toString());
    }

    private Optional<byte[]> read(String name) {
        return files.read(Yaml.value('"' + name + '"', "", notices));
    }

    @Test
    void aFileBesideTheScenarioIsReadAndItsHashKept() throws IOException {
        Files.writeString(folder.resolve("tapes 1.csv"), "abc");

        assertThat(read("tapes 1.csv"))
                .hasValueSatisfying(bytes -> assertThat(bytes).hasSize(3));
        assertThat(files.sha256())
                .containsOnlyKeys("tapes 1.csv")
                .containsValue("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(files.looked()).containsExactly(folder.resolve("tapes 1.csv"));
        assertThat(files.path("x.csv")).isEqualTo(folder.resolve("x.csv").toString());
        assertThat(notices.list()).isEmpty();
    }

    @Test
    void aFileThatIsNotThereWasLookedForAndIsTold() {
        assertThat(read("none.csv")).isEmpty();
        assertThat(files.looked()).hasSize(1);
        assertThat(files.sha256()).isEmpty();
        assertThat(notices.list()).extracting(Notice::code).containsExactly(NoticeCode.NAMED_FILE_MISSING);
    }

    @Test
    void aFolderIsNoFile() throws IOException {
        Files.createDirectory(folder.resolve("folder.csv"));

        assertThat(read("folder.csv")).isEmpty();
        assertThat(notices.list())
                .extracting(Notice::message)
                .singleElement()
                .satisfies(message -> assertThat(message).contains("which is a folder"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../up.csv", "/etc/passwd", "sub/x.csv", ".hidden.csv", "noending", "con.csv"})
    void aNameThatCouldLieElsewhereIsNotLookedFor(String name) {
        assertThat(read(name)).isEmpty();
        assertThat(files.looked()).isEmpty();
        assertThat(notices.list()).extracting(Notice::code).isEqualTo(List.of(NoticeCode.BAD_TEXT));
    }

    @Test
    void aListIsNoName() {
        assertThat(files.read(Yaml.value("[a.csv]", "", notices))).isEmpty();
        assertThat(notices.list()).extracting(Notice::code).containsExactly(NoticeCode.WRONG_KIND);
    }

    @Test
    void noMoreIsReadThanAByteOverTheMost() throws IOException {
        Files.write(folder.resolve("large.csv"), new byte[SourceText.MAX_BYTES + 10]);

        assertThat(read("large.csv"))
                .hasValueSatisfying(bytes -> assertThat(bytes).hasSize(SourceText.MAX_BYTES + 1));
    }
}
