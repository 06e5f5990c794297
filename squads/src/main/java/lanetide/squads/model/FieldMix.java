package lanetide.squads.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.ListSampler;

/**
 * A squad's bowlers by shares instead of one by one.
 *
 * <p>Each attribute is counted out exactly: every kind gets the whole part of its share of the bowlers, and the seats
 * left over go to the largest remainders, the earlier kind first where they are equal (method of A. Hamilton; F.
 * Pukelsheim, "Proportional Representation", 2014). The counted-out list is then shuffled by a stream of its own, so
 * that changing one attribute's shares moves no other attribute.
 *
 * @param bowlers bowlers in the squad, at least 1
 * @param hands shares of the delivery sides
 * @param styles shares of the playing styles
 * @param levels shares of the levels of skill
 * @param covers shares of the strike ball's covers
 * @param spareCover cover of everybody's spare ball
 * @param tempos shares of the time bowlers take over their shots, see {@link Bowler#tempo()}
 * @param secondCover cover of everybody's second ball for full racks, if they have one
 */
public record FieldMix(
        int bowlers,
        List<Share<Hand>> hands,
        List<Share<PlayingStyle>> styles,
        List<Share<Level>> levels,
        List<Share<Coverstock>> covers,
        Coverstock spareCover,
        List<Share<Double>> tempos,
        Optional<Coverstock> secondCover) {
    private static final double SUM_TOLERANCE = 1e-9;

    /**
     * Copies the lists and checks them.
     *
     * @throws IllegalArgumentException if {@code bowlers < 1}, or the shares of an attribute do not add up to 1 within
     *     1e-9
     */
    public FieldMix {
        if (bowlers < 1) {
            throw new IllegalArgumentException("bowlers is " + bowlers + ", but must be at least 1");
        }
        hands = checked(hands, "hands");
        styles = checked(styles, "styles");
        levels = checked(levels, "levels");
        covers = checked(covers, "covers");
        tempos = checked(tempos, "tempos");
    }

    /**
     * The same shares for another number of bowlers.
     *
     * @param number bowlers in the squad, at least 1
     * @return the field
     * @throws IllegalArgumentException if {@code number < 1}
     */
    public FieldMix of(int number) {
        return new FieldMix(number, hands, styles, levels, covers, spareCover, tempos, secondCover);
    }

    /**
     * A kind and its share.
     *
     * @param kind what kind
     * @param share its share, 0 to 1
     * @param <T> what is shared out
     */
    public record Share<T>(T kind, double share) {
        /**
         * Checks the share.
         *
         * @throws IllegalArgumentException if not {@code 0 <= share <= 1} (NaN included)
         */
        public Share {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("share of " + kind + " is " + share + ", but must be 0 to 1");
            }
        }
    }

    /**
     * Draws one kind, each as likely as its share, for somebody of whom the kind is not known.
     *
     * @param shares kinds with their shares, which add up to 1
     * @param streams family to draw from
     * @param key names the stream; another key, another draw
     * @param <T> what is shared out
     * @return one of the kinds
     * @throws IllegalArgumentException if {@code shares} is empty
     */
    public static <T> T one(List<Share<T>> shares, RandomStreams streams, String key) {
        if (shares.isEmpty()) {
            throw new IllegalArgumentException("there is no kind to draw for " + key);
        }
        double left = streams.stream(key).nextDouble();
        for (Share<T> share : shares) {
            left -= share.share();
            if (left < 0) {
                return share.kind();
            }
        }
        // Shares may miss 1 by a rounding error.
        return shares.get(shares.size() - 1).kind();
    }

    /**
     * Draws the squad: as many groups as there are pairs, or fewer where there are fewer bowlers than pairs; the first
     * groups have one bowler more where the division leaves a remainder.
     *
     * @param squad the squad's id, which keys its streams and begins its bowlers' names
     * @param pairs pairs to spread over, at least 1
     * @param streams family outside any replication
     * @return groups {@code 1}, {@code 2}, ... of bowlers {@code A-01}, {@code A-02}, ...
     * @throws IllegalArgumentException if {@code pairs < 1}
     */
    public List<Group> groups(String squad, int pairs, RandomStreams streams) {
        if (pairs < 1) {
            throw new IllegalArgumentException("pairs is " + pairs + ", but must be at least 1");
        }
        return spread(bowlers(squad, streams), Math.min(pairs, bowlers));
    }

    /**
     * Spreads bowlers evenly over groups, in their order.
     *
     * @param bowlers the bowlers, at least as many as groups
     * @param groups number of groups, at least 1
     * @return groups {@code 1}, {@code 2}, ..., whose sizes differ by at most one, larger ones first
     */
    public static List<Group> spread(List<Bowler> bowlers, int groups) {
        List<Group> spread = new ArrayList<>(groups);
        int from = 0;
        for (int group = 0; group < groups; group++) {
            int to = from + bowlers.size() / groups + (group < bowlers.size() % groups ? 1 : 0);
            spread.add(new Group(String.valueOf(group + 1), bowlers.subList(from, to)));
            from = to;
        }
        return spread;
    }

    /**
     * Draws the squad's bowlers.
     *
     * @param squad the squad's id, which keys its streams and begins its bowlers' names
     * @param streams family to draw from; another family, another field
     * @return bowlers {@code A-01}, {@code A-02}, ...
     */
    List<Bowler> bowlers(String squad, RandomStreams streams) {
        String key = "field/" + squad + "/";
        List<Hand> hand = drawn(hands, streams.stream(key + "hand"));
        List<PlayingStyle> style = drawn(styles, streams.stream(key + "style"));
        List<Level> level = drawn(levels, streams.stream(key + "level"));
        List<Coverstock> cover = drawn(covers, streams.stream(key + "cover"));
        List<Double> tempo = drawn(tempos, streams.stream(key + "tempo"));
        String number = "%s-%0" + Math.max(2, String.valueOf(bowlers).length()) + "d";
        return IntStream.range(0, bowlers)
                .mapToObj(i -> new Bowler(
                        String.format(Locale.ROOT, number, squad, i + 1),
                        hand.get(i),
                        style.get(i),
                        level.get(i),
                        cover.get(i),
                        spareCover,
                        tempo.get(i),
                        secondCover,
                        0))
                .toList();
    }

    private <T> List<T> drawn(List<Share<T>> shares, UniformRandomProvider stream) {
        int[] counts = counts(shares, bowlers);
        List<T> kinds = new ArrayList<>(bowlers);
        for (int kind = 0; kind < counts.length; kind++) {
            for (int i = 0; i < counts[kind]; i++) {
                kinds.add(shares.get(kind).kind());
            }
        }
        ListSampler.shuffle(stream, kinds);
        return kinds;
    }

    /** Counts out bowlers by largest remainder. */
    static <T> int[] counts(List<Share<T>> shares, int bowlers) {
        int[] counts = shares.stream()
                .mapToInt(share -> (int) Math.floor(share.share() * bowlers + SUM_TOLERANCE))
                .toArray();
        int left = bowlers - IntStream.of(counts).sum();
        IntStream.range(0, counts.length)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> counts[i] - shares.get(i).share() * bowlers))
                .limit(left)
                .toList()
                .forEach(i -> counts[i]++);
        return counts;
    }

    private static <T> List<Share<T>> checked(List<Share<T>> shares, String name) {
        double sum = shares.stream().mapToDouble(Share::share).sum();
        if (Math.abs(sum - 1) > SUM_TOLERANCE) {
            throw new IllegalArgumentException("shares of " + name + " add up to " + sum + ", but must add up to 1");
        }
        return List.copyOf(shares);
    }
}
