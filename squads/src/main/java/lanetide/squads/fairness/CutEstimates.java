package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.des.stats.NestedMean;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Level;
import lanetide.squads.qualifying.CutChances;
import lanetide.squads.qualifying.CutPlayed;
import lanetide.squads.qualifying.People;

/**
 * The chances at the cut from the rounds of a study. What a squad is worth is found as for scores: bowlers change seats
 * and keep their luck, and the chance of the same bowler in the same round is compared. Squads and hands are fitted
 * together, so that a squad gets no credit for the hands in it.
 */
final class CutEstimates {
    private static final double LEVEL = 0.9;

    private final Event event;
    private final Seats seats;
    private final List<Round> rounds;
    private final List<CutPlayed> playings;
    private final int perRound;
    private final int sets;

    /** From what every playing of whole rounds says. */
    CutEstimates(Event event, SeatingRounds rounds, List<CutPlayed> playings) {
        this.event = event;
        this.seats = rounds.seats();
        this.rounds = rounds.rounds(playings.stream().map(CutPlayed::chance).toList());
        this.playings = playings;
        this.perRound = rounds.playings(1);
        this.sets = Math.min(rounds.sets(), this.rounds.size());
    }

    CutChances chances() {
        Cut cut = event.cut().orElseThrow();
        int people = new People(event).count();
        return new CutChances(
                cut,
                people,
                cut.places(people),
                found(byRound(CutPlayed::goingOn)).value(),
                found(byRound(CutPlayed::scorePins)),
                levels(),
                again(people));
    }

    private List<CutChances.OfLevel> levels() {
        List<CutChances.OfLevel> found = new ArrayList<>();
        List<Level> levels = seats.bowlers().stream()
                .filter(CutEstimates::isOnce)
                .map(Bowler::level)
                .distinct()
                .sorted(Comparator.comparingDouble(
                                (Level level) -> level.spread().laydownM())
                        .thenComparing(Level::id))
                .toList();
        if (!levels.isEmpty()) {
            found.add(ofLevel(Optional.empty(), CutEstimates::isOnce));
        }
        if (levels.size() > 1) {
            levels.forEach(level -> found.add(ofLevel(
                    Optional.of(level.id()),
                    bowler -> isOnce(bowler) && bowler.level().id().equals(level.id()))));
        }
        return found;
    }

    private static boolean isOnce(Bowler bowler) {
        return bowler.person().isEmpty();
    }

    private CutChances.OfLevel ofLevel(Optional<String> level, Predicate<Bowler> whose) {
        int people = (int) seats.bowlers().stream().filter(whose).count();
        return new CutChances.OfLevel(level, people, chance(meanChance(whose, false)), squads(whose));
    }

    private List<CutChances.InSquad> squads(Predicate<Bowler> whose) {
        int count = event.squads().size();
        if (count == 1) {
            return List.of();
        }
        List<Factor> factors = new ArrayList<>();
        factors.add(new Factor(event.squads().stream().map(squad -> squad.id()).toList(), Seat::squad));
        int hands = (int) seats.seats().stream().map(Seat::hand).distinct().count();
        if (hands > 1) {
            factors.add(new Factor(List.of("right", "left"), seat -> seat.hand() == Hand.RIGHT ? 0 : 1));
        }
        Estimate worth =
                new RowColumnModel(factors, seats, whose).fit(rounds, sets).get(0);
        return IntStream.range(0, count)
                .mapToObj(squad ->
                        new CutChances.InSquad(event.squads().get(squad).id(), found(lessOwnMean(worth, squad))))
                .toList();
    }

    /** Round by round what a squad is worth, less the mean over the squads. */
    private static double[] lessOwnMean(Estimate worth, int squad) {
        return IntStream.range(0, worth.rounds())
                .mapToDouble(round -> {
                    double[] all = worth.byRound()[round];
                    return IntStream.range(0, all.length)
                            .mapToDouble(other -> all[squad] - all[other])
                            .average()
                            .orElseThrow();
                })
                .toArray();
    }

    private Optional<CutChances.Again> again(int people) {
        Predicate<Bowler> whose = bowler -> !isOnce(bowler);
        int once = (int) seats.bowlers().stream().filter(CutEstimates::isOnce).count();
        if (once == people) {
            return Optional.empty();
        }
        double[] chance = meanChance(whose, false);
        double[] alone = meanChance(whose, true);
        double[] worth = IntStream.range(0, chance.length)
                .mapToDouble(round -> chance[round] - alone[round])
                .toArray();
        return Optional.of(new CutChances.Again(people - once, chance(chance), found(worth)));
    }

    /** Round by round the mean over some people, each of whom counts once, and the seatings. */
    private double[] meanChance(Predicate<Bowler> whose, boolean alone) {
        double[] means = new double[rounds.size()];
        for (int r = 0; r < means.length; r++) {
            double[] shares = shares(rounds.get(r).seats().bowlers(), whose);
            for (CutPlayed playing : seatings(r)) {
                double[] chances = alone ? playing.alone() : playing.chance();
                for (int bowler = 0; bowler < chances.length; bowler++) {
                    means[r] += shares[bowler] * chances[bowler];
                }
            }
            means[r] /= rounds.get(r).seatings();
        }
        return means;
    }

    /** What each bowler counts in a mean over people: one over their number, shared by the entries of a person. */
    private static double[] shares(List<Bowler> bowlers, Predicate<Bowler> whose) {
        double[] shares = bowlers.stream()
                .mapToDouble(bowler -> whose.test(bowler) ? 1.0 / entries(bowlers, bowler) : 0)
                .toArray();
        double people =
                IntStream.range(0, shares.length).mapToDouble(i -> shares[i]).sum();
        return IntStream.range(0, shares.length)
                .mapToDouble(i -> shares[i] / people)
                .toArray();
    }

    private static long entries(List<Bowler> bowlers, Bowler of) {
        return of.person().isEmpty()
                ? 1
                : bowlers.stream()
                        .filter(other -> other.person().equals(of.person()))
                        .count();
    }

    private double[] byRound(ToDoubleFunction<CutPlayed> of) {
        return IntStream.range(0, rounds.size())
                .mapToDouble(r -> seatings(r).stream().mapToDouble(of).average().orElseThrow())
                .toArray();
    }

    private List<CutPlayed> seatings(int round) {
        int from = round * perRound;
        return playings.subList(from, from + rounds.get(round).seatings());
    }

    private CutChances.Found found(double[] byRound) {
        NestedMean mean = NestedMean.of(byRound, sets);
        return new CutChances.Found(
                mean.mean(), mean.truth().interval(LEVEL), mean.luck().interval(LEVEL), mean.signShare(byRound));
    }

    /** A chance, of which no end of an interval lies below 0 or above 1. */
    private CutChances.Found chance(double[] byRound) {
        CutChances.Found found = found(byRound);
        return new CutChances.Found(
                found.value(), found.ci90().within(0, 1), found.luck90().within(0, 1), found.signShare());
    }
}
