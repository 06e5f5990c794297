package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.study.Part;
import lanetide.squads.study.Study;
import lanetide.squads.unknown.ValueSets;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Are faulty tapes named, and clean ones left alone? Each try is a day under one of the sets, with luck and lanes that
 * what is foretold has not met, and tapes after squad A and after squad B on four lanes; then a fault is put in.
 */
final class FaultStudy {
    static final int CLEAN = 400;
    static final int FAULTY = 100;

    private static final double[] FEET = {6, 15, 25, 36, 42};
    private static final int[] BOARDS = {8, 13, 20};
    private static final double ERROR_UNITS = 1;
    private static final long SEED = 88_214;
    /** By how many deviations of its own error a reading that is wrong by itself is off. */
    private static final double WRONG = 12;

    private final FitDay day;
    private final List<Hypothesis> hypotheses;
    private final List<double[]> again = new ArrayList<>();
    private final Suspicions.Foretold foretold;

    FaultStudy(int threads) {
        this.day = new FitDay(TwoPairs.EVENT, new Measurements(tapes(), List.of(), List.of(), List.of()));
        this.hypotheses = Hypothesis.all(TwoPairs.EVENT, day.readings());
        List<ValueSet> sets = ValueSets.of(TwoPairs.EVENT);
        List<List<double[]>> four = fourTimes(sets, threads);
        four.forEach(said -> again.addAll(said.subList(2, 4)));
        NormalErrors errors = new NormalErrors(day.ownError(), new RandomStreams(SEED).stream("clean"));
        this.foretold = day.suspicions()
                .foretold(
                        four.stream().map(said -> said.get(0)).toList(),
                        four.stream()
                                .map(said -> day.suspicions().read(said.get(1), errors))
                                .toList(),
                        day.ownError());
    }

    private List<List<double[]>> fourTimes(List<ValueSet> sets, int threads) {
        MemberDays design = new MemberDays(
                List.of(day),
                sets,
                IntStream.range(0, sets.size()).boxed().toList(),
                Map.of(),
                4,
                0,
                new RandomStreams(SEED));
        List<double[]> said = new Study(design)
                .play(
                        new Part(0, design.size()),
                        threads,
                        number -> design.reading(number, of -> of.suspicions().asked()),
                        done -> {});
        return IntStream.range(0, sets.size())
                .mapToObj(member -> said.subList(design.number(member, 0, 0), design.number(member + 1, 0, 0)))
                .toList();
    }

    private static List<TapeTaken> tapes() {
        List<TapeTaken> tapes = new ArrayList<>();
        for (String squad : List.of("A", "B")) {
            for (int lane = 1; lane <= 4; lane++) {
                for (double feet : FEET) {
                    for (int board : BOARDS) {
                        tapes.add(new TapeTaken(
                                lane,
                                new When(squad, TwoPairs.GAMES),
                                feet * LaneGeometry.FOOT_M,
                                board,
                                0,
                                ERROR_UNITS,
                                "study"));
                    }
                }
            }
        }
        return tapes;
    }

    /** What came of tries with a fault of one kind. */
    record Tally(int tries, int tellable, int named, int oneOfSeveral, int accusedOfAnother) {}

    /** Clean days that are accused of something. */
    int accused(int tries) {
        int accused = 0;
        for (int i = 0; i < tries; i++) {
            if (foretold.suspicions(0, day(i, day.readings(), 1)).stream()
                    .anyMatch(one -> one.verdict() != Suspicion.Verdict.NOT_SHOWN)) {
                accused++;
            }
        }
        return accused;
    }

    /** Faults by kind. */
    Map<String, Tally> faults(int tries) {
        Map<String, Tally> byKind = new TreeMap<>();
        for (int i = 0; i < tries; i++) {
            UniformRandomProvider chance = new RandomStreams(SEED).forReplication(i).stream("fault");
            for (Class<?> kind : List.of(
                    Explanation.LanesSwapped.class,
                    Explanation.SidesSwapped.class,
                    Explanation.OtherUnit.class,
                    Explanation.OtherTime.class)) {
                List<Hypothesis> ofKind = hypotheses.stream()
                        .filter(each -> kind.isInstance(each.what()))
                        .toList();
                Hypothesis fault = ofKind.get(chance.nextInt(ofKind.size()));
                double[] read = day(i, fault.readings(), 1);
                for (int r = 0; r < read.length; r++) {
                    read[r] *= fault.scaled()[r];
                }
                count(byKind, kind.getSimpleName(), fault.what(), read);
            }
            double[] read = day(i, day.readings(), 1);
            int wrong = chance.nextInt(read.length);
            read[wrong] += WRONG * ERROR_UNITS;
            count(
                    byKind,
                    "OneReading",
                    new Explanation.OneReading(day.readings().get(wrong)),
                    read);
        }
        return byKind;
    }

    private void count(Map<String, Tally> byKind, String kind, Explanation truth, double[] read) {
        List<Suspicion> all = foretold.suspicions(0, read);
        boolean tellable = all.stream().anyMatch(one -> one.what().equals(truth));
        boolean named = all.stream()
                .anyMatch(one ->
                        one.verdict() == Suspicion.Verdict.NAMED && one.what().equals(truth));
        boolean several = all.stream()
                .anyMatch(one -> one.verdict() == Suspicion.Verdict.ONE_OF_SEVERAL
                        && one.what().equals(truth));
        boolean another = all.stream()
                .anyMatch(one ->
                        one.verdict() == Suspicion.Verdict.NAMED && !one.what().equals(truth));
        Tally now = byKind.getOrDefault(kind, new Tally(0, 0, 0, 0, 0));
        byKind.put(
                kind,
                new Tally(
                        now.tries() + 1,
                        now.tellable() + (tellable ? 1 : 0),
                        now.named() + (named && tellable ? 1 : 0),
                        now.oneOfSeveral() + (several && tellable ? 1 : 0),
                        now.accusedOfAnother() + (another ? 1 : 0)));
    }

    /** What is read on a day at the places of readings. */
    private double[] day(int number, List<Reading> at, double scale) {
        SharedStateContinuousSampler normal = ZigguratSampler.NormalizedGaussian.of(
                new RandomStreams(SEED + 1).forReplication(number).stream("errors"));
        double[] read = day.suspicions().there(again.get(number % again.size()), at);
        for (int r = 0; r < read.length; r++) {
            read[r] = Math.max(0, read[r] + scale * ERROR_UNITS * normal.sample());
        }
        return read;
    }

    String markdown(int clean, int faulty) {
        StringBuilder table = new StringBuilder();
        table.append(String.format(Locale.ROOT, "| clean | %d | | %d accused | |%n", clean, accused(clean)));
        faults(faulty)
                .forEach((kind, tally) -> table.append(String.format(
                        Locale.ROOT,
                        "| %s | %d | %d | %d | %d | %d |%n",
                        kind,
                        tally.tries(),
                        tally.tellable(),
                        tally.named(),
                        tally.oneOfSeveral(),
                        tally.accusedOfAnother())));
        return table.toString();
    }

    /**
     * Runs the study and prints its table.
     *
     * @param args nothing
     */
    public static void main(String[] args) {
        System.out.print(new FaultStudy(Runtime.getRuntime().availableProcessors()).markdown(CLEAN, FAULTY));
    }
}
