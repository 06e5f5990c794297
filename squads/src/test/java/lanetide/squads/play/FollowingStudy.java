package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import lanetide.squads.model.Event;
import lanetide.squads.model.Knowledge;
import lanetide.squads.play.FollowingTest.Kind;
import lanetide.squads.play.FollowingTest.Look;
import lanetide.squads.study.Playable;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;
import lanetide.squads.watch.ShotObserver;

/**
 * What share of the way from never moving to knowing all bowlers of a level go under the shipped sets of values: how
 * far what is not known of their learning reaches.
 */
final class FollowingStudy {
    /** Sets that are looked at, the first of those that ship. */
    static final int SETS = 24;
    /** Playings of each style under each set. */
    static final int PLAYINGS = 12;

    private static final long FIRST_SEED = 30_000;
    private static final List<Look> LOOKS = List.of(Look.EIGHTH, Look.LATE_FIRST);

    private FollowingStudy() {}

    /**
     * What judged bowlers of a level gain on never moving under a set, means over styles, playings and games that are
     * looked at (pins a game).
     *
     * @param learned by learning
     * @param known by knowing all
     */
    record Gain(double learned, double known) {
        double share() {
            return learned / known;
        }
    }

    static Gain of(String level, int set, int playings) {
        double learned = 0;
        double known = 0;
        for (String style : FollowingTest.STYLES) {
            Event event = FollowingTest.event(new Kind(style, level));
            Playable playable = Playable.of(PlayModel.under(event, ValueSets.shipped(set)));
            for (int i = 0; i < playings; i++) {
                long seed = FIRST_SEED + set * 100L + i;
                double never = mean(playable, seed, Knowledge.NOTHING);
                learned += mean(playable, seed, Knowledge.SEEN_AND_TOLD) - never;
                known += mean(playable, seed, Knowledge.EVERYTHING) - never;
            }
        }
        int all = FollowingTest.STYLES.size() * playings;
        return new Gain(learned / all, known / all);
    }

    private static double mean(Playable playable, long seed, Knowledge knowledge) {
        List<Double> scores = FollowingTest.scores(playable, seed, knowledge, ShotObserver.NONE);
        return LOOKS.stream()
                .mapToDouble(look -> scores.get(List.of(Look.values()).indexOf(look)))
                .average()
                .orElseThrow();
    }

    /**
     * Runs the study on all processors and prints its table.
     *
     * @param args nothing
     */
    public static void main(String[] args) throws ExecutionException, InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        for (String level : FollowingTest.LEVELS) {
            List<Future<Gain>> running = IntStream.rangeClosed(1, SETS)
                    .mapToObj(set -> pool.submit(() -> of(level, set, PLAYINGS)))
                    .toList();
            List<Gain> gains = new ArrayList<>();
            for (Future<Gain> one : running) {
                gains.add(one.get());
            }
            System.out.println(row(level, gains));
        }
        pool.shutdown();
    }

    /** Shares of the mean gain of all that is known, since under some sets there is little to gain. */
    private static String row(String level, List<Gain> gains) {
        double known = gains.stream().mapToDouble(Gain::known).average().orElseThrow();
        double[] learned = gains.stream().mapToDouble(Gain::learned).sorted().toArray();
        double[] shares = gains.stream()
                .filter(gain -> gain.known() > known / 2)
                .mapToDouble(Gain::share)
                .sorted()
                .toArray();
        return String.format(
                Locale.ROOT,
                "| %s | %.1f to %.1f, middle %.1f | %.1f | %.0f to %.0f, middle %.0f %% of %d sets |",
                level,
                learned[1],
                learned[learned.length - 2],
                Arrays.stream(learned).average().orElseThrow(),
                known,
                100 * shares[1],
                100 * shares[shares.length - 2],
                100 * shares[shares.length / 2],
                shares.length);
    }
}
