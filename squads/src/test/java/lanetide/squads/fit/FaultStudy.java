package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.model.Event;
import lanetide.squads.study.Part;
import lanetide.squads.study.Study;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Are faulty tapes named, and clean ones left alone? Each try is a day under one of the sets, with luck and lanes that
 * what is foretold has not met, and tapes on four lanes; then a fault is put in. One study has tapes after squad A and
 * after squad B, another has them on fresh oil, where the pattern may be another.
 */
final class FaultStudy {
    static final int CLEAN = 400;
    static final int FAULTY = 100;

    private static final double[] FEET = {6, 15, 25, 36, 42};
    private static final int[] BOARDS = {8, 13, 20};
    private static final double ERROR_UNITS = 1;
    private static final long SEED_OF_WORN = 88_214;
    private static final long SEED_OF_FRESH = 88_216;
    /** By how many deviations of its own error a reading that is wrong by itself is off. */
    private static final double WRONG = 12;

    private static final List<Integer> LONGER_FT = List.of(-6, -4, -2, 2, 4, 6);

    private final long seed;
    private final List<ValueSet> sets = ValueSets.of(TwoPairs.EVENT);
    private final FitDay day;
    private final List<Hypothesis> hypotheses;
    private final List<double[]> again = new ArrayList<>();
    private final Suspicions.Foretold foretold;

    private FaultStudy(List<When> times, long seed, int threads) {
        this.seed = seed;
        this.day = new FitDay(TwoPairs.EVENT, new Measurements(tapes(times), List.of(), List.of(), List.of()));
        this.hypotheses = Hypothesis.all(TwoPairs.EVENT, day.readings());
        List<List<double[]>> four = fourTimes(threads);
        four.forEach(said -> again.addAll(said.subList(2, 4)));
        NormalErrors errors = new NormalErrors(day.ownError(), new RandomStreams(seed).stream("clean"));
        this.foretold = day.suspicions()
                .foretold(
                        four.stream().map(said -> said.get(0)).toList(),
                        four.stream()
                                .map(said -> day.suspicions().read(said.get(1), errors))
                                .toList(),
                        day.ownError());
    }

    /** Tapes after squad A and after squad B. */
    static FaultStudy ofWornTapes(int threads) {
        return new FaultStudy(
                List.of(new When("A", TwoPairs.GAMES), new When("B", TwoPairs.GAMES)), SEED_OF_WORN, threads);
    }

    /** Tapes before anybody has played. */
    static FaultStudy ofFreshTapes(int threads) {
        return new FaultStudy(List.of(new When("A", 0)), SEED_OF_FRESH, threads);
    }

    private List<List<double[]>> fourTimes(int threads) {
        MemberDays design = new MemberDays(
                List.of(day),
                sets,
                IntStream.range(0, sets.size()).boxed().toList(),
                Map.of(),
                4,
                0,
                new RandomStreams(seed));
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

    private static List<TapeTaken> tapes(List<When> times) {
        List<TapeTaken> tapes = new ArrayList<>();
        for (When when : times) {
            for (int lane = 1; lane <= 4; lane++) {
                for (double feet : FEET) {
                    for (int board : BOARDS) {
                        tapes.add(
                                new TapeTaken(lane, when, feet * LaneGeometry.FOOT_M, board, 0, ERROR_UNITS, "study"));
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
            if (foretold.suspicions(0, day(i, day.readings())).stream()
                    .anyMatch(one -> one.verdict() != Suspicion.Verdict.NOT_SHOWN)) {
                accused++;
            }
        }
        return accused;
    }

    /**
     * Another pattern than the sheet's under all tapes, feet longer or shorter: first as told by its length, then as
     * longer or shorter by whatever it is.
     */
    Map<String, Tally> otherPatterns(int tries) {
        Map<String, Tally> byKind = new TreeMap<>();
        When fresh = new When("A", 0);
        for (int i = 0; i < tries; i++) {
            UniformRandomProvider chance = new RandomStreams(seed).forReplication(i).stream("pattern");
            double longerM = LONGER_FT.get(chance.nextInt(LONGER_FT.size())) * LaneGeometry.FOOT_M;
            OilPattern other = OilPattern.of("other", TwoPairs.EVENT.pattern().lengthM() + longerM, 25, 4);
            Event event = PlayModel.under(Fixtures.withPattern(TwoPairs.EVENT, other), sets.get(i % sets.size()));
            OilFilm film = OilFilm.fresh(event.pattern(), LaneGrid.DEFAULT);
            double[] there = day.readings().stream()
                    .map(reading -> ((Reading.OfTape) reading).tape())
                    .mapToDouble(tape -> FilmTapes.units(film, tape.board(), tape.distanceM()))
                    .toArray();
            double[] read = read(i, there);
            count(byKind, "OtherPattern", new Explanation.OtherPattern(fresh, longerM)::equals, read);
            count(
                    byKind,
                    "OtherPattern, longer or shorter",
                    what -> what instanceof Explanation.OtherPattern told && told.longerM() * longerM > 0,
                    read);
        }
        return byKind;
    }

    /** Faults by kind. */
    Map<String, Tally> faults(int tries) {
        Map<String, Tally> byKind = new TreeMap<>();
        for (int i = 0; i < tries; i++) {
            UniformRandomProvider chance = new RandomStreams(seed).forReplication(i).stream("fault");
            for (Class<?> kind : List.of(
                    Explanation.LanesSwapped.class,
                    Explanation.SidesSwapped.class,
                    Explanation.OtherUnit.class,
                    Explanation.OtherTime.class)) {
                List<Hypothesis> ofKind = hypotheses.stream()
                        .filter(each -> kind.isInstance(each.what()))
                        .toList();
                Hypothesis fault = ofKind.get(chance.nextInt(ofKind.size()));
                double[] read = day(i, fault.readings());
                for (int r = 0; r < read.length; r++) {
                    read[r] *= fault.scaled()[r];
                }
                count(byKind, kind.getSimpleName(), fault.what()::equals, read);
            }
            double[] read = day(i, day.readings());
            int wrong = chance.nextInt(read.length);
            read[wrong] += WRONG * ERROR_UNITS;
            count(
                    byKind,
                    "OneReading",
                    new Explanation.OneReading(day.readings().get(wrong))::equals,
                    read);
        }
        return byKind;
    }

    /** Where all that is told is true, as where only the length of another pattern is open, it is named. */
    private void count(Map<String, Tally> byKind, String kind, Predicate<Explanation> isTrue, double[] read) {
        List<Suspicion> all = foretold.suspicions(0, read);
        List<Suspicion> told = all.stream()
                .filter(one -> one.verdict() != Suspicion.Verdict.NOT_SHOWN)
                .toList();
        boolean sure = told.size() > 1 || told.stream().anyMatch(one -> one.verdict() == Suspicion.Verdict.NAMED);
        boolean tellable = all.stream().map(Suspicion::what).anyMatch(isTrue);
        boolean named = sure && told.stream().map(Suspicion::what).allMatch(isTrue);
        boolean several = !named && told.stream().map(Suspicion::what).anyMatch(isTrue);
        boolean another = !named
                && told.stream().anyMatch(one -> one.verdict() == Suspicion.Verdict.NAMED && !isTrue.test(one.what()));
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
    private double[] day(int number, List<Reading> at) {
        return read(number, day.suspicions().there(again.get(number % again.size()), at));
    }

    /** What tapes read where so much lies on the mean: their own errors, and on fresh oil how lanes differ. */
    private double[] read(int number, double[] there) {
        UniformRandomProvider chance = new RandomStreams(seed + 1).forReplication(number).stream("errors");
        double[] errors = new NormalErrors(day.ownError(), chance).drawn();
        return IntStream.range(0, there.length)
                .mapToDouble(r -> Math.max(0, there[r] + errors[r]))
                .toArray();
    }

    String markdown(int clean, int faulty) {
        StringBuilder table = new StringBuilder();
        table.append(String.format(Locale.ROOT, "| clean | %d | | %d accused | |%n", clean, accused(clean)));
        faults(faulty).forEach((kind, tally) -> table.append(row(kind, tally)));
        return table.toString();
    }

    private static String row(String kind, Tally tally) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %d |%n",
                kind,
                tally.tries(),
                tally.tellable(),
                tally.named(),
                tally.oneOfSeveral(),
                tally.accusedOfAnother());
    }

    /**
     * Runs the study and prints its table.
     *
     * @param args nothing
     */
    public static void main(String[] args) {
        int threads = Runtime.getRuntime().availableProcessors();
        System.out.print(ofWornTapes(threads).markdown(CLEAN, FAULTY));
        FaultStudy fresh = ofFreshTapes(threads);
        System.out.printf(Locale.ROOT, "| clean, on fresh oil | %d | | %d accused | |%n", CLEAN, fresh.accused(CLEAN));
        fresh.otherPatterns(FAULTY).forEach((kind, tally) -> System.out.print(row(kind, tally)));
    }
}
