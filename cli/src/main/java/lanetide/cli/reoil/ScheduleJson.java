package lanetide.cli.reoil;

import lanetide.cli.report.JsonAnswer;
import lanetide.squads.model.Event;
import lanetide.squads.recondition.OilingSchedule;
import lanetide.squads.recondition.OilingSchedules;
import tools.jackson.databind.node.ObjectNode;

/** How often and before which squads to oil, for programs. */
final class ScheduleJson {
    private final Event event;

    ScheduleJson(Event event) {
        this.event = event;
    }

    void write(ObjectNode node, OilingSchedules schedules) {
        node.put("oilings", schedules.best());
        node.put("low", schedules.low());
        node.put("high", schedules.high());
        ObjectNode flat = node.putObject("flat");
        flat.put("from", schedules.flat().from());
        flat.put("to", schedules.flat().to());
        JsonAnswer.put(flat, "withinCost", schedules.flat().withinCost(), 2);
        JsonAnswer.put(node, "sameSquadsShare", schedules.sameSquadsShare(), 4);
        JsonAnswer.putAll(node, "byOilings", schedules.byOilings(), this::schedule);
        schedule(node.putObject("asPlanned"), schedules.asPlanned());
    }

    private void schedule(ObjectNode node, OilingSchedule schedule) {
        schedule.squads().forEach(squad -> node.withArray("squads").add(name(squad)));
        JsonAnswer.put(node, "cost", schedule.cost(), 2);
        JsonAnswer.put(node, "low", schedule.low(), 2);
        JsonAnswer.put(node, "high", schedule.high(), 2);
        JsonAnswer.put(node, "oilingCost", schedule.oilingCost(), 2);
        JsonAnswer.put(node, "scoresCost", schedule.scoresCost(), 2);
        JsonAnswer.put(node, "oilLitres", schedule.oilLitres(), 3);
        JsonAnswer.put(node, "machineHours", schedule.machineHours(), 3);
        JsonAnswer.put(node, "spreadPins", schedule.spreadPins(), 3);
        node.put("worstSquad", name(schedule.worst()));
        JsonAnswer.put(node, "worstSpreadPins", schedule.worstPins(), 3);
        JsonAnswer.putAll(node, "paybacks", schedule.paybacks(), this::payback);
    }

    private void payback(ObjectNode node, OilingSchedule.Payback payback) {
        node.put("squad", name(payback.squad()));
        JsonAnswer.put(node, "cost", payback.cost(), 2);
        JsonAnswer.put(node, "saves", payback.saves(), 2);
        node.put("payer", name(payback.payer()));
        JsonAnswer.put(node, "payerSaves", payback.payerSaves(), 2);
    }

    private String name(int squad) {
        return event.squads().get(squad).id();
    }
}
