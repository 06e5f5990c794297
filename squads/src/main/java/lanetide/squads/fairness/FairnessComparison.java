package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.NestedMean;
import lanetide.squads.model.Event;

/**
 * What a change of an event does to its fairness, round by round under the same luck.
 *
 * @param spreadBeforePins largest difference between two groups' advantages before (pins a game), noise taken out
 * @param spreadAfterPins the same after
 * @param gain what is known of how much smaller it is (jackknife over the rounds); empty for fewer than three rounds
 * @param groups what changes for the groups that are in both events, without those of squads that bowl before anything
 *     changes
 * @param bowledBefore squads that bowl before anything changes, whose bowlers score what they score
 */
public record FairnessComparison(
        double spreadBeforePins,
        double spreadAfterPins,
        Optional<SpreadGain> gain,
        List<GroupChange> groups,
        List<String> bowledBefore) {
    private static final double LEVEL = 0.9;

    /** Copies the list. */
    public FairnessComparison {
        groups = List.copyOf(groups);
        bowledBefore = List.copyOf(bowledBefore);
    }

    /**
     * What changes for a group.
     *
     * @param id the group
     * @param beforePins its advantage before (pins a game)
     * @param afterPins its advantage after
     * @param changeCi90 interval of the change
     */
    public record GroupChange(String id, double beforePins, double afterPins, ConfidenceInterval changeCi90) {}

    /**
     * Compares a changed event with the event as planned, which is studied only where there is something to compare.
     *
     * @param planned the event as planned
     * @param changed the event as changed
     * @param after a study of the changed event
     * @param study studies an event as the changed one was, with the same seed
     * @return what has changed; empty if either event has a single group
     */
    public static Optional<FairnessComparison> withPlanned(
            Event planned, Event changed, FairnessResult after, Function<Event, FairnessResult> study) {
        boolean hasGroups =
                EffectEstimates.groupIds(planned).size() > 1 && after.evenness().isPresent();
        return hasGroups
                ? Optional.of(of(study.apply(planned), after).without(bowledBefore(planned, changed), changed))
                : Optional.empty();
    }

    /** Squads that are in both events alike, before the first that is not. */
    private static List<String> bowledBefore(Event planned, Event changed) {
        List<String> squads = new ArrayList<>();
        int both = Math.min(planned.squads().size(), changed.squads().size());
        for (int s = 0; s < both; s++) {
            if (!planned.squads().get(s).equals(changed.squads().get(s))
                    || !planned.plans().get(s).equals(changed.plans().get(s))) {
                break;
            }
            squads.add(planned.squads().get(s).id());
        }
        return squads;
    }

    private FairnessComparison without(List<String> squads, Event event) {
        Set<String> theirs = event.squads().stream()
                .filter(squad -> squads.contains(squad.id()))
                .flatMap(squad -> EffectEstimates.groupIds(event, squad).stream())
                .collect(Collectors.toSet());
        List<GroupChange> others =
                groups.stream().filter(group -> !theirs.contains(group.id())).toList();
        return new FairnessComparison(spreadBeforePins, spreadAfterPins, gain, others, squads);
    }

    /**
     * Compares two studies of the same plan. Of the one with more rounds the first are taken.
     *
     * @param before a study of the event
     * @param after a study of the changed event, with the same seed
     * @return what has changed
     * @throws IllegalArgumentException if a study has less than two groups, or the seeds differ
     */
    public static FairnessComparison of(FairnessResult before, FairnessResult after) {
        if (before.plan().seed() != after.plan().seed()) {
            throw new IllegalArgumentException("studies with seeds "
                    + before.plan().seed() + " and " + after.plan().seed() + " did not meet the same luck");
        }
        return of(before.estimates(), after.estimates());
    }

    /** The same from the advantages of two studies of one seed. */
    static FairnessComparison of(EffectEstimates before, EffectEstimates after) {
        int rounds = Math.min(before.rounds(), after.rounds());
        Estimate first = groups(before).first(rounds);
        Estimate second = groups(after).first(rounds);
        boolean oneSet = first.sets() == 1;
        double luck = groups(before).luckVariance();
        return new FairnessComparison(
                (oneSet ? Evenness.of(first) : Evenness.of(first, luck)).spreadPins(),
                (oneSet ? Evenness.of(second) : Evenness.of(second, luck)).spreadPins(),
                oneSet ? SpreadGain.of(first, second) : Optional.of(SpreadGain.underSets(first, second, luck)),
                changes(before, after, first, second),
                List.of());
    }

    private static Estimate groups(EffectEstimates study) {
        Estimate groups = study.estimates().get(EffectKind.GROUP);
        if (groups == null) {
            throw new IllegalArgumentException("a comparison needs at least two groups");
        }
        return groups;
    }

    private static List<GroupChange> changes(
            EffectEstimates before, EffectEstimates after, Estimate first, Estimate second) {
        List<String> ids = before.classes(EffectKind.GROUP).ids();
        List<String> others = after.classes(EffectKind.GROUP).ids();
        List<GroupChange> changes = new ArrayList<>();
        for (int g = 0; g < ids.size(); g++) {
            int other = others.indexOf(ids.get(g));
            if (other >= 0) {
                changes.add(new GroupChange(
                        ids.get(g),
                        first.nested(g).mean(),
                        second.nested(other).mean(),
                        NestedMean.ofPairs(
                                        second.ofClass(other), first.ofClass(g), Math.min(first.sets(), second.sets()))
                                .truth()
                                .interval(LEVEL)));
            }
        }
        return changes;
    }
}
