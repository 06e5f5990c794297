package lanetide.cli.reoil;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.words.English;
import lanetide.squads.model.Event;
import lanetide.squads.recondition.Interval;
import lanetide.squads.recondition.OilingSchedule;
import lanetide.squads.recondition.OilingSchedules;

/** How often and before which squads to oil, for people. */
final class ScheduleSection {
    private final Event event;
    private final OilingSchedules schedules;
    private final String currency;

    ScheduleSection(Event event, OilingSchedules schedules, String currency) {
        this.event = event;
        this.schedules = schedules;
        this.currency = currency;
    }

    void on(Page page) {
        page.heading("How often, and before which squads");
        page.paragraph(recommendation());
        page.table(table(), 1);
        schedules
                .byOilings()
                .forEach(schedule -> page.item(
                        English.count(schedule.squads().size(), "oiling") + ": before " + names(schedule) + "."));
        page.item("As planned, before " + names(schedules.asPlanned()) + ": "
                + money(schedules.asPlanned().cost()) + " in all.");
        page.heading("Who pays for it");
        paybacks(page);
        page.heading("How squads and oilings were weighed");
        method(page);
    }

    /** The best number of oilings and its squads, and how sure that is. */
    private String recommendation() {
        OilingSchedule best = schedules.cheapest();
        return "It costs least to oil all lanes " + times(best.squads().size()) + ", before " + names(best) + ": "
                + money(best.cost()) + ", of which " + money(best.oilingCost()) + " for oiling. " + flat() + sureness();
    }

    private String flat() {
        Interval.Flat flat = schedules.flat();
        return flat.from() == flat.to()
                ? ""
                : "From " + flat.from() + " to " + flat.to()
                        + " oilings cannot be told apart: none is shown to cost over "
                        + Figures.fixed(100 * Interval.SAME_SHARE, 0) + " % more. ";
    }

    private String sureness() {
        String number = schedules.low() == schedules.high()
                ? String.valueOf(schedules.low())
                : schedules.low() + " to " + schedules.high();
        return (schedules.sets() == 1
                        ? "With other luck the best number is " + number + " (90 % interval)"
                        : "In nine of ten sets of values the best number is " + number)
                + "; drawn again, the playings name the same squads in "
                + Figures.fixed(100 * schedules.sameSquadsShare(), 0) + " % of cases.";
    }

    private List<List<String>> table() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Oilings", "Oiling", "Scores", "In all", "90 % interval", "Oil", "Machines", "Changed", "Most in"));
        rows.add(List.of("", currency, currency, currency, currency, "L", "h", "pins", "pins"));
        schedules.byOilings().forEach(schedule -> rows.add(row(schedule)));
        return rows;
    }

    private List<String> row(OilingSchedule schedule) {
        return List.of(
                String.valueOf(schedule.squads().size()),
                amount(schedule.oilingCost()),
                amount(schedule.scoresCost()),
                amount(schedule.cost()),
                amount(schedule.low()) + " to " + amount(schedule.high()),
                Figures.fixed(schedule.oilLitres(), 2),
                Figures.fixed(schedule.machineHours(), 1),
                Figures.fixed(schedule.spreadPins(), 1),
                Figures.fixed(schedule.worstPins(), 1) + " " + name(schedule.worst()));
    }

    private void paybacks(Page page) {
        OilingSchedule best = schedules.cheapest();
        if (best.paybacks().isEmpty()) {
            page.item("One oiling is enough, and lanes must be oiled once.");
        }
        best.paybacks().forEach(payback -> page.item(payback(payback)));
        int more = best.squads().size() + 1;
        if (more <= schedules.byOilings().size()) {
            OilingSchedule next = schedules.byOilings().get(more - 1);
            page.item("One oiling more would cost " + money(next.oilingCost() - best.oilingCost()) + " and save "
                    + money(best.scoresCost() - next.scoresCost()) + ".");
        }
    }

    private String payback(OilingSchedule.Payback payback) {
        boolean itself = payback.payer() == payback.squad();
        boolean last = payback.squad() == schedules.cheapest().squads().get(schedules.best() - 1);
        return "The oiling before " + name(payback.squad()) + " costs " + money(payback.cost()) + " and saves "
                + money(payback.saves()) + (last ? " until the end" : " until the next") + ", most of it ("
                + amount(payback.payerSaves()) + ") in " + (itself ? "that squad itself" : name(payback.payer())) + ".";
    }

    private void method(Page page) {
        page.item(
                "The event was played from each of its squads on, with lanes cleaned and oiled before that squad and never"
                        + " again, " + schedules.replications()
                        + " times with other luck, each time also on lanes that do not change. These playings hold what every choice"
                        + " of squads would bring; the cheapest for each number of oilings is found by dynamic programming.");
        page.item(
                "\"Changed\" is the root mean square over all games of how far the bowlers' expected scores are from those on"
                        + " fresh oil, by style; \"most in\" is the squad where that is most. A squad's curve never falls with what was"
                        + " played before it. A pin is worth "
                        + "what costs.pin says. Lanes must be oiled before the first squad. Where the scenario oils over what is left,"
                        + " they are cleaned and oiled here; where it cleans the ends of lanes, that is in the price. Lanes that are done before the centre opens, if costs.opens says when, lose nothing. Incidents are left out.");
    }

    private static String times(int oilings) {
        return switch (oilings) {
            case 1 -> "once";
            case 2 -> "twice";
            default -> oilings + " times";
        };
    }

    private String names(OilingSchedule schedule) {
        return English.joined(schedule.squads().stream().map(this::name).toList());
    }

    private String name(int squad) {
        return event.squads().get(squad).id();
    }

    private String money(double amount) {
        return amount(amount) + " " + currency;
    }

    private static String amount(double amount) {
        return Figures.fixed(amount, 2);
    }
}
