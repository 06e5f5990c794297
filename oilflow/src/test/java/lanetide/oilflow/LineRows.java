package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineAdvisor;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.LineSearch;
import lanetide.oilflow.line.PlayedLine;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.BallPath;

/** Rows of the validation table about where players start on a fresh lane, and how much room they have. */
final class LineRows {
    private static final String TRADE = "common practice, no source";
    /** A strike in place of nine and a spare adds about eleven pins; eleven first balls a game (assumptions). */
    private static final double PINS_PER_STRIKE_SHARE = 11 * 11;

    private final List<ValidationRow> rows = new ArrayList<>();
    private final LineFinder finder = Lanes.finder();

    private LineRows() {
        freeLengthRule();
        bestExits();
        revs();
        house();
        wood();
        missRoom();
        volume();
        otherBall();
    }

    static List<ValidationRow> rows() {
        return new LineRows().rows;
    }

    private void freeLengthRule() {
        for (int feet = 33; feet <= 45; feet += 6) {
            OilPattern pattern = Lanes.pattern(feet);
            double mean = mean(free(pattern), played -> played.path().exitBoard());
            add(
                    "Exit board at " + feet + " ft, mean of four styles free to change their angle",
                    "length less 31 (USBC technique page, US Bowler, July 2011)",
                    (feet - 31) + " ± 2",
                    format("%.1f", mean),
                    Math.abs(mean - (feet - 31)) <= 2);
        }
    }

    private void bestExits() {
        OilPattern pattern = Lanes.pattern(39, 23, 5);
        bestExits("natural lines", natural(pattern, Lanes.DEFAULT_SURFACE), Use.FITTED);
        bestExits("free to change their angle", free(pattern), Use.CHECK);
    }

    private void bestExits(String who, List<PlayedLine> lines, Use use) {
        double[] exits =
                lines.stream().mapToDouble(played -> played.path().exitBoard()).toArray();
        add(
                "Exit boards of four styles, 39 ft, 23 mL, 5:1, " + who,
                "three boards to either side of the length rule's 8 (" + TRADE + ")",
                "all of 5 to 12",
                joined(exits),
                within(exits, 5, 12),
                use);
    }

    /** Free lines: the styles' own launch angles would write the order in. */
    private void revs() {
        revs("free to change their angle", free(Lanes.pattern(39)), "39 ft, 26 mL, 3:1", Use.FITTED);
        revs("free to change their angle", free(Lanes.pattern(39, 23, 5)), "39 ft, 23 mL, 5:1", Use.FITTED);
        revs("from home", natural(Lanes.pattern(39), Lanes.DEFAULT_SURFACE), "39 ft, 26 mL, 3:1", Use.BY_CONSTRUCTION);
    }

    private void revs(String who, List<PlayedLine> lines, String words, Use use) {
        double[] laydowns = lines.stream()
                .mapToDouble(played -> played.line().laydownBoard())
                .toArray();
        add(
                "Laydown boards by rising rev rate, " + words + ", " + who,
                TRADE,
                "each deeper",
                joined(laydowns),
                isRising(laydowns),
                use);
    }

    private static boolean isRising(double... values) {
        for (int i = 1; i < values.length; i++) {
            if (values[i] <= values[i - 1]) {
                return false;
            }
        }
        return true;
    }

    /** A house pattern as a coach knows it. */
    private void house() {
        for (String cover : List.of("weak-reactive", "medium-reactive")) {
            OilPattern pattern = Lanes.pattern(40, 23, 8);
            String words = ", 40 ft, 23 mL, 8:1, textured synthetic, " + cover;
            List<PlayedLine> lines = Lanes.STYLES.stream()
                    .map(style -> Lanes.elite(style, cover, "textured-synthetic"))
                    .map(player -> advisor(pattern)
                            .natural(player, Lanes.fresh(pattern))
                            .orElseThrow())
                    .toList();
            double[] exits = of(lines, played -> played.path().exitBoard());
            add(
                    "Exit boards by style" + words,
                    TRADE,
                    "all of 7 to 11",
                    joined(exits),
                    within(exits, 7, 11),
                    Use.FITTED);
            double[] laydowns = of(lines, played -> played.line().laydownBoard());
            add(
                    "Laydown boards by rising rev rate" + words,
                    TRADE,
                    "each deeper",
                    joined(laydowns),
                    isRising(laydowns),
                    Use.BY_CONSTRUCTION);
            double[] pockets = of(lines, played -> 100 * played.quality().pocketShare());
            double mean = Arrays.stream(pockets).average().orElseThrow();
            add(
                    "Pocket hits of elite bowlers, mean of four styles" + words,
                    TRADE,
                    "75 to 85 %",
                    format("%.0f %%", mean),
                    mean >= 75 && mean <= 85,
                    Use.FITTED);
            double least = Arrays.stream(pockets).min().orElseThrow();
            add(
                    "The same, least style" + words,
                    TRADE,
                    "at least 60 %",
                    format("%.0f %%", least),
                    least >= 60,
                    Use.FITTED);
            double[] widths = of(
                    lines,
                    played -> played.window().highBoard() - played.window().lowBoard());
            double narrowest = Arrays.stream(widths).min().orElseThrow();
            add(
                    "Narrowest window" + words,
                    TRADE,
                    "over half a board",
                    format("%.1f boards", narrowest),
                    narrowest > 0.5,
                    Use.FITTED);
        }
    }

    private static double[] of(List<PlayedLine> lines, ToDoubleFunction<PlayedLine> of) {
        return lines.stream().mapToDouble(of).toArray();
    }

    private static boolean within(double[] values, double low, double high) {
        return Arrays.stream(values).allMatch(value -> value >= low && value <= high);
    }

    private void wood() {
        double hard = meanLaydown(Lanes.DEFAULT_SURFACE);
        double textured = meanLaydown("textured-synthetic") - hard;
        double wood = meanLaydown("wood") - hard;
        add(
                "Feet from hard synthetic to wood, mean of four styles, 39 ft",
                "wood has the most friction (Bowlers Journal, November 2012, p. 25)",
                "deeper than on textured synthetic",
                format("%.1f against %.1f deeper", wood, textured),
                wood > textured);
    }

    private double meanLaydown(String surface) {
        return mean(natural(Lanes.pattern(39), surface), played -> played.line().laydownBoard());
    }

    private void missRoom() {
        double[] rooms = new double[4];
        int[] ratios = {2, 3, 5, 8};
        boolean wider = true;
        for (int i = 0; i < ratios.length; i++) {
            List<PlayedLine> lines = natural(Lanes.pattern(39, 26, ratios[i]), Lanes.DEFAULT_SURFACE);
            rooms[i] = mean(lines, played -> played.missRoom().totalBoards());
            wider &= i == 0 || rooms[i] > rooms[i - 1];
        }
        add(
                "Room to miss at the arrows, mean of four styles, 39 ft, 26 mL, at 2:1, 3:1, 5:1 and 8:1",
                "lower ratios forgive less (" + TRADE + ")",
                "rising",
                format("%.2f, %.2f, %.2f, %.2f boards", rooms[0], rooms[1], rooms[2], rooms[3]),
                wider);
    }

    private void volume() {
        OilPattern light = Lanes.pattern(39, 20, 3);
        OilFilm heavy = Lanes.fresh(Lanes.pattern(39, 30, 3));
        boolean later = true;
        StringBuilder said = new StringBuilder();
        for (int i = 0; i < Lanes.STYLES.size(); i++) {
            Player player = Lanes.player(Lanes.STYLES.get(i));
            Line line = natural(light, Lanes.DEFAULT_SURFACE).get(i).line();
            BallPath on20 = finder.path(player, Lanes.fresh(light), line, light.lengthM());
            BallPath on30 = finder.path(player, heavy, line, light.lengthM());
            later &= on30.breakpointM() >= on20.breakpointM() && on30.arrivalBoard() < on20.arrivalBoard();
            said.append(said.isEmpty() ? "" : ", ")
                    .append(format(
                            "%+.0f ft and %+.1f boards",
                            (on30.breakpointM() - on20.breakpointM()) / FOOT_M,
                            on30.arrivalBoard() - on20.arrivalBoard()));
        }
        add(
                "Breakpoint and arrival of a fixed line from 20 to 30 mL, 39 ft, 3:1, by rising rev rate",
                "more oil, less and later hook (" + TRADE + ")",
                "not earlier, and lighter",
                said.toString(),
                later);
    }

    /** The most that a ball which does not flare gains on a medium reactive one, in pins a game. */
    private void otherBall() {
        double most = 0;
        for (double[] laid : new double[][] {{36, 26, 3}, {39, 26, 3}, {42, 26, 3}, {39, 23, 5}, {40, 23, 8}}) {
            OilPattern pattern = Lanes.pattern(laid[0], laid[1], laid[2]);
            for (PlayedLineOf own : naturalOf(pattern, Lanes.DEFAULT_SURFACE)) {
                most = Math.max(most, gain(own, "urethane", pattern));
            }
        }
        add(
                "Most gained by urethane on medium reactive, four styles on five fresh patterns",
                "World Bowling, limited-ball test, 2014: largest difference between choices of balls",
                "at most 7.2 pins a game",
                format("%.0f pins a game", most * PINS_PER_STRIKE_SHARE),
                most * PINS_PER_STRIKE_SHARE <= 7.2);
    }

    private double gain(PlayedLineOf own, String cover, OilPattern pattern) {
        OilFilm film = Lanes.fresh(pattern);
        LineSearch search = new LineSearch(finder);
        Player changed = Lanes.player(own.player().style(), cover, Lanes.DEFAULT_SURFACE);
        Line present = own.played().line();
        double before = search.near(own.player(), film, present)
                .map(line -> finder.fineQuality(own.player(), film, line).strikeShare())
                .orElseThrow();
        return finder.moveToPocket(changed, film, present)
                .flatMap(line -> search.near(changed, film, line))
                .map(line -> finder.fineQuality(changed, film, line).strikeShare() - before)
                .orElse(0.0);
    }

    /** A line and whose it is. */
    private record PlayedLineOf(Player player, PlayedLine played) {}

    private List<PlayedLine> natural(OilPattern pattern, String surface) {
        return naturalOf(pattern, surface).stream().map(PlayedLineOf::played).toList();
    }

    private List<PlayedLineOf> naturalOf(OilPattern pattern, String surface) {
        OilFilm film = Lanes.fresh(pattern);
        LineAdvisor advisor = advisor(pattern);
        return Lanes.STYLES.stream()
                .map(style -> Lanes.player(style, Lanes.DEFAULT_COVER, surface))
                .map(player ->
                        new PlayedLineOf(player, advisor.natural(player, film).orElseThrow()))
                .toList();
    }

    private LineAdvisor advisor(OilPattern pattern) {
        return new LineAdvisor(finder, Lanes.homes(finder, pattern), pattern.lengthM());
    }

    private List<PlayedLine> free(OilPattern pattern) {
        OilFilm film = Lanes.fresh(pattern);
        LineAdvisor advisor = advisor(pattern);
        return Lanes.STYLES.stream()
                .map(style -> advisor.free(Lanes.player(style), film).orElseThrow())
                .toList();
    }

    private static double mean(List<PlayedLine> lines, ToDoubleFunction<PlayedLine> of) {
        return lines.stream().mapToDouble(of).average().orElseThrow();
    }

    private static String joined(double[] values) {
        return Arrays.stream(values)
                .mapToObj(value -> String.format(Locale.ROOT, "%.1f", value))
                .collect(Collectors.joining(", "));
    }

    private static String format(String format, Object... values) {
        return ValidationRow.format(format, values);
    }

    private void add(String check, String source, String published, String ours, boolean met) {
        add(check, source, published, ours, met, Use.CHECK);
    }

    private void add(String check, String source, String published, String ours, boolean met, Use use) {
        rows.add(new ValidationRow(check, source, published, ours, met, use));
    }
}
