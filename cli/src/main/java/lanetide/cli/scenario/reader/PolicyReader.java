package lanetide.cli.scenario.reader;

import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Default;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.model.Costs;
import lanetide.squads.recondition.ReoilPlan;

/** Reads what the director sets by judgement. What it takes for granted is kept apart, as only some commands ask for it. */
final class PolicyReader {
    private static final double MOST = 1e6;
    private static final double MOST_TIMES = 1000;
    private static final String ASSUMPTION = "assumption";

    private final Notices notices;
    private final Assumptions assumptions = new Assumptions();

    PolicyReader(Notices notices) {
        this.notices = notices;
    }

    Optional<Policy> read(Section scenario) {
        Optional<Section> fairness = scenario.block("fairness", Block.FAIRNESS);
        OptionalDouble margin = fairness.flatMap(section -> section.get("margin"))
                .map(value -> value.quantity(Measure.PINS, Range.above(0, FairnessPlan.MOST_MARGIN_PINS)))
                .orElse(OptionalDouble.empty());
        double limit = limit(fairness);
        return costs(scenario).map(costs -> new Policy(margin, limit, costs, assumptions.list()));
    }

    private double limit(Optional<Section> fairness) {
        Range range = Range.above(0, ReoilPlan.MAX_LIMIT_BOARDS);
        if (fairness.isEmpty()) {
            assumptions.add("fairness.limit", Defaults.LIMIT);
            return Defaults.LIMIT.base();
        }
        return fairness.get().quantity("limit", Measure.BOARDS, range, Defaults.LIMIT, assumptions);
    }

    private Optional<Costs> costs(Section scenario) {
        if (!scenario.has("costs")) {
            assume("oilLitre", Costs.USUAL.oilLitre());
            assume("cleanerLane", Costs.USUAL.cleanerLane());
            assume("labourHour", Costs.USUAL.labourHour());
            assume("laneHour", Costs.USUAL.laneHour());
            assume("pin", Costs.USUAL.pin());
            assume("unplanned", Costs.USUAL.unplanned());
            return Optional.of(Costs.USUAL);
        }
        return scenario.block("costs", Block.COSTS).flatMap(this::costsOf);
    }

    private Optional<Costs> costsOf(Section section) {
        int before = notices.errors();
        String currency =
                section.get("currency").map(value -> value.id().orElse("")).orElse(Costs.USUAL.currency());
        double oil = cost(section, "oilLitre", Costs.USUAL.oilLitre());
        double cleaner = cost(section, "cleanerLane", Costs.USUAL.cleanerLane());
        double labour = cost(section, "labourHour", Costs.USUAL.labourHour());
        double lane = cost(section, "laneHour", Costs.USUAL.laneHour());
        double pin = cost(section, "pin", Costs.USUAL.pin());
        double unplanned = number(section, "unplanned", Range.between(1, MOST_TIMES), Costs.USUAL.unplanned());
        return section.build(before, () -> new Costs(currency, oil, cleaner, labour, lane, pin, unplanned));
    }

    private double cost(Section section, String key, double usual) {
        return number(section, key, Range.between(0, MOST), usual);
    }

    private double number(Section section, String key, Range range, double usual) {
        return section.quantity(
                key, Measure.NUMBER, range, new Default(usual, Defaults.plain(usual), ASSUMPTION), assumptions);
    }

    private void assume(String key, double usual) {
        assumptions.add("costs." + key, Defaults.plain(usual), ASSUMPTION);
    }
}
