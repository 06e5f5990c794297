package lanetide.cli.scenario.reader;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.cli.words.FindingWords;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.RepeatedVisit;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationFinding;
import lanetide.squads.rotation.RotationReport;

/** Plans each squad's rotation, and says once why it cannot be had. */
final class RotationPlanner {
    private final Section section;
    private final Key<Void> key;
    private final Optional<RotationReader.Choice> choice;
    private final Notices notices;
    private final Set<String> said = new HashSet<>();
    private final Map<List<Object>, Rotation> planned = new HashMap<>();

    /** Plans by what a key of a block says. */
    RotationPlanner(Notices notices, Section section, Key<Void> key, Optional<RotationReader.Choice> choice) {
        this.notices = notices;
        this.section = section;
        this.key = key;
        this.choice = choice;
    }

    Optional<Rotation> plan(Squad squad, int games, Centre centre) {
        if (choice.isEmpty()) {
            return Optional.empty();
        }
        try {
            Rotation rotation = planned(squad.groups().size(), games, centre);
            if (hasCollision(rotation, squad, centre)
                    || (!choice.get().mayRepeat() && comesBack(rotation, squad, centre))) {
                return Optional.empty();
            }
            remark(rotation, squad, centre);
            return Optional.of(rotation);
        } catch (ImpossibleRotationException e) {
            say(NoticeCode.ROTATION_IMPOSSIBLE, squad, e.getMessage());
            return Optional.empty();
        }
    }

    /** Squads of one size share a rotation: a search need not be made twice. */
    private Rotation planned(int groups, int games, Centre centre) {
        return planned.computeIfAbsent(
                List.of(groups, games, centre.spare()),
                size -> centre.plan(choice.orElseThrow().design(), groups, games));
    }

    private boolean comesBack(Rotation rotation, Squad squad, Centre centre) {
        int pairs = centre.rotationPairs().size();
        Optional<RepeatedVisit> first = RotationReport.of(rotation).firstRepeatedVisit();
        first.ifPresent(visit -> say(
                NoticeCode.ROTATION_REPEATS_FORBIDDEN,
                squad,
                rotation.games() > pairs
                        ? "Repeats are forbidden, but its " + rotation.games()
                                + " games must be at most its pairs in use (" + pairs
                                + ") for a rotation without any. Use more pairs or fewer games, or write `repeats: allowed`."
                        : names(squad, centre).sentence(visit)
                                + " Repeats must not be, as the scenario forbids them. Move by another number of pairs, or"
                                + " try `balanced`."));
        return first.isPresent();
    }

    private boolean hasCollision(Rotation rotation, Squad squad, Centre centre) {
        for (int game = 0; game < rotation.games(); game++) {
            Set<Integer> taken = new HashSet<>();
            for (int group = 0; group < rotation.groups(); group++) {
                int pair = rotation.pairOf(game, group);
                if (!taken.add(pair)) {
                    say(
                            NoticeCode.ROTATION_COLLISION,
                            squad,
                            "Two groups would meet on pair "
                                    + centre.pairs().get(pair).id() + " in game " + (game + 1)
                                    + "; a pair must have one group at a time. Correct that row.");
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * What a director should know of a rotation that can be played; squads with the same findings are not told twice.
     */
    private void remark(Rotation rotation, Squad squad, Centre centre) {
        RotationReport report = RotationReport.of(rotation);
        FindingWords names = names(squad, centre);
        note(
                NoticeCode.ROTATION_REPEATS_PAIRS,
                report.repeatedVisits().stream()
                        .sorted(Comparator.comparingInt(RepeatedVisit::againGame))
                        .toList(),
                names,
                "Move by another number of pairs.");
        note(
                NoticeCode.ROTATION_SAME_PREDECESSOR,
                report.solePredecessors(),
                names,
                "A group then meets the oil of one other group only; `balanced` mixes them, and `rotate` compares.");
    }

    private static FindingWords names(Squad squad, Centre centre) {
        return new FindingWords(
                group -> "group " + squad.groups().get(group).id(),
                pair -> "pair " + centre.pairs().get(pair).id());
    }

    /** The first finding in words, and how many more there are. */
    private void note(NoticeCode code, List<? extends RotationFinding> findings, FindingWords names, String whatToTry) {
        if (findings.isEmpty()) {
            return;
        }
        int rest = findings.size() - 1;
        String more = rest == 0 ? "" : " And " + rest + " more such.";
        String reason = names.sentence(findings.get(0)) + more + " " + whatToTry;
        sayOnce(code, reason, name -> name.isEmpty() ? "" : "The rotation is `" + name + "`. ");
    }

    private void say(NoticeCode code, Squad squad, String reason) {
        sayOnce(
                code,
                reason,
                name -> "Squad " + squad.id() + " cannot play "
                        + (name.isEmpty() ? "this rotation" : "the rotation `" + name + "`") + ". ");
    }

    /** Says a reason once, where the rotation is named; an opening with that name stands before it. */
    private void sayOnce(NoticeCode code, String reason, UnaryOperator<String> opening) {
        if (said.add(reason)) {
            Optional<Value> value = section.value(key);
            String name = value.map(Value::plain).orElse(key.otherwise());
            Place place = value.map(Value::place).orElse(section.place());
            notices.add(code, place, section.pathOf(key), name, opening.apply(name) + reason);
        }
    }
}
