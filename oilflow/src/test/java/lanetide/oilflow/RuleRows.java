package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Homes;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;

/** How often lines leave the pattern near the length rule's board, with home's preference for it and without. */
final class RuleRows {
    private static final List<String> COVERS = List.of("weak-reactive", "medium-reactive", "strong-reactive");
    private static final List<String> SURFACES =
            List.of("hard-synthetic", "textured-synthetic", "worn-synthetic", "wood");

    private final LineFinder finder = Lanes.finder();
    private int near;
    private int all;

    private RuleRows() {}

    static List<ValidationRow> rows() {
        return List.of(
                new RuleRows().row("with home's preference for it", false, Use.BY_CONSTRUCTION),
                new RuleRows().row("without any preference for it", true, Use.FITTED));
    }

    private ValidationRow row(String how, boolean unruled, Use use) {
        for (double feet : new double[] {36, 39, 42, 45}) {
            for (double ratio : new double[] {1.5, 2.5, 3, 4, 5}) {
                OilPattern known = Lanes.pattern(feet, 25, ratio);
                HomeLines homes = unruled
                        ? Homes.withoutTheLengthRule(finder, known, Lanes::knownBalls)
                        : Lanes.homes(finder, known);
                for (double volumeMl : new double[] {20, 25, 30}) {
                    count(homes, Lanes.fresh(Lanes.pattern(feet, volumeMl, ratio)), feet);
                }
            }
        }
        double percent = 100.0 * near / all;
        return new ValidationRow(
                "Exits within four boards of the length rule, 36 to 45 ft, 1.5 to 5:1, 20 to 30 mL, four styles and surfaces,"
                        + " reactive balls, " + how,
                "length less 31 (USBC technique page, US Bowler, July 2011); the share is our own demand",
                "at least 97 %",
                ValidationRow.format("%.1f %% of %d", percent, all),
                percent >= 97,
                use);
    }

    private void count(HomeLines homes, OilFilm film, double feet) {
        for (Player player : players()) {
            all++;
            homes.start(player, film)
                    .map(line -> finder.exitBoard(player, film, line, feet * FOOT_M))
                    .filter(exit -> Math.abs(exit - (feet - 31)) <= 4)
                    .ifPresent(exit -> near++);
        }
    }

    private static List<Player> players() {
        List<Player> players = new ArrayList<>();
        for (String style : Lanes.STYLES) {
            for (String surface : SURFACES) {
                COVERS.forEach(cover -> players.add(Lanes.player(style, cover, surface)));
            }
        }
        return players;
    }
}
