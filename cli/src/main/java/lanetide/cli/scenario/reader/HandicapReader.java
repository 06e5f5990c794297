package lanetide.cli.scenario.reader;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.RuleKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.NamedValue;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;
import lanetide.squads.model.Level;
import lanetide.squads.score.Handicap;

/** Reads the handicap and gives it to the bowlers by their averages, or by those of their levels. */
final class HandicapReader {
    private final Map<String, Level> levels;
    private final Map<String, Integer> ofLevels = new HashMap<>();
    private final Set<String> missed = new HashSet<>();

    HandicapReader(Map<String, Level> levels) {
        this.levels = levels;
    }

    /** The same groups with their handicaps; as they are where a scenario has none, or has it wrong. */
    List<Optional<List<Group>>> give(
            Section scenario, List<Optional<List<Group>>> groups, Map<String, Integer> averages) {
        return scenario.value(EventKeys.SCORING)
                .filter(Value::isBlock)
                .flatMap(value -> value.child(RuleKeys.WITH_HANDICAP))
                .flatMap(value -> value.section(RuleKeys.HANDICAP))
                .map(section -> given(section, groups, averages))
                .orElse(groups);
    }

    private List<Optional<List<Group>>> given(
            Section section, List<Optional<List<Group>>> groups, Map<String, Integer> averages) {
        section.value(RuleKeys.AVERAGES)
                .flatMap(Value::named)
                .ifPresent(named -> named.values().forEach(this::readAverage));
        Optional<Handicap> handicap =
                section.build(() -> new Handicap(section.get(RuleKeys.BASE), section.get(RuleKeys.SHARE)));
        return handicap.map(known -> groups.stream()
                        .map(squad -> squad.map(each -> with(each, known, section, averages)))
                        .toList())
                .orElse(groups);
    }

    private List<Group> with(List<Group> squad, Handicap handicap, Section section, Map<String, Integer> averages) {
        return squad.stream()
                .map(group -> new Group(
                        group.id(),
                        group.bowlers().stream()
                                .map(bowler -> with(bowler, handicap, section, averages))
                                .toList()))
                .toList();
    }

    private void readAverage(NamedValue average) {
        Optional<Integer> pins = average.value().read(BowlerKeys.AVERAGE.form());
        average.oneOf(levels, "level").ifPresent(level -> pins.ifPresent(known -> ofLevels.put(average.name(), known)));
    }

    private Bowler with(Bowler bowler, Handicap handicap, Section section, Map<String, Integer> averages) {
        Integer average =
                averages.getOrDefault(bowler.id(), ofLevels.get(bowler.level().id()));
        if (average == null) {
            noAverage(bowler.level().id(), section);
            return bowler;
        }
        return bowler.withHandicap(handicap.pins(average));
    }

    private void noAverage(String level, Section section) {
        if (missed.add(level)) {
            section.notices()
                    .add(
                            NoticeCode.IMPOSSIBLE_COMBINATION,
                            section.place(),
                            section.pathOf(RuleKeys.AVERAGES),
                            "",
                            section.pathOf(RuleKeys.AVERAGES) + " has no average for level " + level
                                    + ", and some of its bowlers have none of their own; a handicap needs one for everybody. Add `"
                                    + level + ": 190 pins` under `averages`, or `average` to each entry.");
        }
    }
}
