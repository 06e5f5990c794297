package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.RotationCheck;
import lanetide.squads.rotation.SolePredecessor;

/**
 * What goes with the advantages, in words. Every sentence is a fact of the plan or of the playings; none claims more than that the two go
 * together.
 */
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

    private void add(String code, String text) {
        reasons.add(new Reason(code, text));
    }

    private void squads() {
        if (event.squads().size() < 2) {
            return;
        }
        List<String> parts = new ArrayList<>();
        double games = 0;
        for (int s = 0; s < event.squads().size(); s++) {
            Squad squad = event.squads().get(s);
            games = switch (squad.conditioning()) {
                case STRIP_AND_OIL, OIL_OVER -> 0;
                case NONE -> games;
            };
            String state = games == 0 ? "just oiled" : "on which " + Words.plain(games, 1) + " games have been played";
            parts.add("squad " + squad.id() + adding(EffectKind.SQUAD, squad.id()) + " finds lanes " + state);
            games += event.gamesOnPair(s);
        }
        add(
                "games-since-oiling",
                Words.capital(Words.joined(parts))
                        + ". Games are counted on each pair since it was oiled, mean over the pairs.");
    }

    private void predecessors() {
        List<String> bound = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            Squad squad = event.squads().get(s);
            List<SolePredecessor> sole =
                    RotationCheck.of(event.rotations().get(s)).solePredecessors();
            int strongest = wear.strongest(s);
            int squadIndex = s;
            sole.stream()
                    .filter(following -> following.predecessor() == strongest)
                    .findFirst()
                    .ifPresent(following -> {
                        String follower = squad.groups().get(following.group()).id();
                        add(
                                "follows-strongest",
                                "In squad " + squad.id() + " group " + follower
                                        + adding(
                                                EffectKind.GROUP,
                                                groupId(squad, squad.groups().get(following.group())))
                                        + ", which starts on pair " + startPair(squadIndex, following.group())
                                        + ", takes over every pair from group "
                                        + squad.groups().get(strongest).id() + ", which takes most oil off its lanes: "
                                        + Words.fixed(wear.mlAGame(squadIndex, strongest)) + " mL a game, against "
                                        + Words.fixed(wear.meanMlAGame(squadIndex)) + " mL on average.");
                    });
            if (sole.size() == squad.groups().size()) {
                bound.add(squad.id());
            }
        }
        if (!bound.isEmpty()) {
            add(
                    "same-predecessor",
                    "In squad" + (bound.size() == 1 ? " " : "s ") + Words.joined(bound)
                            + " every group takes over all its pairs from one and the same group, and so gets that group's"
                            + " oil in every game.");
        }
    }

    /** The worst and the best placed group, if they are not shown to be fairly placed. */
    private void groups() {
        List<Effect> groups = of(EffectKind.GROUP);
        groups.stream()
                .min(Comparator.comparingDouble(Effect::advantagePins))
                .ifPresent(worst -> group(worst, "worst"));
        groups.stream().max(Comparator.comparingDouble(Effect::advantagePins)).ifPresent(best -> group(best, "best"));
    }

    private void group(Effect effect, String placed) {
        if (effect.verdict() == Verdict.FAIR) {
            return;
        }
        for (int s = 0; s < event.squads().size(); s++) {
            Squad squad = event.squads().get(s);
            for (int g = 0; g < squad.groups().size(); g++) {
                if (groupId(squad, squad.groups().get(g)).equals(effect.id())) {
                    describe(effect, s, g, placed);
                }
            }
        }
    }

    private void describe(Effect effect, int squad, int group, String placed) {
        double withSquad = value(EffectKind.SQUAD, event.squads().get(squad).id());
        double withPair = value(EffectKind.PAIR, startPair(squad, group));
        double rest = effect.advantagePins() - withSquad - withPair;
        Group members = event.squads().get(squad).groups().get(group);
        add(
                placed + "-group",
                "Group " + effect.id() + " is placed " + placed + ": of its " + Words.signed(effect.advantagePins())
                        + " pins a game "
                        + Words.signed(withSquad) + " go with its squad, " + Words.signed(withPair)
                        + " with its starting pair "
                        + startPair(squad, group) + ", and " + Words.signed(rest)
                        + " with who plays there together, after whom, and how they take the change of the lanes. It has "
                        + styles(members) + ".");
    }

    private static String styles(Group group) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Bowler bowler : group.bowlers()) {
            counts.merge(bowler.style().id(), 1, Integer::sum);
        }
        return Words.joined(counts.entrySet().stream()
                .map(entry -> entry.getValue() + " " + entry.getKey())
                .toList());
    }

    private void hands() {
        List<Effect> hands = of(EffectKind.HAND);
        hands.stream()
                .min(Comparator.comparingInt(Effect::bowlers))
                .filter(few -> few.verdict() != Verdict.FAIR)
                .ifPresent(few -> {
                    int all = hands.stream().mapToInt(Effect::bowlers).sum();
                    add(
                            "few-on-one-side",
                            "From the " + few.id() + " play " + few.bowlers() + " of " + all
                                    + " bowlers, so that the oil on that side changes more slowly than on the other"
                                    + adding(EffectKind.HAND, few.id()) + ".");
                });
    }

    private void styles() {
        of(EffectKind.STYLE).stream()
                .filter(effect -> effect.verdict() != Verdict.FAIR)
                .max(Comparator.comparingDouble(effect -> Math.abs(effect.advantagePins())))
                .ifPresent(effect -> {
                    int index = estimates.classes(EffectKind.STYLE).ids().indexOf(effect.id());
                    StyleMeans means = estimates.styleMeans(index);
                    add(
                            "style-and-change",
                            "On lanes that never change " + effect.id() + " players would average "
                                    + Words.plain(means.unchanging(), 1) + " and here they average "
                                    + Words.plain(means.inPlay(), 1)
                                    + "; the whole field goes from " + Words.plain(means.fieldUnchanging(), 1) + " to "
                                    + Words.plain(means.fieldInPlay(), 1) + ".");
                });
    }

    private void sizes() {
        for (Squad squad : event.squads()) {
            var sizes = squad.groups().stream()
                    .mapToInt(group -> group.bowlers().size())
                    .summaryStatistics();
            if (sizes.getMin() != sizes.getMax()) {
                add(
                        "uneven-groups",
                        "Squad " + squad.id() + " has groups of " + sizes.getMin() + " to " + sizes.getMax()
                                + " bowlers: the smaller ones have more practice a bowler and change their lanes less.");
            }
        }
    }

    private List<Effect> of(EffectKind kind) {
        return effects.stream().filter(effect -> effect.kind() == kind).toList();
    }

    private Optional<Effect> effect(EffectKind kind, String id) {
        return of(kind).stream().filter(effect -> effect.id().equals(id)).findFirst();
    }

    private double value(EffectKind kind, String id) {
        return effect(kind, id).map(Effect::advantagePins).orElse(0.0);
    }

    /** The advantage in brackets, to follow what has it. */
    private String adding(EffectKind kind, String id) {
        return effect(kind, id)
                .map(effect -> " (" + Words.signed(effect.advantagePins()) + " pins a game)")
                .orElse("");
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
