package lanetide.cli;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How long a short run takes beside an empty program, by turns and by the clock: {@code java
 * cli/src/test/java/lanetide/cli/StartTimes.java 11 cli/target/lanetide.jar cli/target/lanetide}. Every jar and
 * launcher named checks {@code scenarios/one-pair.yaml}; run it at the root of the project, on idle cores.
 */
final class StartTimes {
    private static final String SCENARIO = "scenarios/one-pair.yaml";

    private StartTimes() {}

    /**
     * Prints the median of each program and its ratio to that of the empty one.
     *
     * @param args how often, then jars and launchers
     * @throws Exception if one of them does not run
     */
    public static void main(String[] args) throws Exception {
        Path empty = Files.createTempDirectory("empty");
        Path source = Files.writeString(
                empty.resolve("Empty.java"), "class Empty { public static void main(String[] args) {} }");
        run(List.of("javac", source.toString()));
        Map<String, List<String>> programs = new LinkedHashMap<>();
        programs.put("an empty program", List.of("java", "-cp", empty.toString(), "Empty"));
        for (String program : Arrays.copyOfRange(args, 1, args.length)) {
            programs.put(
                    program,
                    program.endsWith(".jar")
                            ? List.of("java", "-jar", program, "check", SCENARIO)
                            : List.of(program, "check", SCENARIO));
        }
        Map<String, List<Long>> times = new LinkedHashMap<>();
        // The first round is not counted: it fills the caches of disk and launcher.
        for (int round = 0; round <= Integer.parseInt(args[0]); round++) {
            for (Map.Entry<String, List<String>> program : programs.entrySet()) {
                long tookNs = run(program.getValue());
                if (round > 0) {
                    times.computeIfAbsent(program.getKey(), any -> new ArrayList<>())
                            .add(tookNs);
                }
            }
        }
        double least = median(times.get("an empty program"));
        times.forEach((program, each) -> System.out.printf(
                Locale.ROOT, "%6.0f ms %5.1f x  %s%n", median(each) / 1e6, median(each) / least, program));
    }

    private static long run(List<String> command) throws IOException, InterruptedException {
        long beforeNs = System.nanoTime();
        int exitCode = new ProcessBuilder(command)
                .redirectOutput(Redirect.DISCARD)
                .redirectError(Redirect.INHERIT)
                .start()
                .waitFor();
        if (exitCode != 0) {
            throw new IOException(command + " ended with " + exitCode);
        }
        return System.nanoTime() - beforeNs;
    }

    private static double median(List<Long> times) {
        return times.stream().sorted().toList().get(times.size() / 2);
    }
}
