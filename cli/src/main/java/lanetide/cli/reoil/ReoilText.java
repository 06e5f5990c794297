package lanetide.cli.reoil;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.words.UnknownWords;
import lanetide.squads.recondition.Basis;
import lanetide.squads.recondition.CurvePoint;
import lanetide.squads.recondition.EventOiling;
import lanetide.squads.recondition.Interval;
import lanetide.squads.recondition.OilOver;
import lanetide.squads.recondition.OilingSchedules;
import lanetide.squads.recondition.ReoilResult;

/**
 * What {@code reoil} answers, for people: the interval first, then how sure, at what price, and the curve behind it.
 */
public final class ReoilText {
    private final Scenario scenario;
    private final ReoilResult result;
    private final Optional<OilingSchedules> schedules;
    private final String currency;
    private final Page page = new Page();

    private ReoilText(Scenario scenario, ReoilResult result, Optional<OilingSchedules> schedules) {
        this.scenario = scenario;
        this.result = result;
        this.schedules = schedules;
        this.currency = result.plan().costs().currency();
    }

    /**
     * Writes the answer.
     *
     * @param scenario what was studied
     * @param result what came of it
     * @param schedules how often and before which squads to oil, if asked for
     * @return the page
     */
    public static String write(Scenario scenario, ReoilResult result, Optional<OilingSchedules> schedules) {
        return new ReoilText(scenario, result, schedules).write();
    }

    private String write() {
        page.line(scenario.event().name());
        recommendation();
        intervals();
        event();
        schedules.ifPresent(found -> new ScheduleSection(scenario.event(), found, currency).on(page));
        oilOver(result.oilOver());
        curve();
        method();
        Ending.add(page, scenario, ReoilAssumptions.of(scenario));
        return page.text();
    }

    private void recommendation() {
        Interval cost = result.interval(Basis.COST);
        page.line(ReoilWords.recommendation(result));
        page.paragraph(ReoilWords.sureness(result));
        page.paragraph(ReoilWords.sentence(result, cost) + " A pair's share of the oiling is "
                + money(result.pairAllAtOnce()) + ", a pair oiled alone " + money(result.pairAlone()) + ".");
        if (cost.beyond()) {
            page.paragraph("Only the first " + result.plan().games()
                    + " games were looked at, and the cost was still falling: look further with --games, or check what a"
                    + " pin is worth to you.");
        }
    }

    private void intervals() {
        page.heading("If you ask otherwise");
        ReoilWords.others(result).forEach(page::item);
    }

    private void event() {
        if (scenario.event().squads().size() < 2 || schedules.isPresent()) {
            return;
        }
        page.heading("This event");
        page.item("As planned the lanes are done before " + squads(result.asPlanned()) + ": "
                + money(result.asPlanned().costPerPair()) + " for each pair.");
        boolean same = result.best().squads().equals(result.asPlanned().squads());
        page.item(
                same
                        ? "No other choice of squads costs less."
                        : "It would cost least to do them before " + squads(result.best()) + ": "
                                + money(result.best().costPerPair()) + ".");
    }

    private String squads(EventOiling oiling) {
        String names = oiling.squads().stream()
                .map(s -> scenario.event().squads().get(s).id())
                .collect(Collectors.joining(", "));
        return (oiling.squads().size() == 1 ? "squad " : "squads ") + names;
    }

    private void oilOver(OilOver over) {
        page.heading("Strip and oil, or oil over");
        page.item("Cleaned and oiled before every squad of " + over.games() + " games, expected scores change by "
                + Figures.fixed(over.stripSpreadPins(), 1) + " pins a game, at "
                + money(over.stripCostPerGame()) + " for a pair's game and "
                + Figures.plain(over.stripMinutes(), 1) + " minutes each time.");
        page.item("Oiled over what is left, they change by " + Figures.fixed(over.overSpreadPins(), 1) + " pins, at "
                + money(over.overCostPerGame()) + " and " + Figures.plain(over.overMinutes(), 1) + " minutes.");
    }

    private String money(double amount) {
        return Figures.fixed(amount, 2) + " " + currency;
    }

    private void curve() {
        page.heading("The curve behind it");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Games",
                "Windows moved",
                "This game",
                "Wide",
                "Pocket",
                "Scores changed",
                "Field mean",
                "Cost a game"));
        List<String> units = List.of("on a pair", "boards", "boards", "boards", "%", "pins", "pins", currency);
        rows.addAll(Table.rows(units, result.curve(), ReoilText::row));
        page.table(rows, 1);
    }

    private static List<String> row(CurvePoint point) {
        return List.of(
                String.valueOf(point.games()),
                Figures.fixed(point.windowShiftBoards(), 1),
                Figures.signed(point.paceBoards(), 1),
                Figures.fixed(point.windowWidthBoards(), 1),
                Figures.percent(point.pocketShare()),
                Figures.fixed(point.spreadPins(), 1),
                Figures.signed(point.levelPins(), 1),
                Figures.fixed(point.costPerGame(), 2));
    }

    private void method() {
        page.heading("How it was found");
        page.item("The squads of the scenario played in turn on one oiling until a pair had seen "
                + result.plan().games() + " games, " + result.plan().replications() + " times with seed "
                + scenario.seed()
                + ", each time also with the same luck on lanes that do not change. The scenario's"
                + " breaks, changes and incidents are left out.");
        page.item(
                "\"Scores changed\" is the root mean square over the bowlers, by style, of how far their expected game on"
                        + " oil of that age is from fresh oil, every style weighing as much as it plays in all; it is the rising curve"
                        + " nearest to what was found (pool adjacent violators), with the noise of finding it taken off."
                        + " \"Field mean\" is what the whole field gains or loses together, \"this game\" how far windows"
                        + " moved in it."
                        + " Windows are means over up to four lanes and all kinds of bowlers.");
        page.item(
                "The cost of a pair's game is that of an oiling and of all changes of scores until then, divided by the"
                        + " games; what costs at most "
                        + Figures.plain(100 * Interval.SAME_SHARE, 0)
                        + " % more than the least is said to cost the same. "
                        + (result.sets() == 1
                                ? "Intervals come from drawing the playings again (bootstrap, 200 times): they hold the luck"
                                        + " of play alone."
                                : "What is told is best on the mean over the sets of values. By luck and the choice of sets"
                                        + " alone, from drawing whole sets again (bootstrap, 200 times), oiling by cost would"
                                        + " be "
                                        + ReoilWords.range(
                                                result.interval(Basis.COST).luckLow(),
                                                result.interval(Basis.COST).luckHigh())
                                        + " games."));
        page.item(UnknownWords.intervals(result.sets(), scenario.event()));
    }
}
