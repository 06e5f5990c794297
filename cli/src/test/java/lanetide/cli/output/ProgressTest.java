package lanetide.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import lanetide.cli.output.Progress.Manner;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final long SECOND_NANOS = 1_000_000_000L;

    /** A run of a hundred steps of two seconds each. */
    private static String told(Manner manner) {
        StringWriter text = new StringWriter();
        long[] now = {5};
        Progress progress = new Progress(new PrintWriter(text, true), "playings", 100, manner, () -> now[0]);
        for (int done = 1; done <= 100; done++) {
            now[0] += 2 * SECOND_NANOS;
            progress.accept(done);
        }
        progress.close();
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    @Test
    void inAFileALineAMinuteIsWritten() {
        assertThat(told(Manner.LINE_A_MINUTE)).isEqualTo("""
                30 of 100 playings, about 2 min left
                60 of 100 playings, about 80 s left
                90 of 100 playings, about 20 s left
                """);
    }

    @Test
    void onATerminalOneLineIsOverwrittenAndErased() {
        assertThat(told(Manner.ONE_LINE))
                .startsWith("\r1 of 100 playings")
                .endsWith(" ".repeat(60) + "\r")
                .doesNotContain("\n");
    }

    @Test
    void aQuietRunSaysNothing() {
        assertThat(told(Manner.SILENT)).isEmpty();
    }
}
