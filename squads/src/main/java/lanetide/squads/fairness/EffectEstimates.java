package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import lanetide.des.stats.Tally;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;

/**
 * The advantages of all kinds from the rounds of a study. A kind with a single class has none. Hands and styles are
 * those of the seats and bowlers of each round; how many there are of each is the same in all.
 */
public final class EffectEstimates {
    private static final List<Hand> HANDS = List.of(Hand.RIGHT, Hand.LEFT);

    private final Event event;
    private final Seats seats;
    private final List<Round> rounds;
    private final int sets;
    private final Map<EffectKind, Classes> classes = new EnumMap<>(EffectKind.class);
    private final Map<EffectKind, Estimate> estimates = new EnumMap<>(EffectKind.class);

    EffectEstimates(Event event, Seats seats, List<Round> rounds, int sets) {
        this.sets = Math.min(sets, rounds.size());
        this.event = event;
        this.seats = seats;
        this.rounds = rounds;
        bySeat();
        byDraw();
        byStyle();
    }

    Map<EffectKind, Estimate> estimates() {
        return estimates;
    }

    Classes classes(EffectKind kind) {
        return classes.get(kind);
    }

    int rounds() {
        return rounds.size();
    }

    /** Sets of values that the rounds went through in turn; 1 if all values were as usual. */
    int sets() {
        return sets;
    }

    /** Squads, starting pairs and hands are fitted together, so that none gets the credit of another. */
    private void bySeat() {
        Map<EffectKind, Factor> factors = new EnumMap<>(EffectKind.class);
        factors.put(
                EffectKind.SQUAD, factor(Seat::squad, s -> event.squads().get(s).id()));
        factors.put(
                EffectKind.PAIR,
                factor(Seat::startPair, p -> event.centre().pairs().get(p).id()));
        factors.put(EffectKind.HAND, factor(seat -> HANDS.indexOf(seat.hand()), h -> handId(HANDS.get(h))));
        factors.values().removeIf(factor -> factor.ids().size() < 2);
        if (!factors.isEmpty()) {
            Iterator<Estimate> fitted = new RowColumnModel(List.copyOf(factors.values()), seats)
                    .fit(rounds, sets)
                    .iterator();
            factors.forEach((kind, factor) -> add(kind, factor.classes(seats), fitted::next));
        }
    }

    /** Seats sorted by classes that occur, in their order. */
    private Factor factor(ToIntFunction<Seat> classOf, IntFunction<String> name) {
        List<Integer> present =
                IntStream.of(seats.classes(classOf)).distinct().sorted().boxed().toList();
        return new Factor(
                present.stream().map(name::apply).toList(), seat -> present.indexOf(classOf.applyAsInt(seat)));
    }

    /** What each group gains in the draw as it is, without what the hands of its bowlers are worth. */
    private void byDraw() {
        int[] squads = seats.classes(Seat::squad);
        int[] groups = seats.classes(Seat::group);
        int[] from = new int[event.squads().size() + 1];
        for (int s = 0; s < event.squads().size(); s++) {
            from[s + 1] = from[s] + event.squads().get(s).groups().size();
        }
        List<String> ids = groupIds(event);
        int[] of = IntStream.range(0, seats.count())
                .map(seat -> from[squads[seat]] + groups[seat])
                .toArray();
        add(EffectKind.GROUP, new Classes(of, ids), () -> draw(of, ids.size()));
    }

    /** What the groups of all squads are called. */
    static List<String> groupIds(Event event) {
        return event.squads().stream()
                .flatMap(squad -> groupIds(event, squad).stream())
                .toList();
    }

    /** What the groups of a squad are called. */
    static List<String> groupIds(Event event, Squad squad) {
        String before = event.squads().size() > 1 ? squad.id() + "/" : "";
        return squad.groups().stream().map(group -> before + group.id()).toList();
    }

    private Estimate draw(int[] of, int count) {
        double[][] byRound = new double[rounds.size()][];
        for (int r = 0; r < byRound.length; r++) {
            Round round = rounds.get(r);
            double[] gain = new double[seats.count()];
            for (int bowler = 0; bowler < gain.length; bowler++) {
                gain[bowler] = round.above(round.asDrawn()[bowler], bowler) - worthOfHand(r, bowler);
            }
            byRound[r] = centredMeans(gain, of, count);
        }
        return new Estimate(byRound, sets);
    }

    private static String handId(Hand hand) {
        return hand == Hand.RIGHT ? "right" : "left";
    }

    private double worthOfHand(int round, int bowler) {
        Estimate hands = estimates.get(EffectKind.HAND);
        if (hands == null) {
            return 0;
        }
        // Everybody sits where he is drawn, and the seat has his hand.
        Hand hand = rounds.get(round).seats().bowlers().get(bowler).hand();
        int of = classes.get(EffectKind.HAND).ids().indexOf(handId(hand));
        return hands.byRound()[round][of];
    }

    /** What the change of the lanes gives to each style. */
    private void byStyle() {
        List<String> ids = new ArrayList<>(new TreeSet<>(
                seats.bowlers().stream().map(bowler -> bowler.style().id()).toList()));
        add(EffectKind.STYLE, new Classes(styles(seats, ids), ids), () -> {
            double[][] byRound = new double[rounds.size()][];
            for (int r = 0; r < byRound.length; r++) {
                Round round = rounds.get(r);
                int[] of = styles(round.seats(), ids);
                double[] gain = IntStream.range(0, of.length)
                        .mapToDouble(bowler -> 0 - round.above(round.unchanging()[bowler], bowler))
                        .toArray();
                byRound[r] = centredMeans(gain, of, ids.size());
            }
            return new Estimate(byRound, sets);
        });
    }

    private static int[] styles(Seats seats, List<String> ids) {
        return seats.bowlers().stream()
                .mapToInt(bowler -> ids.indexOf(bowler.style().id()))
                .toArray();
    }

    /** What a style scores with and without a change of the lanes. */
    StyleMeans styleMeans(int style) {
        List<String> ids = classes.get(EffectKind.STYLE).ids();
        Tally still = new Tally();
        Tally inPlay = new Tally();
        Tally fieldStill = new Tally();
        Tally fieldInPlay = new Tally();
        for (Round round : rounds) {
            int[] of = styles(round.seats(), ids);
            for (int bowler = 0; bowler < of.length; bowler++) {
                double unchanging = round.unchanging()[bowler];
                double changing = unchanging - round.above(unchanging, bowler);
                fieldStill.add(unchanging);
                fieldInPlay.add(changing);
                if (of[bowler] == style) {
                    still.add(unchanging);
                    inPlay.add(changing);
                }
            }
        }
        return new StyleMeans(still.mean(), inPlay.mean(), fieldStill.mean(), fieldInPlay.mean());
    }

    /** What everybody scores where he is drawn, over all rounds (pins a game). */
    double meanScore() {
        return rounds.stream()
                .flatMapToDouble(round -> Arrays.stream(round.asDrawn()))
                .average()
                .orElseThrow();
    }

    private void add(EffectKind kind, Classes found, Supplier<Estimate> estimate) {
        if (found.count() > 1) {
            classes.put(kind, found);
            estimates.put(kind, estimate.get());
        }
    }

    /** Means by class, less the mean over everybody. */
    private static double[] centredMeans(double[] values, int[] of, int count) {
        double[] sums = new double[count];
        int[] members = new int[count];
        double total = 0;
        for (int i = 0; i < values.length; i++) {
            sums[of[i]] += values[i];
            members[of[i]]++;
            total += values[i];
        }
        for (int c = 0; c < count; c++) {
            sums[c] = sums[c] / members[c] - total / values.length;
        }
        return sums;
    }
}
