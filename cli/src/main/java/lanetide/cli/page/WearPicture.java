package lanetide.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import lanetide.cli.report.Figures;
import lanetide.cli.words.WearWords;
import lanetide.oilflow.film.ByStretch;

/**
 * Draws what wear does to a ball: a row of bars for each game, what sends the ball higher to the right of nought, what
 * sends it lighter to the left, and a mark at the sum.
 *
 * @param shifts what wear does, by what stands before the row
 */
record WearPicture(Map<String, ByStretch> shifts) {
    private static final int WIDTH = 360;
    private static final int LABEL = 64;
    /** What the bars may take, less half a number at either end. */
    private static final int ROOM = 280;

    private static final int ROW = 26;
    private static final int BAR = 16;
    private static final int LEGEND = 44;
    private static final int FOOT = 34;
    /** The parts, by the classes of the style sheet; the first column is the sum. */
    private static final List<String> CLASSES = List.of("heads", "midlane", "pastend", "together");

    private static final List<String> COLUMNS =
            List.copyOf(WearWords.COLUMNS.keySet()).subList(1, 5);
    private static final List<ToDoubleFunction<ByStretch>> PARTS =
            List.copyOf(WearWords.COLUMNS.values()).subList(1, 5);

    String svg() {
        StringBuilder svg = new StringBuilder();
        int height = LEGEND + ROW * shifts.size() + FOOT;
        svg.append("<svg class=\"wear\" viewBox=\"0 0 " + WIDTH + " " + height + "\" role=\"img\""
                + " aria-label=\"The table below as bars, game by game\">");
        legend(svg);
        axis(svg, height);
        int row = 0;
        for (Map.Entry<String, ByStretch> shift : shifts.entrySet()) {
            row(svg, shift.getKey(), shift.getValue(), LEGEND + ROW * row++);
        }
        return svg.append("</svg>").toString();
    }

    private static void legend(StringBuilder svg) {
        for (int i = 0; i < COLUMNS.size(); i++) {
            int x = i * WIDTH / 4;
            rect(svg, CLASSES.get(i), x + 1, 4, 12);
            text(svg, x + 17, 16, "start", COLUMNS.get(i));
        }
        diamond(svg, 7, 32);
        text(svg, 17, 36, "start", "all of it");
    }

    private void axis(StringBuilder svg, int height) {
        int foot = height - FOOT;
        int most = (int) Math.ceil(most());
        int step = most > 6 ? 2 : 1;
        for (int board = -most; board <= most; board++) {
            if (board % step == 0) {
                svg.append("<line class=\"" + (board == 0 ? "nought" : "guide") + "\" x1=\"" + at(board) + "\" x2=\""
                        + at(board) + "\" y1=\"" + LEGEND + "\" y2=\"" + foot + "\"/>");
                text(svg, at(board), foot + 13, "middle", Figures.signed(board, 0));
            }
        }
        text(svg, at(-most), foot + 28, "start", "light");
        text(svg, at(most), foot + 28, "end", "high");
    }

    private void row(StringBuilder svg, String label, ByStretch shift, int top) {
        text(svg, "0", top + BAR, "start", label);
        double high = 0;
        double light = 0;
        List<String> bars = new ArrayList<>();
        for (int i = 0; i < PARTS.size(); i++) {
            double boards = PARTS.get(i).applyAsDouble(shift);
            double from = boards > 0 ? high : light + boards;
            high += Math.max(0, boards);
            light += Math.min(0, boards);
            bars.add("<rect class=\"" + CLASSES.get(i) + "\" x=\"" + at(from) + "\" y=\"" + (top + 4) + "\" width=\""
                    + Figures.fixed(Math.abs(boards) * perBoard(), 1) + "\" height=\"" + BAR + "\"/>");
        }
        bars.forEach(svg::append);
        diamond(svg, Double.parseDouble(at(shift.all())), top + 4 + BAR / 2);
    }

    /** The longest row of bars to one side (boards), at least one board. */
    private double most() {
        return shifts.values().stream()
                .mapToDouble(shift -> Math.max(sum(shift, 1), sum(shift, -1)))
                .reduce(1, Math::max);
    }

    private static double sum(ByStretch shift, int side) {
        return PARTS.stream()
                .mapToDouble(part -> Math.max(0, side * part.applyAsDouble(shift)))
                .sum();
    }

    private double perBoard() {
        return ROOM / 2.0 / Math.ceil(most());
    }

    private String at(double boards) {
        return Figures.fixed(LABEL + ROOM / 2.0 + boards * perBoard(), 1);
    }

    private static void rect(StringBuilder svg, String kind, int x, int y, int size) {
        svg.append("<rect class=\"" + kind + "\" x=\"" + x + "\" y=\"" + y + "\" width=\"" + size + "\" height=\""
                + size + "\"/>");
    }

    private static void diamond(StringBuilder svg, double x, int y) {
        svg.append("<path class=\"all\" d=\"M" + Figures.fixed(x - 5, 1) + " " + y + "l5 -6 5 6 -5 6z\"/>");
    }

    private static void text(StringBuilder svg, int x, int y, String anchor, String words) {
        text(svg, String.valueOf(x), y, anchor, words);
    }

    private static void text(StringBuilder svg, String x, int y, String anchor, String words) {
        svg.append("<text x=\"" + x + "\" y=\"" + y + "\" text-anchor=\"" + anchor + "\">" + words + "</text>");
    }
}
