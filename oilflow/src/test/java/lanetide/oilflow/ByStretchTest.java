package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.film.ByStretch;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.Stretch;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ByStretchTest {
    private static final double END_M = 40 * FOOT_M;

    private final LineFinder finder = Lanes.finder();
    private final OilPattern pattern = Lanes.pattern(40);
    private final OilFilm laid = Lanes.fresh(pattern);
    private final Player player = Lanes.player("tweener");
    private final Line line = Lanes.start(player, pattern);
    private final OilFilm worn = new Block(List.of(player, Lanes.player("power")), pattern, 1).play(8).film;

    @Test
    void aLaneAsItWasLaidShiftsNothing() {
        assertThat(shift(laid)).isEqualTo(new ByStretch(0, 0, 0, 0));
    }

    /** Wear of one stretch alone is all due to it, and nothing is left over. */
    @ParameterizedTest
    @EnumSource(Stretch.class)
    void wearOfOneStretchIsDueToThatStretchAlone(Stretch stretch) {
        // The worn stretch on a fresh lane: the fresh lane's other stretches are "worn" into it.
        ByStretch shift = shift(stretch.madeFresh(laid, worn, END_M));

        assertThat(shift.all()).isNotZero();
        assertThat(part(shift, stretch)).isEqualTo(shift.all());
        assertThat(shift.together()).isZero();
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
        ByStretch shift = shift(worn);

        assertThat(shift.heads()).isPositive();
        assertThat(shift.midLane()).isPositive();
        assertThat(shift.pastEnd()).isNegative();
        assertThat(shift.heads() + shift.midLane() + shift.pastEnd() + shift.together())
                .isCloseTo(shift.all(), within(1e-12));
    }

    @Test
    void aLeftHanderOnTheSameOilHasTheSameShiftMirrored() {
        Player left = new Player(player.style(), player.spread(), Hand.LEFT, player.contact());
        OilFilm even = Lanes.fresh(Lanes.pattern(40, 18, 3));

        assertThat(ByStretch.of(film -> finder.arrivalBoard(left, film, line), even, laid, END_M))
                .isEqualTo(shift(even));
    }

    @Test
    void roundedPartsStillMakeTheRoundedWhole() {
        ByStretch mean = ByStretch.mean(List.of(shift(worn), new ByStretch(0.26, 0.14, 0.14, -0.14)));
        ByStretch told = mean.inTenths();

        assertThat(mean.all()).isCloseTo((shift(worn).all() + 0.26) / 2, within(1e-12));
        assertThat(told.all()).isCloseTo(mean.all(), within(0.05));
        assertThat(told.heads() + told.midLane() + told.pastEnd() + told.together())
                .isCloseTo(told.all(), within(1e-12));
        assertThat(10 * told.together()).isCloseTo(Math.rint(10 * told.together()), within(1e-9));
        assertThatThrownBy(() -> ByStretch.mean(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    private ByStretch shift(OilFilm film) {
        return ByStretch.of(worn -> finder.arrivalBoard(player, worn, line), film, laid, END_M);
    }

    private static double part(ByStretch shift, Stretch stretch) {
        return switch (stretch) {
            case HEADS -> shift.heads();
            case MID_LANE -> shift.midLane();
            case PAST_END -> shift.pastEnd();
        };
    }
}
