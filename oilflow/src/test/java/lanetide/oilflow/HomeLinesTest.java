package lanetide.oilflow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Homes;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HomeLinesTest {
    /** Short and long, flat and steep, with a ball that hooks little and one that hooks much. */
    @ParameterizedTest
    @CsvSource({
        "33, 1.5, plastic",
        "36, 8, strong-reactive",
        "39, 3, medium-reactive",
        "42, 2, urethane",
        "45, 1.5, weak-reactive",
        "46, 5, strong-reactive"
    })
    void aHomeLineIsTheOneThatALookAtAllLinesFinds(double feet, double ratio, String cover) {
        OilPattern pattern = Lanes.pattern(feet, HomeLines.KNOWN_ML, ratio);
        LineFinder finder = Lanes.finder();
        for (String style : Lanes.STYLES) {
            Player player = Lanes.player(style, cover, Lanes.DEFAULT_SURFACE);
            HomeLines homes = new HomeLines(finder, pattern, any -> List.of(player.contact()));
            Optional<Line> expected = Homes.ofAllLines(finder, pattern, player.style(), player.contact());
            assertEquals(expected, homes.home(player), style);
        }
    }
}
