package lanetide.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.cli.output.StandardOutput;

/**
 * A program for a JVM of its own, which answers every line of {@code commands.txt} in the folder in which it is started
 * into {@code answers.txt}, with whatever the machine it is on is like. {@code -Dparts=true} plays in two parts what
 * can be played so, joins them and answers from the joined file; {@code -Dthreads=N} asks for so many.
 */
final class Answers {
    private static final List<String> IN_PARTS = List.of("simulate", "fairness", "reoil", "compare", "report");
    private static final List<String> WITHOUT_THREADS = List.of("new", "schema", "generate-completion", "help", "--");

    private final PrintWriter out = StandardOutput.writer();
    private final PrintWriter err = StandardOutput.errors();

    private Answers() {}

    public static void main(String[] args) throws IOException {
        Optional.ofNullable(System.getProperty("language"))
                .ifPresent(language -> Locale.setDefault(Locale.forLanguageTag(language)));
        Lanetide.settle();
        Answers answers = new Answers();
        for (String line : Files.readAllLines(Path.of("commands.txt"))) {
            answers.answer(line);
        }
        answers.out.flush();
        answers.err.flush();
        if (answers.out.checkError()) {
            System.exit(1);
        }
    }

    private void answer(String line) throws IOException {
        out.print("\n$ " + line + "\n");
        List<String> words = new ArrayList<>(List.of(line.split(" ", -1)));
        if (WITHOUT_THREADS.stream().noneMatch(line::startsWith)) {
            words.add("--threads=" + Integer.getInteger("threads", 2));
        }
        if (Boolean.getBoolean("parts") && IN_PARTS.contains(words.get(0))) {
            words.add("--resume=" + joined(words));
        }
        out.print("exit code " + Lanetide.run(out, err, words.toArray(String[]::new)) + "\n");
    }

    private Path joined(List<String> words) throws IOException {
        Path kept = Files.createTempDirectory("parts");
        List<String> merge =
                new ArrayList<>(List.of("merge", "-o", kept.resolve("joined").toString()));
        for (int part = 2; part >= 1; part--) {
            Path file = kept.resolve("part-" + part);
            unheard(Stream.concat(words.stream(), Stream.of("--resume=" + file, "--part=" + part + "/2"))
                    .toList());
            merge.add(file.toString());
        }
        unheard(merge);
        return kept.resolve("joined");
    }

    /** What parts and their joining say is not the answer. */
    private static void unheard(List<String> words) {
        PrintWriter nobody = new PrintWriter(new StringWriter());
        Lanetide.run(nobody, nobody, words.toArray(String[]::new));
    }
}
