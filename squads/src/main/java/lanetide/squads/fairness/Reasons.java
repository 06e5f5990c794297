package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.SolePredecessor;

/** Looks the plan and the playings over for what goes with the advantages. */
final class Reasons {
    private final Event event;
    private final List<Effect> effects;
    private final EffectEstimates estimates;
    private final GroupWear wear;
    private final List<Reason> reasons = new ArrayList<>();

    private Reasons(Event event, List<Effect> effects, EffectEstimates estimates, GroupWear wear) {
        this.event = event;
        this.effects = effects;
        this.estimates = estimates;
        this.wear = wear;
    }

    static List<Reason> of(Event event, List<Effect> effects, EffectEstimates estimates, GroupWear wear) {
        Reasons found = new Reasons(event, effects, estimates, wear);
        found.squads();
        found.predecessors();
        found.groups();
        found.hands();
        found.styles();
        found.sizes();
        return found.reasons;
    }

    private void squads() {
        if (event.squads().size() < 2) {
            return;
        }
        List<Reason.GamesSinceOiling.Found> squads = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            Squad squad = event.squads().get(s);
            squads.add(new Reason.GamesSinceOiling.Found(
                    squad.id(), advantage(EffectKind.SQUAD, squad.id()), squad.conditioning(), gamesOnItsOil(s)));
        }
        reasons.add(new Reason.GamesSinceOiling(squads));
    }

    /** Games that squads before one have played on its lanes since they were oiled. */
    private double gamesOnItsOil(int squad) {
        double games = 0;
        for (int s = 0; s <= squad; s++) {
            if (event.shareLanes(s, squad)) {
                games = event.squads().get(s).conditioning().laysOil() ? 0 : games;
                games += s < squad ? event.gamesOnPair(s) : 0;
            }
        }
        return games;
    }

    private void predecessors() {
        List<String> bound = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            Squad squad = event.squads().get(s);
            List<SolePredecessor> sole =
                    RotationReport.of(event.rotations().get(s)).solePredecessors();
            int at = s;
            int strongest = wear.strongest(s);
            sole.stream()
                    // Who takes most oil off is known only of those who are known to come.
                    .filter(following -> squad.field().isEmpty() && following.predecessor() == strongest)
                    .findFirst()
                    .ifPresent(following -> reasons.add(followsStrongest(at, following.group(), strongest)));
            if (sole.size() == squad.groups().size()) {
                bound.add(squad.id());
            }
        }
        if (!bound.isEmpty()) {
            reasons.add(new Reason.SamePredecessor(bound));
        }
    }

    private Reason followsStrongest(int squad, int group, int strongest) {
        Squad of = event.squads().get(squad);
        return new Reason.FollowsStrongest(
                of.id(),
                of.groups().get(group).id(),
                advantage(EffectKind.GROUP, groupId(of, of.groups().get(group))),
                startPair(squad, group),
                of.groups().get(strongest).id(),
                wear.mlAGame(squad, strongest),
                wear.meanMlAGame(squad));
    }

    /** The worst and the best placed group, if they are not shown to be fairly placed. */
    private void groups() {
        List<Effect> groups = of(EffectKind.GROUP);
        Comparator<Effect> byAdvantage = Comparator.comparingDouble(Effect::advantagePins);
        groups.stream().min(byAdvantage).ifPresent(worst -> group(worst, false));
        groups.stream().max(byAdvantage).ifPresent(best -> group(best, true));
    }

    private void group(Effect effect, boolean isBest) {
        if (effect.verdict() == Verdict.FAIR) {
            return;
        }
        for (int s = 0; s < event.squads().size(); s++) {
            Squad squad = event.squads().get(s);
            for (int g = 0; g < squad.groups().size(); g++) {
                if (groupId(squad, squad.groups().get(g)).equals(effect.id())) {
                    String pair = startPair(s, g);
                    reasons.add(new Reason.PlacedGroup(
                            isBest,
                            effect.id(),
                            effect.advantagePins(),
                            advantage(EffectKind.SQUAD, squad.id()).orElse(0),
                            advantage(EffectKind.PAIR, pair).orElse(0),
                            pair,
                            squad.field().isPresent()
                                    ? Map.of()
                                    : bowlersByStyle(squad.groups().get(g))));
                }
            }
        }
    }

    private static Map<String, Integer> bowlersByStyle(Group group) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Bowler bowler : group.bowlers()) {
            counts.merge(bowler.style().id(), 1, Integer::sum);
        }
        return counts;
    }

    private void hands() {
        List<Effect> hands = of(EffectKind.HAND);
        int all = hands.stream().mapToInt(Effect::bowlers).sum();
        hands.stream()
                .min(Comparator.comparingInt(Effect::bowlers))
                .filter(few -> few.verdict() != Verdict.FAIR)
                .ifPresent(
                        few -> reasons.add(new Reason.FewOnOneSide(few.id(), few.bowlers(), all, few.advantagePins())));
    }

    private void styles() {
        of(EffectKind.STYLE).stream()
                .filter(effect -> effect.verdict() != Verdict.FAIR)
                .max(Comparator.comparingDouble(effect -> Math.abs(effect.advantagePins())))
                .ifPresent(effect -> {
                    int index = estimates.classes(EffectKind.STYLE).ids().indexOf(effect.id());
                    reasons.add(new Reason.StyleAndChange(effect.id(), estimates.styleMeans(index)));
                });
    }

    private void sizes() {
        for (Squad squad : event.squads()) {
            var sizes = squad.groups().stream().mapToInt(Group::size).summaryStatistics();
            if (sizes.getMin() != sizes.getMax()) {
                reasons.add(new Reason.UnevenGroups(squad.id(), sizes.getMin(), sizes.getMax()));
            }
        }
    }

    private List<Effect> of(EffectKind kind) {
        return effects.stream().filter(effect -> effect.kind() == kind).toList();
    }

    private OptionalDouble advantage(EffectKind kind, String id) {
        return of(kind).stream()
                .filter(effect -> effect.id().equals(id))
                .mapToDouble(Effect::advantagePins)
                .findFirst();
    }

    private String startPair(int squad, int group) {
        return event.centre()
                .pairs()
                .get(event.rotations().get(squad).pairOf(0, group))
                .id();
    }

    private String groupId(Squad squad, Group group) {
        return event.squads().size() > 1 ? squad.id() + "/" + group.id() : group.id();
    }
}
