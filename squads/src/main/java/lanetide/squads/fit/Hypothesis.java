package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;

/**
 * An explanation of readings, and what has to be read in playings to see how likely it is.
 *
 * @param what the explanation
 * @param readings what a playing has to read in place of each reading, in their order
 * @param scaled by what readings were multiplied, in their order
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Hypothesis(Explanation what, List<Reading> readings, double[] scaled) {
    /** Micrometres in a unit of oil, and units in a micrometre. */
    private static final List<Double> UNITS = List.of(OilFilm.UNIT_UM, 1 / OilFilm.UNIT_UM);

    /** By how much longer another pattern may be (ft): those in use differ by feet. */
    private static final List<Integer> LONGER_FT = List.of(-6, -4, -2, 2, 4, 6);

    /** Entries of all covariances that are looked at, at most, and explanations that are looked at however many. */
    private static final double MOST_ENTRIES = 6e6;

    private static final int FEWEST = 10;

    /**
     * Everything that could have happened to whole groups of tapes: units, times, patterns, sides, lanes. Of many
     * readings only the first so many that they can be looked at in seconds.
     */
    static List<Hypothesis> all(Event event, List<Reading> readings) {
        long most = Math.max(FEWEST, (long) (MOST_ENTRIES / Math.max(1, (double) readings.size() * readings.size())));
        return everything(event, readings).stream()
                .sorted(Comparator.comparingInt(Hypothesis::order))
                .limit(most)
                .toList();
    }

    private int order() {
        if (what instanceof Explanation.OtherUnit) {
            return 0;
        }
        if (what instanceof Explanation.OtherTime) {
            return 1;
        }
        if (what instanceof Explanation.OtherPattern) {
            return 2;
        }
        return what instanceof Explanation.SidesSwapped ? 3 : 4;
    }

    private static List<Hypothesis> everything(Event event, List<Reading> readings) {
        List<Hypothesis> all = new ArrayList<>();
        Map<When, TreeSet<Integer>> lanes = new HashMap<>();
        List<When> times = new ArrayList<>();
        for (Reading reading : readings) {
            tape(reading).ifPresent(tape -> {
                if (lanes.computeIfAbsent(tape.when(), when -> new TreeSet<>()).add(tape.lane())
                        && !times.contains(tape.when())) {
                    times.add(tape.when());
                }
            });
        }
        for (When when : times) {
            all.addAll(otherPatterns(event, readings, when));
            all.addAll(ofLanes(readings, when, List.copyOf(lanes.get(when))));
            for (double unit : UNITS) {
                all.add(new Hypothesis(
                        new Explanation.OtherUnit(when, unit),
                        readings,
                        readings.stream()
                                .mapToDouble(reading -> is(reading, when) ? unit : 1)
                                .toArray()));
            }
            for (When other : otherTimes(event, when)) {
                all.add(moved(
                        new Explanation.OtherTime(when, other),
                        readings,
                        tape -> tape.when().equals(when),
                        tape -> at(tape, tape.lane(), other, tape.board())));
            }
        }
        return all;
    }

    /**
     * Of fresh oil alone: a pattern so much longer has at each distance what the scenario's has in proportion, and as
     * much oil in all.
     */
    private static List<Hypothesis> otherPatterns(Event event, List<Reading> readings, When when) {
        if (readings.stream().noneMatch(reading -> reading instanceof Reading.Fresh && is(reading, when))) {
            return List.of();
        }
        List<Hypothesis> all = new ArrayList<>();
        for (int feet : LONGER_FT) {
            double longerM = feet * LaneGeometry.FOOT_M;
            ToDoubleFunction<TapeTaken> shorter = tape -> {
                double lengthM =
                        event.pattern(event.squad(when.squad()), tape.lane()).lengthM();
                return lengthM / (lengthM + longerM);
            };
            Explanation what = new Explanation.OtherPattern(when, longerM);
            List<Reading> elsewhere = moved(
                            what,
                            readings,
                            tape -> tape.when().equals(when),
                            tape -> at(tape, tape.distanceM() * shorter.applyAsDouble(tape)))
                    .readings();
            all.add(new Hypothesis(
                    what,
                    elsewhere,
                    readings.stream()
                            .mapToDouble(reading -> tape(reading)
                                    .filter(tape -> tape.when().equals(when))
                                    .map(shorter::applyAsDouble)
                                    .orElse(1.0))
                            .toArray()));
        }
        return all;
    }

    private static List<Hypothesis> ofLanes(List<Reading> readings, When when, List<Integer> lanes) {
        List<Hypothesis> all = new ArrayList<>();
        for (int lane : lanes) {
            all.add(moved(
                    new Explanation.SidesSwapped(when, lane),
                    readings,
                    tape -> tape.when().equals(when) && tape.lane() == lane,
                    tape -> at(tape, lane, when, LaneGeometry.BOARDS + 1 - tape.board())));
            for (int other : lanes) {
                if (other > lane) {
                    all.add(moved(
                            new Explanation.LanesSwapped(when, lane, other),
                            readings,
                            tape -> tape.when().equals(when) && (tape.lane() == lane || tape.lane() == other),
                            tape -> at(tape, lane + other - tape.lane(), when, tape.board())));
                }
            }
        }
        return all;
    }

    /**
     * When squads come and leave, but for the time itself and for lanes as one squad leaves and the next finds them,
     * which are told once.
     */
    private static List<When> otherTimes(Event event, When when) {
        List<When> times = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            When comes = new When(event.squads().get(s).id(), 0);
            if (asLeft(event, comes).equals(comes)) {
                times.add(comes);
            }
            times.add(leaves(event, s));
        }
        times.remove(asLeft(event, when));
        return times;
    }

    private static When leaves(Event event, int squad) {
        return new When(event.squads().get(squad).id(), event.games(squad));
    }

    /** The same lanes at the time by which they are told. */
    private static When asLeft(Event event, When when) {
        for (int s = 1; s < event.squads().size(); s++) {
            if (event.squads().get(s).conditioning() == Conditioning.NONE
                    && when.equals(new When(event.squads().get(s).id(), 0))) {
                int squad = s;
                return IntStream.range(0, s).filter(before -> event.shareLanes(before, squad)).max().stream()
                        .mapToObj(before -> leaves(event, before))
                        .findFirst()
                        .orElse(when);
            }
        }
        return when;
    }

    private static Hypothesis moved(
            Explanation what, List<Reading> readings, Predicate<TapeTaken> which, UnaryOperator<TapeTaken> where) {
        List<Reading> others = readings.stream()
                .map(reading -> tape(reading)
                        .filter(which)
                        .map(tape -> elsewhere(reading, tape.when(), where.apply(tape)))
                        .orElse(reading))
                .toList();
        return new Hypothesis(
                what, others, readings.stream().mapToDouble(reading -> 1).toArray());
    }

    /** A tape on fresh oil stays one unless it was taken at another time. */
    private static Reading elsewhere(Reading reading, When when, TapeTaken tape) {
        return reading instanceof Reading.Fresh && tape.when().equals(when)
                ? new Reading.Fresh(tape)
                : new Reading.Worn(tape);
    }

    private static TapeTaken at(TapeTaken tape, int lane, When when, int board) {
        return new TapeTaken(lane, when, tape.distanceM(), board, tape.units(), tape.errorUnits(), tape.place());
    }

    private static TapeTaken at(TapeTaken tape, double distanceM) {
        return new TapeTaken(
                tape.lane(), tape.when(), distanceM, tape.board(), tape.units(), tape.errorUnits(), tape.place());
    }

    private static boolean is(Reading reading, When when) {
        return tape(reading).filter(tape -> tape.when().equals(when)).isPresent();
    }

    private static Optional<TapeTaken> tape(Reading reading) {
        return reading instanceof Reading.OfTape one ? Optional.of(one.tape()) : Optional.empty();
    }
}
