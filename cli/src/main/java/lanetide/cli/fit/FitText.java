package lanetide.cli.fit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.apache.commons.math3.stat.inference.AlternativeHypothesis;
import org.apache.commons.math3.stat.inference.BinomialTest;

/** What {@code fit} answers, for people: does the model agree, what does not belong, what was learnt. */
public final class FitText {
    /** The share that does, and the one from which on it is called good, and then fair. */
    private static final double NINE_IN_TEN = 0.9;

    private static final double GOOD = 0.85;
    private static final double FAIR = 0.7;

    /** So few that agree, or fewer, are called chance if they are as likely as this, reading by reading. */
    private static final double CHANCE = 0.05;

    /** Readings told one by one. */
    private static final int FARTHEST = 6;

    /** What a lane technician asks after first; told by name where his lanes say nothing about it. */
    private static final List<String> ASKED_FIRST = List.of(
            "dry-friction", "fluid-friction", "viscosity", "head-decay", "end-floor", "lane-tilt", "absorption");

    /** By what share an unknown has to narrow to be told as learnt. */
    private static final double LEARNT = 0.1;

    /** So much that was learnt is told one by one. */
    private static final int MOST_LEARNT = 8;

    private static final double MM_PER_M = 1000;

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
        new TapeDrawings(words, result.checks()).add(page);
        farthest();
        learnt();
        answer.changes().ifPresent(this::changes);
        trust();
        use();
        Ending.entriesAndCautions(page, answer.days().toArray(Scenario[]::new));
        return page.text();
    }

    private void verdict() {
        int agree = (int) result.checks().stream()
                .filter(check -> FitWords.agrees(check.missBefore()))
                .count();
        int all = result.checks().size();
        page.line(agree + " of " + English.count(all, "reading")
                + " lie where the model expected them. If all is right, nine in ten do.");
        page.paragraph(agreement(agree, all));
        List<Suspicion> named = suspicions(Suspicion.Verdict.NAMED);
        List<Suspicion> several = suspicions(Suspicion.Verdict.ONE_OF_SEVERAL);
        if (!named.isEmpty() || !several.isEmpty()) {
            page.heading("Readings that do not belong");
            named.forEach(one -> page.item(onDay(one) + words.of(one)
                    + " Then all the readings fit together better than they do as written. Look it up before you use"
                    + " the fit."));
            if (!several.isEmpty()) {
                page.paragraph(
                        several.size() == 1
                                ? "Something does not belong, but the readings cannot say for sure what. It may be this:"
                                : "Something does not belong, but the readings cannot say which of these it is:");
                several.forEach(one -> page.item(onDay(one) + words.of(one)));
            }
        }
    }

    /** The day, where there are several. */
    private String onDay(Suspicion suspicion) {
        return answer.days().size() == 1
                ? ""
                : answer.days().get(suspicion.day()).fileName() + ": ";
    }

    private static String agreement(int agree, int all) {
        double share = (double) agree / all;
        if (share >= GOOD) {
            return "That is as it should be: the model agrees with what was measured here.";
        }
        if (new BinomialTest().binomialTest(all, agree, NINE_IN_TEN, AlternativeHypothesis.LESS_THAN) >= CHANCE) {
            return "That may be chance: so few readings do not show whether the model agrees. Take more tapes.";
        }
        return share >= FAIR
                ? "That is fewer than it should be. The model agrees in the main, but the fit may be too sure of itself."
                : "That is too few. Something is not as the model or the scenario has it. Before you use the fit, look at"
                        + " what does not belong, and at the pattern in the scenario.";
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
                "Where the sheet does not say how the oil tapers down the lane, a usual taper stands for it here. The fit"
                        + " finds that of your machine.");
    }

    private void kinds() {
        page.heading("Does the model agree?");
        Map<String, List<FitResult.Check>> byKind = new LinkedHashMap<>();
        result.checks()
                .forEach(check -> byKind.computeIfAbsent(FitWords.kind(check.reading()), kind -> new ArrayList<>())
                        .add(check));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Readings", "Number", "As expected", "Off by", "After the fit"));
        rows.add(List.of("", "", "", "errors", "errors"));
        byKind.forEach((kind, checks) -> rows.add(List.of(
                kind,
                String.valueOf(checks.size()),
                String.valueOf(checks.stream()
                        .filter(check -> FitWords.agrees(check.missBefore()))
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
                "One error is how far off a reading may well be: by the tape or the eye, by the luck of the day and by what"
                        + " nobody knows, all together. On the whole, readings should be off by about one.");
    }

    private static double rootMeanSquare(double[] values) {
        double squares = 0;
        for (double value : values) {
            squares += value * value;
        }
        return Math.sqrt(squares / values.length);
    }

    private void farthest() {
        page.heading("The readings farthest off");
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
        return Figures.fixed(said.mean(), 1) + " +- " + Figures.fixed(FitWords.NINE_IN_TEN * said.deviation(), 1);
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
            page.table(
                    Table.rows(
                            List.of("What (nine in ten of the sets lie between)", "Before", "After", "Narrowed by"),
                            learnt.subList(0, Math.min(MOST_LEARNT, learnt.size())),
                            one -> List.of(
                                    UnknownNames.of(one.unknown().id()) + (isLength(one) ? " (mm)" : ""),
                                    points(one.before(), isLength(one)),
                                    points(one.after(), isLength(one)),
                                    Figures.plain(100 * one.narrowed(), 0) + " %")),
                    1);
            page.paragraph("The numbers are the model's own; the narrower, the better known."
                    + (learnt.size() > MOST_LEARNT
                            ? " Of " + English.count(learnt.size() - MOST_LEARNT, "more thing")
                                    + " a little was learnt."
                            : ""));
        }
        page.paragraph("How friction falls as the oil gets thicker is told by one of two laws. The usual one had "
                + Figures.plain(100 * (1 - result.otherLawBefore()), 0) + " % of the sets, and has "
                + Figures.plain(100 * (1 - result.otherLawAfter()), 0) + " % now.");
        notLearnt();
    }

    private void notLearnt() {
        List<String> still = result.learnt().stream()
                .filter(one -> one.narrowed() < LEARNT)
                .map(one -> one.unknown().id())
                .toList();
        List<String> told = new ArrayList<>(ASKED_FIRST.stream()
                .filter(still::contains)
                .map(UnknownNames::of)
                .toList());
        int others = still.size() - told.size();
        if (others > 0) {
            told.add(English.count(others, told.isEmpty() ? "thing" : "more thing")
                    + ", many of them about bowlers and balls (the answer in JSON has them all)");
        }
        if (!told.isEmpty()) {
            page.paragraph("Your lanes say next to nothing about " + English.joined(told) + ".");
        }
    }

    /** The one that the model holds in metres. */
    private static boolean isLength(FitResult.Learnt learnt) {
        return learnt.unknown().id().equals("lane-tilt");
    }

    private static String points(FitResult.Points points, boolean isLength) {
        double times = isLength ? MM_PER_M : 1;
        return significant(times * points.low()) + " to " + significant(times * points.high());
    }

    private static String significant(double value) {
        return new BigDecimal(value)
                .round(new MathContext(2))
                .stripTrailingZeros()
                .toPlainString();
    }

    private void changes(FitChanges changes) {
        page.heading("What that changes for " + answer.scenario().event().name());
        page.table(Table.rows(List.of("", "Before", "After"), changes.all(), FitChanges.Change::row), 1);
        page.paragraph("Played " + changes.after().study().replications()
                + " times each; intervals, 95 % for scores and 90 % for the rest, hold the luck of play and what is not known."
                + " Boards count how far in a line has gone. Other commands tell more, with the centre file named in the"
                + " scenario.");
    }

    /** What trials with truths and faults that were made up have shown; their numbers stand in the README of squads. */
    private void trust() {
        page.heading("How far to trust it");
        page.item("Where friction follows one of the two laws, what is foretold after a fit held nine times in ten in"
                + " trials with truths that were made up. Where it follows another, lines and squads' scores held little"
                + " more often than every second time.");
        page.item("One day is mostly luck of that day: what is told of lines and squads often stays as wide as before."
                + " More days, and balls with their speed, tell more.");
        page.item(
                "Another unit, another time, boards from the other gutter, a longer or shorter pattern under tapes on fresh"
                        + " oil and one reading far off are mostly found; by how many feet a pattern is longer often is not."
                        + " Tapes of two lanes that were swapped rarely are: lanes that wore alike cannot be told apart. Write"
                        + " down the lane with every tape.");
    }

    private void use() {
        page.heading("What to do with it");
        page.item(
                "Write it to a file with --centre FILE, and name that file in your scenarios (centre: {fitted: FILE})."
                        + " Every command then plays these lanes.");
        page.item("What to measure next: `lanetide fairness SCENARIO --what-to-measure`, with the file named in it.");
        page.item("To add a day, name it beside "
                + English.joined(answer.days().stream().map(Scenario::fileName).toList())
                + " with --day. Every fit begins anew with the " + result.sets().size()
                + " sets of values that published facts leave, and takes all days at once, so that no reading counts"
                + " twice.");
    }
}
