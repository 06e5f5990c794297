package lanetide.cli.fit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.words.English;
import lanetide.cli.words.UnknownNames;
import lanetide.squads.fit.FitResult;
import lanetide.squads.fit.FreshLane;
import lanetide.squads.fit.Suspicion;

/** What {@code fit} answers, for people: does the model agree, what does not belong, what was learnt. */
public final class FitText {
    /** A reading within so many deviations is said to agree: nine in ten do if all is right. */
    private static final double AGREES = 1.645;
    /** Readings told one by one. */
    private static final int FARTHEST = 6;
    /** By what share an unknown has to narrow to be told as learnt. */
    private static final double LEARNT = 0.1;

    private final FitAnswer answer;
    private final FitResult result;
    private final FitWords words;
    private final Page page = new Page();

    private FitText(FitAnswer answer, boolean metric) {
        this.answer = answer;
        this.result = answer.result();
        this.words = new FitWords(metric);
    }

    /**
     * Writes the answer.
     *
     * @param answer what came of the fit
     * @param metric whether lengths are written in metres instead of feet
     * @return the page
     */
    public static String write(FitAnswer answer, boolean metric) {
        return new FitText(answer, metric).write();
    }

    private String write() {
        page.line(answer.scenario().event().name());
        verdict();
        fresh();
        kinds();
        farthest();
        learnt();
        use();
        Ending.add(page, List.of());
        return page.text();
    }

    private void verdict() {
        long agree = result.checks().stream()
                .filter(check -> Math.abs(check.missBefore()) <= AGREES)
                .count();
        int all = result.checks().size();
        page.line(agree + " of " + all
                + " readings lie where the model expected them, within intervals for nine in ten.");
        page.paragraph(agreement((double) agree / all));
        List<Suspicion> named = suspicions(Suspicion.Verdict.NAMED);
        List<Suspicion> several = suspicions(Suspicion.Verdict.ONE_OF_SEVERAL);
        if (!named.isEmpty() || !several.isEmpty()) {
            page.heading("Readings that do not belong");
            named.forEach(
                    one -> page.item(
                            words.of(one)
                                    + " That makes all readings likelier than they are as they stand; look it up before you use the fit."));
            if (!several.isEmpty()) {
                page.paragraph(
                        several.size() == 1
                                ? "Something does not belong, and what it is cannot be told for sure. It may be:"
                                : "Something does not belong, and which of these it is cannot be told apart:");
                several.forEach(one -> page.item(words.of(one)));
            }
        }
    }

    private static String agreement(double share) {
        if (share >= 0.85) {
            return "That is as it should be: the model agrees with what was measured here.";
        }
        return share >= 0.7
                ? "That is fewer than it should be: the model agrees in the main, and the fit may still be too sure of itself."
                : "That is too few: something is otherwise than the model or the scenario has it. Look at what does not"
                        + " belong, and at the pattern that the scenario states, before you use the fit.";
    }

    private List<Suspicion> suspicions(Suspicion.Verdict verdict) {
        return result.suspicions().stream()
                .filter(one -> one.verdict() == verdict)
                .toList();
    }

    private void fresh() {
        if (result.fresh().isEmpty()) {
            return;
        }
        page.heading("Fresh oil against the sheet");
        result.fresh().stream()
                .sorted(Comparator.comparingInt(FreshLane::lane))
                .forEach(lane -> page.item(FitWords.of(lane)));
        page.paragraph(
                "Where the sheet does not say how the oil falls along the lane, the usual fall is taken for it; the"
                        + " fit then finds that of your machine.");
    }

    private void kinds() {
        page.heading("Does the model agree?");
        Map<String, List<FitResult.Check>> byKind = new LinkedHashMap<>();
        result.checks()
                .forEach(check -> byKind.computeIfAbsent(FitWords.kind(check.reading()), kind -> new ArrayList<>())
                        .add(check));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Readings", "Number", "Expected", "Off by", "After the fit"));
        rows.add(List.of("", "", "where said", "errors", "errors"));
        byKind.forEach((kind, checks) -> rows.add(List.of(
                kind,
                String.valueOf(checks.size()),
                String.valueOf(checks.stream()
                        .filter(check -> Math.abs(check.missBefore()) <= AGREES)
                        .count()),
                Figures.fixed(
                        rootMeanSquare(checks.stream()
                                .mapToDouble(FitResult.Check::missBefore)
                                .toArray()),
                        1),
                Figures.fixed(
                        rootMeanSquare(checks.stream()
                                .mapToDouble(FitResult.Check::missAfter)
                                .toArray()),
                        1))));
        page.table(rows, 1);
        page.paragraph(
                "An error is what a reading may be off by the tape or the eye, the day's luck and what is not known"
                        + " together; on the whole readings should be off by about one.");
    }

    private static double rootMeanSquare(double[] values) {
        double squares = 0;
        for (double value : values) {
            squares += value * value;
        }
        return Math.sqrt(squares / values.length);
    }

    private void farthest() {
        page.heading("The readings that are farthest off");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Reading", "Read", "Expected", "Fitted", "Errors"));
        rows.addAll(Table.rows(
                List.of("", "", "", "", "after"),
                result.checks().stream()
                        .sorted(Comparator.comparingDouble(check -> -Math.abs(check.missAfter())))
                        .limit(FARTHEST)
                        .toList(),
                check -> List.of(
                        words.of(check.reading()) + " (" + FitWords.unit(check.reading()) + ")",
                        Figures.fixed(check.reading().observed(), 1),
                        said(check.before()),
                        said(check.after()),
                        Figures.signed(check.missAfter(), 1))));
        page.table(rows, 1);
    }

    private static String said(FitResult.Said said) {
        return Figures.fixed(said.mean(), 1) + " +- " + Figures.fixed(AGREES * said.deviation(), 1);
    }

    private void learnt() {
        page.heading("What was learnt");
        List<FitResult.Learnt> learnt =
                result.learnt().stream().filter(one -> one.narrowed() >= LEARNT).toList();
        if (learnt.isEmpty()) {
            page.paragraph(
                    "Nothing: your lanes say no more than published facts do. More tapes, or balls followed to the"
                            + " pins with their speed, would tell more.");
        } else {
            List<List<String>> rows = new ArrayList<>();
            rows.add(List.of("What", "Before", "After", "Narrowed"));
            rows.addAll(Table.rows(
                    List.of("", "middle, nine in ten", "middle, nine in ten", "%"),
                    learnt,
                    one -> List.of(
                            UnknownNames.of(one.unknown().id()),
                            points(one.before()),
                            points(one.after()),
                            Figures.plain(100 * one.narrowed(), 0))));
            page.table(rows, 1);
        }
        page.paragraph("How friction falls with the film: the second law of the two had "
                + Figures.plain(100 * result.otherLawBefore(), 0) + " % of the sets, and has "
                + Figures.plain(100 * result.otherLawAfter(), 0) + " % now.");
        page.paragraph("Your lanes say nothing, or next to nothing, about: "
                + result.learnt().stream()
                        .filter(one -> one.narrowed() < LEARNT)
                        .map(one -> UnknownNames.of(one.unknown().id()))
                        .collect(Collectors.joining("; "))
                + ".");
    }

    private static String points(FitResult.Points points) {
        return significant(points.middle()) + ", " + significant(points.low()) + " to " + significant(points.high());
    }

    private static String significant(double value) {
        return new BigDecimal(value)
                .round(new MathContext(2))
                .stripTrailingZeros()
                .toPlainString();
    }

    private void use() {
        page.heading("What to do with it");
        page.item(
                "Write it down with --centre FILE, name that file in your scenarios (centre: {fitted: FILE}), and every"
                        + " command goes by what was measured here.");
        page.item("What to measure next: `lanetide fairness SCENARIO --what-to-measure`, with the file named in it.");
        page.item("The fit began with the " + result.sets().size() + " sets of values that published facts leave and "
                + English.joined(answer.days().stream().map(Scenario::fileName).toList())
                + "; it always begins there, so that no reading counts twice, and the order of days changes nothing.");
    }
}
