package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.NamedValue;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;
import lanetide.squads.model.Level;
import lanetide.squads.score.Handicap;
import lanetide.squads.score.ScoreCard;

/** Reads the handicap and gives it to the bowlers by their averages, or by those of their levels. */
final class HandicapReader {
    private final Notices notices;
    private final Map<String, Level> levels;
    private final Map<String, Integer> ofLevels = new HashMap<>();
    private final Set<String> missed = new HashSet<>();

    HandicapReader(Notices notices, Map<String, Level> levels) {
        this.notices = notices;
        this.levels = levels;
    }

    /** The same groups with their handicaps; as they are where a scenario has none, or has it wrong. */
    List<Optional<List<Group>>> give(
            Section scenario, List<Optional<List<Group>>> groups, Map<String, Integer> averages) {
        Optional<Section> section = scenario.get("scoring")
                .filter(Value::isBlock)
                .flatMap(value -> value.child("handicap"))
                .flatMap(value -> value.section(Block.HANDICAP));
        return section.map(handicap -> given(handicap, groups, averages)).orElse(groups);
    }

    private List<Optional<List<Group>>> given(
            Section section, List<Optional<List<Group>>> groups, Map<String, Integer> averages) {
        int before = notices.errors();
        int base = section.require("base")
                .map(value -> value.whole(Measure.PINS, 1, ScoreCard.PERFECT))
                .orElse(OptionalInt.empty())
                .orElse(0);
        double share = section.quantity("share", Measure.SHARE, Range.above(0, 1));
        readAverages(section);
        Optional<Handicap> handicap = section.build(before, () -> new Handicap(base, share));
        if (handicap.isEmpty()) {
            return groups;
        }
        List<Optional<List<Group>>> given = new ArrayList<>();
        for (Optional<List<Group>> squad : groups) {
            given.add(squad.map(known -> known.stream()
                    .map(group -> new Group(
                            group.id(),
                            group.bowlers().stream()
                                    .map(bowler -> with(bowler, handicap.get(), section, averages))
                                    .toList()))
                    .toList()));
        }
        return given;
    }

    private void readAverages(Section section) {
        section.get("averages")
                .flatMap(Value::named)
                .ifPresent(named -> named.values().forEach(this::readAverage));
    }

    private void readAverage(NamedValue average) {
        OptionalInt pins = average.value().whole(Measure.PINS, 0, ScoreCard.PERFECT);
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
            notices.add(
                    NoticeCode.IMPOSSIBLE_COMBINATION,
                    section.place(),
                    section.pathOf("averages"),
                    "",
                    section.pathOf("averages") + " has no average for level " + level
                            + ", and some of its bowlers have none of their own; a handicap needs one for everybody. Add `"
                            + level + ": 190 pins` under `averages`, or `average` to each entry.");
        }
    }
}
