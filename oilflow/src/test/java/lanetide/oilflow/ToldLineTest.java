package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.line.ToldLine;
import lanetide.oilflow.pocket.PinCarry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ToldLineTest {
    private static final OilPattern PATTERN = Lanes.pattern(39);

    private final LineFinder finder = Lanes.finder();
    private final OilFilm film = Lanes.fresh(PATTERN);

    /** A shipped style tells the line that it starts with, and is found again by it. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"stroker", "tweener", "power"})
    void theAxisRotationOfAStyleIsFoundFromALineItPlays(String style) {
        Player player = Lanes.player(style);
        Line own = Lanes.homes(finder, PATTERN).start(player, film).orElseThrow();
        Release release = player.style().release();
        ToldLine told = new ToldLine(own, player.contact(), film);

        double found = told.axisRotation(finder, release.speedMps(), release.spinRadps(), release.axisTiltRad())
                .orElseThrow();

        assertThat(found).isCloseTo(release.axisRotationRad(), within(Math.toRadians(2)));
    }

    @Test
    void aShotOnTheToldLineWithTheFoundAxisMeetsThePocket() {
        Line line = Line.through(12, 10);
        Player player = Lanes.player("tweener");
        Release release = player.style().release();

        double rotationRad = new ToldLine(line, player.contact(), film)
                .axisRotation(finder, release.speedMps(), release.spinRadps(), release.axisTiltRad())
                .orElseThrow();

        PlayingStyle style = new PlayingStyle(
                "told",
                new Release(release.speedMps(), release.spinRadps(), rotationRad, release.axisTiltRad()),
                line.launchRad(),
                "assumption");
        Player found = Lanes.player(style, Lanes.DEFAULT_COVER, Lanes.DEFAULT_SURFACE);
        assertThat(finder.arrivalBoard(found, film, line)).isCloseTo(PinCarry.POCKET_BOARD, within(0.05));
        assertThat(finder.exitBoard(found, film, line, 39 * FOOT_M)).isBetween(2.0, 14.0);
    }

    @Test
    void aLineThatNoAxisBringsToThePocketGivesNone() {
        Player player = Lanes.player("straight");
        ToldLine far = new ToldLine(Line.through(34, 10), player.contact(), film);

        assertThat(far.axisRotation(finder, 9, 10, 0.1)).isEmpty();
    }
}
