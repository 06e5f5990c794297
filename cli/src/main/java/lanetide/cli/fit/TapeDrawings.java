package lanetide.cli.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.words.English;
import lanetide.squads.fit.FitResult;
import lanetide.squads.fit.Reading;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;

/**
 * Tapes drawn along and across lanes: a lane at a time is a drawing, a row of it a tape, from the foul line down and
 * from the right-hand gutter in.
 *
 * @param words what distances are called
 * @param checks the readings with what was expected
 */
record TapeDrawings(FitWords words, List<FitResult.Check> checks) {
    /** Drawings at most, those that are farthest off. */
    private static final int MOST = 4;

    private static final int WIDTH = 60;

    /** A lane at a time. */
    private record Look(int lane, When when) {}

    /** A tape and what was expected of it. */
    private record Row(TapeTaken tape, FitResult.Said expected, double miss) {
        double low() {
            return Math.max(0, expected.mean() - FitWords.NINE_IN_TEN * expected.deviation());
        }

        double high() {
            return Math.max(0, expected.mean() + FitWords.NINE_IN_TEN * expected.deviation());
        }
    }

    void add(Page page) {
        Map<Look, List<Row>> looks = new LinkedHashMap<>();
        for (FitResult.Check check : checks) {
            if (check.reading() instanceof Reading.OfTape of) {
                looks.computeIfAbsent(new Look(of.tape().lane(), of.tape().when()), look -> new ArrayList<>())
                        .add(new Row(of.tape(), check.before(), check.missBefore()));
            }
        }
        if (looks.isEmpty()) {
            return;
        }
        List<Look> told = looks.keySet().stream()
                .sorted(Comparator.comparingDouble(look -> -meanSquare(looks.get(look))))
                .limit(MOST)
                .toList();
        double most = looks.values().stream()
                .flatMap(List::stream)
                .flatMap(row -> Stream.of(row.tape().units(), row.high()))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        page.heading("The tapes along and across the lane");
        page.paragraph(
                "From 0 to " + Figures.fixed(most, 0) + " units; `---` is where nine in ten were expected, `o` what a"
                        + " tape read, `X` where that lies beyond."
                        + (told.size() < looks.size()
                                ? " Of " + looks.size() + " the " + told.size()
                                        + " that are farthest off; JSON has all readings."
                                : ""));
        told.forEach(look -> draw(page, look, looks.get(look), most));
    }

    private static double meanSquare(List<Row> rows) {
        return rows.stream()
                .mapToDouble(row -> row.miss() * row.miss())
                .average()
                .orElseThrow();
    }

    private void draw(Page page, Look look, List<Row> rows, double most) {
        page.line("");
        page.line("Lane " + look.lane() + ", " + FitWords.of(look.when()) + ", " + English.count(rows.size(), "tape"));
        double distanceM = Double.NaN;
        for (Row row : sorted(rows)) {
            String where = row.tape().distanceM() == distanceM
                    ? ""
                    : words.distance(row.tape().distanceM());
            distanceM = row.tape().distanceM();
            page.line(String.format(
                    Locale.ROOT,
                    "%9s  board %2d |%s| %5.1f",
                    where,
                    row.tape().board(),
                    bar(row, most),
                    row.tape().units()));
        }
    }

    private static List<Row> sorted(List<Row> rows) {
        return rows.stream()
                .sorted(Comparator.comparingDouble((Row row) -> row.tape().distanceM())
                        .thenComparingInt(row -> row.tape().board()))
                .toList();
    }

    private static String bar(Row row, double most) {
        StringBuilder bar = new StringBuilder(" ".repeat(WIDTH));
        for (int at = place(row.low(), most); at <= place(row.high(), most); at++) {
            bar.setCharAt(at, '-');
        }
        bar.setCharAt(place(row.tape().units(), most), FitWords.agrees(row.miss()) ? 'o' : 'X');
        return bar.toString();
    }

    private static int place(double units, double most) {
        return (int) Math.min(WIDTH - 1, Math.round(units / most * (WIDTH - 1)));
    }
}
