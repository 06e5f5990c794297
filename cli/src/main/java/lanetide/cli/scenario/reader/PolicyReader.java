package lanetide.cli.scenario.reader;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.RuleKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.model.Costs;

/**
 * Reads what the director sets by judgement. What it takes for granted is kept apart, as only some commands ask for it.
 */
final class PolicyReader {

    private PolicyReader() {}

    static Optional<Policy> read(Section whole) {
        Section scenario = whole.withOwnAssumptions();
        Optional<Section> fairness = scenario.blockOrUsual(EventKeys.FAIRNESS);
        OptionalDouble margin = fairness.flatMap(section -> section.find(RuleKeys.MARGIN))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        Optional<Double> limit = fairness.flatMap(section -> section.find(RuleKeys.LIMIT));
        Optional<Costs> costs = scenario.blockOrUsual(EventKeys.COSTS).flatMap(PolicyReader::costs);
        return limit.flatMap(boards -> costs.map(known -> new Policy(
                margin,
                boards,
                known,
                Optional.empty(),
                scenario.notices().assumptions().list())));
    }

    private static Optional<Costs> costs(Section section) {
        Optional<Long> opensMs = section.find(RuleKeys.OPENS);
        opensMs.filter(opens -> opens >= TimeOfDay.DAY_MS)
                .ifPresent(opens -> section.refuse(
                        RuleKeys.OPENS,
                        NoticeCode.OUT_OF_RANGE,
                        "; it must be a time of every day, so without a day. Write it like \"09:00\"."));
        return section.build(() -> new Costs(
                section.get(RuleKeys.CURRENCY),
                section.get(RuleKeys.OIL_LITRE),
                section.get(RuleKeys.CLEANER_LANE),
                section.get(RuleKeys.LABOUR_HOUR),
                section.get(RuleKeys.LANE_HOUR),
                section.get(RuleKeys.PIN),
                section.get(RuleKeys.UNPLANNED),
                opensMs.map(OptionalLong::of).orElse(OptionalLong.empty())));
    }
}
