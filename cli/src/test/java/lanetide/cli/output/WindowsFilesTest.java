package lanetide.cli.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers on a file system with drives, backslashes and names in which capitals do not matter, held in memory. */
class WindowsFilesTest {
    private FileSystem files;
    private Path folder;

    /** By its name, so that only those who run this test need the library. */
    @BeforeEach
    void aDiskAsWindowsHasIt() throws IOException, ReflectiveOperationException {
        Class<?> configuration = Class.forName("com.google.common.jimfs.Configuration");
        files = (FileSystem) Class.forName("com.google.common.jimfs.Jimfs")
                .getMethod("newFileSystem", configuration)
                .invoke(null, configuration.getMethod("windows").invoke(null));
        folder = Files.createDirectories(files.getPath("C:\\Users\\Centre"));
    }

    @AfterEach
    void isTakenAway() throws IOException {
        files.close();
    }

    private AnswerFile file(String name) {
        return new Outputs().file("--out", folder.resolve(name));
    }

    @Test
    void anAnswerReplacesAnOlderOneAndLeavesNothingBesideIt() throws IOException {
        file("answer.txt").write("old");
        file("answer.txt").write("new\n");

        assertThat(Files.readString(folder.resolve("answer.txt"))).isEqualTo("new\n");
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).hasSize(1);
        }
    }

    @Test
    void whatIsNotCommittedLeavesTheOlderOneAsItWas() throws IOException {
        file("answer.txt").write("old");
        try (AnswerStream stream = file("answer.txt").open()) {
            stream.write("half");
        }

        assertThat(Files.readString(folder.resolve("answer.txt"))).isEqualTo("old");
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).hasSize(1);
        }
    }

    @Test
    void severalAnswersGoIntoANewFolder() throws IOException {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("plan.html", "a");
        answers.put("cards.html", "b");
        Path sheets = folder.resolve("sheets");

        new Outputs().folder(sheets, List.copyOf(answers.keySet())).write(answers);

        assertThat(Files.readString(sheets.resolve("cards.html"))).isEqualTo("b");
    }

    @Test
    void namesThatDifferInCapitalsAreOneFile() {
        Outputs outputs = new Outputs();
        outputs.file("--out", folder.resolve("Answer.csv"));

        assertThatThrownBy(() -> outputs.file("--trace", files.getPath("c:\\users\\centre\\answer.CSV")))
                .isInstanceOf(CommandFailure.class)
                .hasMessageContaining("name the same file");
    }

    @ParameterizedTest
    @ValueSource(strings = {"con", "NUL", "aux.txt", "Com1.csv", "lpt9", "prn.tar.gz", "con .txt", "answer."})
    void aNameThatWindowsKeepsForItselfIsRefused(String name) {
        assertThatThrownBy(() -> file(name))
                .isInstanceOf(CommandFailure.class)
                .hasMessageContaining("name another one");
    }

    @ParameterizedTest
    @ValueSource(strings = {"console.txt", "com10.csv", "nulls", ".aux", "a con.txt"})
    void otherNamesAreNot(String name) {
        file(name).write("x");

        assertThat(folder.resolve(name)).exists();
    }
}
