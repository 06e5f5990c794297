package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import lanetide.squads.machines.OilingCost;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;
import lanetide.squads.result.EventResult;
import lanetide.squads.study.PossibleEvents;

/** Tries changes of an event, each by playing it, and says which are worth choosing between. */
public final class RemedyStudy {
    private static final double MS_PER_MINUTE = 60_000;

    private final PossibleEvents events;
    private final Event event;
    private final FairnessResult asItIs;
    private final FairnessPlan plan;
    private final Costs costs;
    private final EventResult drawn;

    private RemedyStudy(PossibleEvents events, FairnessResult asItIs, FairnessPlan plan, Costs costs) {
        this.events = events;
        this.event = events.event();
        this.asItIs = asItIs;
        this.plan = plan;
        this.costs = costs;
        this.drawn = FairnessStudy.asDrawn(events, plan);
    }

    /**
     * Playings a study takes, for telling how far it is.
     *
     * @param event the event
     * @param lost pairs that are lost by late changes, counted from zero
     * @param playings playings of each change
     * @return playings in all
     */
    public static int playings(Event event, Set<Integer> lost, int playings) {
        return new Changes(event, lost).list().size() * wholeRounds(event, playings);
    }

    private static int wholeRounds(Event event, int playings) {
        int round = FairnessStudy.playingsOfRound(event);
        return Math.max(FairnessStudy.fewestPlayings(event), playings / round * round);
    }

    /**
     * Tries all changes.
     *
     * @param events the event under the sets of values that it was studied under
     * @param lost pairs that are lost by late changes, counted from zero; no change sends a group there in any game
     * @param asItIs a study of it
     * @param playings playings of each change; the event is judged by as many
     * @param costs what oiling costs
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return the event as it is, then the changes, those that leave the least spread first; empty for a single group
     */
    public static List<Remedy> run(
            PossibleEvents events,
            Set<Integer> lost,
            FairnessResult asItIs,
            int playings,
            Costs costs,
            int threads,
            IntConsumer onDone) {
        if (asItIs.evenness().isEmpty()) {
            return List.of();
        }
        Event event = events.event();
        int each = Math.min(asItIs.playings(), wholeRounds(event, playings));
        FairnessPlan plan =
                new FairnessPlan(asItIs.plan().seed(), each, asItIs.plan().marginPins(), true);
        return new RemedyStudy(events, asItIs, plan, costs).run(new Changes(event, lost).list(), threads, onDone);
    }

    private List<Remedy> run(List<Changes.Change> changes, int threads, IntConsumer onDone) {
        List<Remedy> remedies = new ArrayList<>();
        int done = 0;
        for (Changes.Change change : changes) {
            int before = done;
            remedies.add(remedy(change, threads, now -> onDone.accept(before + now)));
            done += plan.playings();
        }
        FairnessComparison self = FairnessComparison.of(asItIs, asItIs);
        double spread = remedies.isEmpty()
                ? self.spreadBeforePins()
                : remedies.get(0).spreadPins() + remedies.get(0).gainPins();
        remedies.sort(Comparator.comparingDouble(Remedy::spreadPins));
        remedies.add(
                0,
                new Remedy(
                        RemedyChange.of(RemedyChange.Kind.AS_IT_IS),
                        spread,
                        0,
                        Optional.of(SpreadGain.none(sets())),
                        0,
                        0,
                        false,
                        false));
        Optional<Remedy> least = leastRegret(remedies);
        return remedies.stream()
                .map(remedy -> remedy.judged(
                        remedy.isChoiceAmong(remedies),
                        least.filter(remedy::equals).isPresent()))
                .toList();
    }

    private int sets() {
        return Math.min(events.sets(), plan.playings() / FairnessStudy.playingsOfRound(event));
    }

    /**
     * The change that under the set of values in which it fares worst falls least behind the best there (L. J. Savage,
     * "The theory of statistical decision", Journal of the American Statistical Association 46, 1951). Empty where
     * gains by set are not known.
     */
    private static Optional<Remedy> leastRegret(List<Remedy> remedies) {
        if (remedies.stream().anyMatch(remedy -> remedy.gain().isEmpty())) {
            return Optional.empty();
        }
        List<List<Double>> gains = remedies.stream()
                .map(remedy -> remedy.gain().orElseThrow().bySet())
                .toList();
        double[] best = new double[gains.get(0).size()];
        Arrays.fill(best, Double.NEGATIVE_INFINITY);
        for (List<Double> gain : gains) {
            for (int s = 0; s < best.length; s++) {
                best[s] = Math.max(best[s], gain.get(s));
            }
        }
        return remedies.stream().min(Comparator.comparingDouble(remedy -> regret(remedy, best)));
    }

    private static double regret(Remedy remedy, double[] best) {
        List<Double> gain = remedy.gain().orElseThrow().bySet();
        return IntStream.range(0, best.length)
                .mapToDouble(s -> best[s] - gain.get(s))
                .max()
                .orElseThrow();
    }

    private Remedy remedy(Changes.Change change, int threads, IntConsumer onDone) {
        FairnessStudy.Played after = FairnessStudy.play(change.under(events), plan, threads, onDone);
        FairnessComparison comparison = FairnessComparison.of(asItIs, after.result());
        return new Remedy(
                change.what(),
                comparison.spreadAfterPins(),
                comparison.spreadBeforePins() - comparison.spreadAfterPins(),
                comparison.gain(),
                extraMinutes(after.asDrawn()),
                oiling(change.event()) - oiling(event),
                false,
                false);
    }

    private double extraMinutes(EventResult changed) {
        double latest = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < drawn.squads().size(); s++) {
            long later = changed.squads().get(s).endMs() - drawn.squads().get(s).endMs();
            latest = Math.max(latest, later / MS_PER_MINUTE);
        }
        return latest;
    }

    private double oiling(Event of) {
        double sum = 0;
        for (Squad squad : of.squads()) {
            if (squad.conditioning() != Conditioning.NONE) {
                sum += of.centre().pairs().size() * new OilingCost(costs, of).pairAllAtOnce(squad.conditioning());
            }
        }
        return sum;
    }
}
