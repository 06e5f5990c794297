package lanetide.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Measures two builds of the program by turns, each on its own scenarios, and prints the table of cli/README.md:
 * medians of the time until an answer is there and of the processor time of the whole process.
 *
 * <pre>
 * {@code java -cp cli/target/test-classes lanetide.cli.SpeedTable OLD.jar OLD-SCENARIOS NEW.jar NEW-SCENARIOS [RUNS [WORK ...]]}
 * </pre>
 *
 * <p>With {@code -Dlanetide.javaOptions="..."} the new build gets those options, as a launcher gives them.
 *
 * <p>RUNS is 5 unless it is told, and WORK the beginnings of the rows that are wanted, all unless they are told. Both
 * answer with their own numbers of playings, which are the defaults of their commands.
 */
public final class SpeedTable {
    private static final String CHILD = "--child";
    private static final String CPU = "processor time in ns: ";
    private static final int RUNS = 5;

    private static final List<Work> WORKS = List.of(
            new Work("check, smallest scenario", "check", "one-pair.yaml"),
            new Work("simulate, 20 playings", "simulate", "championship.yaml", "--replications", "20"),
            new Work("simulate, one playing", "simulate", "championship.yaml", "--replications", "1"),
            new Work(
                    "preview, one bowler",
                    "preview",
                    "championship.yaml",
                    "--squad",
                    "C",
                    "--pair",
                    "7-8",
                    "--replications",
                    "20"),
            new Work("reoil", "reoil", "championship.yaml", "--replications", "20"),
            new Work("sheets", "sheets", "championship.yaml", "--into", "FOLDER", "--replications", "20"),
            new Work("report", "report", "championship.yaml", "--replications", "20"),
            new Work("fairness, with remedies", "fairness", "championship.yaml"));

    private final Path folder;

    private SpeedTable(Path folder) {
        this.folder = folder;
    }

    /**
     * A row of the table.
     *
     * @param name what is done
     * @param arguments the command, the scenario's file, options; {@code FOLDER} stands for a folder to write to
     */
    private record Work(String name, List<String> arguments) {
        Work(String name, String... arguments) {
            this(name, List.of(arguments));
        }
    }

    /** A build of the program, with the folder of its scenarios and the options of its JVM. */
    private record Build(Path jar, Path scenarios, List<String> options) {}

    /** Times of a run (s). */
    private record Times(double wall, double processor) {}

    /**
     * Measures, or runs the program for one measurement.
     *
     * @param arguments as above; after {@code --child} those of the program
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length > 0 && arguments[0].equals(CHILD)) {
            tellProcessorTimeAtTheEnd();
            Lanetide.main(Arrays.copyOfRange(arguments, 1, arguments.length));
            return;
        }
        if (arguments.length < 4) {
            System.err.println("SpeedTable OLD.jar OLD-SCENARIOS NEW.jar NEW-SCENARIOS [RUNS [WORK ...]]");
            System.exit(2);
        }
        Build old = new Build(Path.of(arguments[0]), Path.of(arguments[1]), List.of());
        Build present = new Build(Path.of(arguments[2]), Path.of(arguments[3]), javaOptions());
        int runs = arguments.length > 4 ? Integer.parseInt(arguments[4]) : RUNS;
        List<String> wanted = Arrays.asList(arguments).subList(Math.min(5, arguments.length), arguments.length);
        System.out.println("| work | s, then | s, now | ratio | processor s, then | now | ratio |");
        System.out.println("|---|---|---|---|---|---|---|");
        SpeedTable table = new SpeedTable(Files.createTempDirectory("speed"));
        WORKS.stream()
                .filter(work -> wanted.isEmpty() || wanted.stream().anyMatch(work.name()::startsWith))
                .forEach(work -> System.out.println(table.row(work, old, present, runs)));
    }

    private static List<String> javaOptions() {
        return Pattern.compile(" +")
                .splitAsStream(System.getProperty("lanetide.javaOptions", ""))
                .filter(option -> !option.isEmpty())
                .toList();
    }

    /** Processor time is known to the process alone. */
    private static void tellProcessorTimeAtTheEnd() {
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        Runtime.getRuntime()
                .addShutdownHook(new Thread(() -> System.err.println("\n" + CPU + system.getProcessCpuTime())));
    }

    private String row(Work work, Build old, Build present, int runs) {
        List<Times> then = new ArrayList<>();
        List<Times> now = new ArrayList<>();
        for (int run = 0; run < runs; run++) {
            then.add(timed(work, old));
            now.add(timed(work, present));
        }
        double[] wall = {
            median(then.stream().mapToDouble(Times::wall).toArray()),
            median(now.stream().mapToDouble(Times::wall).toArray())
        };
        double[] processor = {
            median(then.stream().mapToDouble(Times::processor).toArray()),
            median(now.stream().mapToDouble(Times::processor).toArray())
        };
        return String.format(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.2f | %.1f | %.1f | %.2f |",
                work.name(),
                wall[0],
                wall[1],
                wall[1] / wall[0],
                processor[0],
                processor[1],
                processor[1] / processor[0]);
    }

    private Times timed(Work work, Build build) {
        try {
            Path errors = folder.resolve("errors");
            ProcessBuilder process = new ProcessBuilder(command(work, build))
                    .redirectOutput(folder.resolve("answer").toFile())
                    .redirectError(errors.toFile());
            long startNs = System.nanoTime();
            int exit = process.start().waitFor();
            double wall = (System.nanoTime() - startNs) / 1e9;
            String told = Files.readString(errors, StandardCharsets.UTF_8);
            if (exit != 0) {
                throw new IllegalStateException(build.jar() + " failed at " + work.name() + ": " + told);
            }
            return new Times(
                    wall,
                    Long.parseLong(told.substring(told.lastIndexOf(CPU) + CPU.length())
                                    .strip())
                            / 1e9);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted at " + work.name(), e);
        }
    }

    private List<String> command(Work work, Build build) {
        Stream<String> arguments = work.arguments().stream()
                .map(word ->
                        word.endsWith(".yaml") ? build.scenarios().resolve(word).toString() : word)
                .map(word -> word.equals("FOLDER") ? folder.toString() : word);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classes = build.jar() + System.getProperty("path.separator") + System.getProperty("java.class.path");
        return Stream.of(
                        Stream.of(java),
                        build.options().stream(),
                        Stream.of("-cp", classes, SpeedTable.class.getName(), CHILD),
                        arguments,
                        Stream.of("--quiet"))
                .flatMap(words -> words)
                .toList();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
