package lanetide.cli.command;

import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.cli.Lanetide;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs the program inside a test. */
public final class Program {
    private Program() {}

    /** What came of a run. */
    public record Outcome(int exitCode, String out, String err) {
        /** The answer, read as JSON. */
        JsonNode answer() {
            return JsonMapper.shared().readTree(out);
        }
    }

    /** Runs a command line to which options are added. */
    public static Outcome runWith(List<?> words, Object... options) {
        return run(Stream.concat(words.stream(), Arrays.stream(options)).toArray());
    }

    public static Outcome run(Object... args) {
        return run(Optional.empty(), args);
    }

    /** Runs a command that somebody answers. */
    static Outcome answering(String typed, Object... args) {
        return run(Optional.of(new StringReader(typed)), args);
    }

    private static Outcome run(Optional<Reader> input, Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = Arrays.stream(args).map(String::valueOf).toArray(String[]::new);
        int exitCode = Lanetide.run(input, new PrintWriter(out), new PrintWriter(err), words);
        return new Outcome(exitCode, out.toString(), err.toString());
    }
}
