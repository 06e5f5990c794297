package lanetide.squads.unknown;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;

/** Sets of values with what the model says of facts under each, kept in a file while it is worked out. */
final class Bank {
    private final Path file;
    private final List<Unknown> unknowns;
    private final Function<ValueSet, double[]> model;
    private final List<Point> points = new ArrayList<>();

    /**
     * A set.
     *
     * @param shares where each value lies in its range, 0 to 1
     * @param said what the model says of each fact; NaN where no line meets the pocket
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Point(double[] shares, double[] said) {
        boolean isWhole() {
            return Arrays.stream(said).noneMatch(Double::isNaN);
        }
    }

    /**
     * The bank of a file, with what stands there already.
     *
     * @param file the file
     * @param unknowns what the sets are of, in the order of a point's shares
     * @param model what is said of each fact under a set
     */
    Bank(Path file, List<Unknown> unknowns, Function<ValueSet, double[]> model) {
        this.file = file;
        this.unknowns = unknowns;
        this.model = model;
        if (Files.exists(file)) {
            try {
                Files.readAllLines(file, StandardCharsets.UTF_8).forEach(line -> points.add(point(line)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static Point point(String line) {
        String[] halves = line.split(";", -1);
        return new Point(numbers(halves[0]), numbers(halves[1]));
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.strip().split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static String text(double[] numbers) {
        return Arrays.stream(numbers).mapToObj(Double::toString).collect(Collectors.joining(" "));
    }

    List<Point> points() {
        return points;
    }

    /** Works out points that are wanted next, on all processors; those that the file has already are taken from it. */
    List<Point> extend(int from, List<double[]> wanted) {
        ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Future<Point>> running = new ArrayList<>();
            for (double[] shares : wanted.subList(Math.min(wanted.size(), points.size() - from), wanted.size())) {
                running.add(pool.submit(() -> new Point(shares, model.apply(set(unknowns, shares)))));
            }
            for (Future<Point> one : running) {
                Point point = one.get();
                points.add(point);
                Files.writeString(
                        file,
                        text(point.shares()) + ";" + text(point.said()) + "\n",
                        StandardOpenOption.CREATE,
                        StandardOpenOption.APPEND);
            }
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            pool.shutdown();
        }
        return points.subList(from, from + wanted.size());
    }

    /** The values at some shares of their ranges. */
    static ValueSet set(List<Unknown> unknowns, double[] shares) {
        Map<String, Double> values = new TreeMap<>();
        for (int u = 0; u < shares.length; u++) {
            values.put(unknowns.get(u).id(), unknowns.get(u).at(shares[u]));
        }
        return new ValueSet(0, values);
    }
}
