package lanetide.cli.compare;

import java.util.List;
import java.util.stream.Collectors;
import lanetide.cli.check.ScenarioSummary;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.words.UnknownWords;
import lanetide.squads.fairness.Difference;

/** What {@code compare} answers, for people. */
public final class CompareText {
    private CompareText() {}

    /**
     * Writes the answer.
     *
     * @param first the first scenario
     * @param second the second scenario
     * @param replications how often each was played
     * @param sets sets of values that the playings went through in turn
     * @param differences what came of it
     * @param metric whether lengths are written in metres instead of feet
     * @return the page
     */
    public static String write(
            Scenario first, Scenario second, int replications, int sets, List<Difference> differences, boolean metric) {
        Page page = new Page();
        page.line("A: " + first.event().name() + " (" + first.file() + ")");
        page.line("B: " + second.event().name() + " (" + second.file() + ")");
        verdict(page, differences);
        plans(page, lines(first, metric), lines(second, metric));
        table(page, differences);
        page.paragraph("Each was played " + replications + " times with seed " + first.seed()
                + ". Bowlers of the same squad and name had the same luck in both, so that the differences are those of the"
                + " plans. A difference is real if chance alone would show one as large among so many in at most one"
                + " comparison of twenty (Student's t on pairs, Holm's correction).");
        page.paragraph(UnknownWords.intervals(sets, first.event()));
        page.paragraph(
                "\"Same sign\" is the share of the sets of values in which the difference has its sign, luck taken out."
                        + " What is not real is either hidden by luck, which more playings could lift, or hangs on what is not"
                        + " known, and then no number of playings would show it: choose by what holds in most sets, or measure.");
        Ending.entriesAndCautions(page, first, second);
        return page.text();
    }

    private static void verdict(Page page, List<Difference> differences) {
        List<Difference> real = differences.stream().filter(Difference::isReal).toList();
        if (real.isEmpty()) {
            page.line("No real difference was found.");
            hanging(page, differences);
            return;
        }
        page.line("What really differs, B against A:");
        for (Difference difference : real) {
            int decimals = CompareWords.decimals(difference.difference());
            page.item(CompareWords.quantity(difference) + ": " + Figures.signed(difference.difference(), decimals) + " "
                    + CompareWords.unit(difference) + " (95 % interval "
                    + Figures.signedInterval(difference.ci95(), decimals) + ").");
        }
        hanging(page, differences);
    }

    /** What no playing would show. */
    private static void hanging(Page page, List<Difference> differences) {
        String hanging = differences.stream()
                .filter(difference -> difference.known() == Difference.Known.HANGS)
                .map(CompareWords::quantity)
                .collect(Collectors.joining(", "));
        if (!hanging.isEmpty()) {
            page.paragraph("It hangs on what is not known which of the two has more of: " + hanging + ".");
        }
    }

    private static List<String> lines(Scenario scenario, boolean metric) {
        Page page = new Page();
        ScenarioSummary.add(page, scenario, metric);
        return page.text()
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static void plans(Page page, List<String> first, List<String> second) {
        List<String> onlyFirst =
                first.stream().filter(line -> !second.contains(line)).toList();
        List<String> onlySecond =
                second.stream().filter(line -> !first.contains(line)).toList();
        page.heading("How the plans differ");
        if (onlyFirst.isEmpty() && onlySecond.isEmpty()) {
            page.paragraph("Not in what a plan is told by: lanes, pattern, rotation, squads, assumptions.");
        }
        onlyFirst.forEach(line -> page.line("  A: " + line));
        onlySecond.forEach(line -> page.line("  B: " + line));
    }

    private static void table(Page page, List<Difference> differences) {
        page.heading("All that was compared");
        List<String> head = List.of("", "A", "B", "B less A", "95 % interval", "same sign", "real");
        page.table(
                Table.rows(
                        head,
                        differences,
                        difference -> List.of(
                                CompareWords.quantity(difference) + ", " + CompareWords.unit(difference),
                                CompareWords.mean(difference, difference.a()),
                                CompareWords.mean(difference, difference.b()),
                                Figures.fixed(difference.difference(), 2),
                                Figures.interval(difference.ci95(), 2),
                                difference.known() == Difference.Known.NONE
                                        ? "-"
                                        : UnknownWords.share(difference.signShare()),
                                CompareWords.known(difference.known()))),
                1);
    }
}
