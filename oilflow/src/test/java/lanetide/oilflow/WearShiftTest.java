package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.Stretch;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.line.WearShift;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WearShiftTest {
    private static final double END_M = 40 * FOOT_M;

    private final LineFinder finder = Lanes.finder();
    private final OilPattern pattern = Lanes.pattern(40);
    private final OilFilm laid = Lanes.fresh(pattern);
    private final Player player = Lanes.player("tweener");
    private final Line line = Lanes.start(player, pattern);
    private final OilFilm worn = new Block(List.of(player, Lanes.player("power")), pattern, 1).play(8).film;

    @Test
    void aLaneAsItWasLaidShiftsNothing() {
        assertThat(shift(laid)).isEqualTo(new WearShift(0, 0, 0, 0));
    }

    /** Wear of one stretch alone is all due to it, and nothing is left over. */
    @ParameterizedTest
    @EnumSource(Stretch.class)
    void wearOfOneStretchIsDueToThatStretchAlone(Stretch stretch) {
        // The worn stretch on a fresh lane: the fresh lane's other stretches are "worn" into it.
        WearShift shift = shift(stretch.madeFresh(laid, worn, END_M));

        assertThat(shift.allBoards()).isNotZero();
        assertThat(part(shift, stretch)).isEqualTo(shift.allBoards());
        assertThat(shift.togetherBoards()).isZero();
    }

    @Test
    void theStretchesMakeTheWholeLane() {
        OilFilm film = worn;
        for (Stretch stretch : Stretch.values()) {
            film = stretch.madeFresh(film, laid, END_M);
        }
        assertThat(film.cellsUm()).isEqualTo(laid.cellsUm());
        assertThat(worn.cellsUm()).isNotEqualTo(laid.cellsUm());
    }

    /**
     * Thin heads turn a ball early and send it high; what is carried past the end lets it slide, and it comes in light.
     */
    @Test
    void dryInFrontSendsTheBallHighAndWetBehindSendsItLight() {
        WearShift shift = shift(worn);

        assertThat(shift.headsBoards()).isPositive();
        assertThat(shift.midLaneBoards()).isPositive();
        assertThat(shift.pastEndBoards()).isNegative();
        assertThat(shift.headsBoards() + shift.midLaneBoards() + shift.pastEndBoards() + shift.togetherBoards())
                .isCloseTo(shift.allBoards(), within(1e-12));
    }

    @Test
    void aLeftHanderOnTheSameOilHasTheSameShiftMirrored() {
        Player left = new Player(player.style(), player.spread(), Hand.LEFT, player.contact());
        OilFilm even = Lanes.fresh(Lanes.pattern(40, 18, 3));

        assertThat(WearShift.of(finder, left, line, even, laid, END_M)).isEqualTo(shift(even));
    }

    @Test
    void roundedPartsStillMakeTheRoundedWhole() {
        WearShift mean = WearShift.mean(List.of(shift(worn), new WearShift(0.26, 0.14, 0.14, -0.14)));
        WearShift told = mean.inTenths();

        assertThat(mean.allBoards()).isCloseTo((shift(worn).allBoards() + 0.26) / 2, within(1e-12));
        assertThat(told.allBoards()).isCloseTo(mean.allBoards(), within(0.05));
        assertThat(told.headsBoards() + told.midLaneBoards() + told.pastEndBoards() + told.togetherBoards())
                .isCloseTo(told.allBoards(), within(1e-12));
        assertThat(10 * told.togetherBoards()).isCloseTo(Math.rint(10 * told.togetherBoards()), within(1e-9));
        assertThatThrownBy(() -> WearShift.mean(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    private WearShift shift(OilFilm film) {
        return WearShift.of(finder, player, line, film, laid, END_M);
    }

    private static double part(WearShift shift, Stretch stretch) {
        return switch (stretch) {
            case HEADS -> shift.headsBoards();
            case MID_LANE -> shift.midLaneBoards();
            case PAST_END -> shift.pastEndBoards();
        };
    }
}
