package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When help is in colours. Where there is no terminal, CLICOLOR_FORCE asks for them. */
class ColourTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "lanetide new --help,CLICOLOR_FORCE=1,true",
        "lanetide new --help,,false",
        "lanetide new --help,CLICOLOR_FORCE=1 NO_COLOR=1,false",
        "lanetide new --no-color --help,CLICOLOR_FORCE=1,false",
        "lanetide --no-color --help,CLICOLOR_FORCE=1,false"
    })
    void helpIsInColoursOnlyIfNobodyObjects(String line, String variables, boolean colours) {
        Map<String, String> environment = new HashMap<>();
        for (String variable : variables == null ? new String[0] : variables.split(" ", -1)) {
            environment.put(variable.substring(0, variable.indexOf('=')), "1");
        }

        Program.Outcome outcome = new Shell(folder).run(line, environment);

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out().contains("\u001B[")).isEqualTo(colours);
    }
}
