package lanetide.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import lanetide.cli.Lanetide;

/** Runs the program inside a test. */
final class Program {
    private Program() {}

    /** What came of a run. */
    record Outcome(int exitCode, String out, String err) {}

    static Outcome run(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = java.util.Arrays.stream(args).map(String::valueOf).toArray(String[]::new);
        int exitCode = Lanetide.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Outcome(exitCode, out.toString(), err.toString());
    }
}
