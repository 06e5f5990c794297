package lanetide.squads.fairness;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import lanetide.squads.machines.OilingCost;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.result.EventResult;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;

/**
 * Tries changes of an event, each by playing it, and says which are worth choosing between. All are tried a little, the
 * better ones longer, see {@link Halving}.
 */
public final class RemedyStudy {
    private static final double MS_PER_MINUTE = 60_000;

    private final PossibleEvents events;
    private final Event event;
    private final FairnessResult asItIs;
    private final Costs costs;
    private final EventResult drawn;

    private RemedyStudy(PossibleEvents events, FairnessResult asItIs, Costs costs) {
        this.events = events;
        this.event = events.event();
        this.asItIs = asItIs;
        this.costs = costs;
        this.drawn = FairnessStudy.asDrawn(events, asItIs.plan());
    }

    /**
     * Playings a study takes, for telling how far it is.
     *
     * @param event the event
     * @param lost pairs that are lost by late changes, counted from zero
     * @param asItIs a study of it
     * @param playings playings of each change if all got the same
     * @return playings in all
     */
    public static int playings(Event event, Set<Integer> lost, FairnessResult asItIs, int playings) {
        int changes = new Changes(event, lost).list().size();
        return changes == 0
                ? 0
                : halving(event, changes, asItIs, playings).rounds() * FairnessStudy.playingsOfRound(event);
    }

    private static Halving halving(Event event, int changes, FairnessResult asItIs, int playings) {
        int each = Math.max(1, playings / FairnessStudy.playingsOfRound(event));
        int left = FairnessStudy.isLarge(event) ? Halving.FEWEST_LEFT : Halving.LEFT;
        return Halving.of(changes, each, asItIs.sets(), asItIs.rounds(), left);
    }

    /**
     * Tries all changes, those that look better more often: the best are played under all sets of values that the event
     * was.
     *
     * @param events the event under the sets of values that it was studied under
     * @param lost pairs that are lost by late changes, counted from zero; no change sends a group there in any game
     * @param asItIs a study of it
     * @param playings playings of each change if all got the same
     * @param costs what oiling costs
     * @param execution how, as the next studies of its run
     * @param onDone told the number of playings done so far
     * @return the event as it is, then the changes, those that were played most first, of these those that leave the
     *     least spread; empty for a single group
     */
    public static List<Remedy> run(
            PossibleEvents events,
            Set<Integer> lost,
            FairnessResult asItIs,
            int playings,
            Costs costs,
            Execution execution,
            IntConsumer onDone) {
        return asItIs.evenness().isEmpty()
                ? List.of()
                : new RemedyStudy(events, asItIs, costs)
                        .run(new Changes(events.event(), lost).list(), playings, execution, onDone);
    }

    /** A change and the rounds in which it was tried. */
    private record Trial(Changes.Change change, RoundsPlayed rounds) {}

    private List<Remedy> run(List<Changes.Change> changes, int playings, Execution execution, IntConsumer onDone) {
        List<Remedy> remedies = new ArrayList<>(List.of(asItIs()));
        if (!changes.isEmpty()) {
            Halving halving = halving(event, changes.size(), asItIs, playings);
            remedies.addAll(tried(changes, halving, execution, onDone));
        }
        Optional<Remedy> least = leastRegret(remedies);
        return remedies.stream()
                .map(remedy -> remedy.judged(
                        remedy.isChoiceAmong(remedies),
                        least.filter(remedy::equals).isPresent()))
                .toList();
    }

    private Remedy asItIs() {
        return new Remedy(
                RemedyChange.of(RemedyChange.Kind.AS_IT_IS),
                asItIs.playings(),
                true,
                spreadPins(),
                0,
                Optional.of(SpreadGain.none(asItIs.sets())),
                0,
                0,
                false,
                false);
    }

    private double spreadPins() {
        return asItIs.evenness().orElseThrow().spreadPins();
    }

    /** All changes, those that went furthest first. */
    private List<Remedy> tried(List<Changes.Change> changes, Halving halving, Execution execution, IntConsumer onDone) {
        List<Trial> left = changes.stream()
                .map(change -> new Trial(change, new RoundsPlayed(change.under(events), asItIs.plan())))
                .toList();
        Deque<Remedy> ranked = new ArrayDeque<>();
        int done = 0;
        for (int s = 0; s < halving.stages().size(); s++) {
            for (Trial trial : left) {
                int before = done - trial.rounds().playings();
                trial.rounds().playTo(halving.stages().get(s).rounds(), execution, now -> onDone.accept(before + now));
                done = before + trial.rounds().playings();
            }
            boolean last = s == halving.stages().size() - 1;
            List<Judged> judged = left.stream()
                    .map(trial -> new Judged(trial, remedy(trial, last)))
                    .sorted(Comparator.comparingDouble(one -> one.remedy().spreadPins()))
                    .toList();
            int goOn = last ? 0 : halving.stages().get(s + 1).candidates();
            for (int out = judged.size() - 1; out >= goOn; out--) {
                ranked.addFirst(judged.get(out).remedy());
            }
            left = judged.stream().limit(goOn).map(Judged::trial).toList();
        }
        return List.copyOf(ranked);
    }

    /** What a trial says so far. */
    private record Judged(Trial trial, Remedy remedy) {}

    private Remedy remedy(Trial trial, boolean underAllSets) {
        FairnessComparison comparison =
                FairnessComparison.of(asItIs.estimates(), trial.rounds().estimates());
        double scale = scale(comparison.spreadBeforePins());
        double gainPins = scale * (comparison.spreadBeforePins() - comparison.spreadAfterPins());
        return new Remedy(
                trial.change().what(),
                trial.rounds().playings(),
                underAllSets,
                spreadPins() - gainPins,
                gainPins,
                comparison.gain().map(gain -> gain.times(scale)),
                extraMinutes(trial.rounds().endsAsDrawnMs()),
                oiling(trial.change().event()) - oiling(event),
                false,
                false);
    }

    /**
     * Of those that were played under all sets, the change that under the set in which it fares worst falls least
     * behind the best there (L. J. Savage, "The theory of statistical decision", Journal of the American Statistical
     * Association 46, 1951). Empty where gains by set are not known.
     */
    private static Optional<Remedy> leastRegret(List<Remedy> remedies) {
        List<Remedy> tried = remedies.stream().filter(Remedy::underAllSets).toList();
        if (tried.stream().anyMatch(remedy -> remedy.gain().isEmpty())) {
            return Optional.empty();
        }
        List<List<Double>> gains = tried.stream()
                .map(remedy -> remedy.gain().orElseThrow().bySet())
                .toList();
        double[] best = new double[gains.get(0).size()];
        Arrays.fill(best, Double.NEGATIVE_INFINITY);
        for (List<Double> gain : gains) {
            for (int s = 0; s < best.length; s++) {
                best[s] = Math.max(best[s], gain.get(s));
            }
        }
        return tried.stream().min(Comparator.comparingDouble(remedy -> regret(remedy, best)));
    }

    private static double regret(Remedy remedy, double[] best) {
        List<Double> gain = remedy.gain().orElseThrow().bySet();
        return IntStream.range(0, best.length)
                .mapToDouble(s -> best[s] - gain.get(s))
                .max()
                .orElseThrow();
    }

    /**
     * From pins in the rounds of a trial to pins in all rounds of the event as it is: a change is known as a share of
     * the spread before it (ratio estimator; W. G. Cochran, "Sampling Techniques", 3rd ed. 1977, chapter 6).
     */
    private double scale(double spreadInTheseRounds) {
        return spreadInTheseRounds > 0 ? spreadPins() / spreadInTheseRounds : 1;
    }

    private double extraMinutes(List<Long> changedMs) {
        double latest = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < drawn.squads().size(); s++) {
            long later = changedMs.get(s) - drawn.squads().get(s).endMs();
            latest = Math.max(latest, later / MS_PER_MINUTE);
        }
        return latest;
    }

    private double oiling(Event of) {
        double sum = 0;
        for (int s = 0; s < of.squads().size(); s++) {
            sum += new OilingCost(costs, of).before(s);
        }
        return sum;
    }
}
