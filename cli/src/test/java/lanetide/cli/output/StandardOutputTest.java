package lanetide.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardOutputTest {
    /** As JDK 17 (cp850) and newer ones (IBM850) name the code pages of Windows. */
    @ParameterizedTest
    @ValueSource(strings = {"cp850", "IBM850", "cp437", "windows-1252"})
    void aTerminalIsWrittenToInItsOwnLetters(String name) {
        assertThat(StandardOutput.charset(true, name)).isEqualTo(Charset.forName(name));
        assertThat("ë".getBytes(StandardOutput.charset(true, name))).hasSize(1);
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"UTF-8", "ANSI_X3.4-1968", "no-such-letters"})
    void aTerminalThatKnowsNoneOfItsOwnIsWrittenToInUtf8(String name) {
        assertThat(StandardOutput.charset(true, name)).isEqualTo(StandardCharsets.UTF_8);
    }

    @Test
    void aFileOrAPipeGetsTheSameBytesEverywhere() {
        assertThat(StandardOutput.charset(false, "cp850")).isEqualTo(StandardCharsets.UTF_8);
    }
}
