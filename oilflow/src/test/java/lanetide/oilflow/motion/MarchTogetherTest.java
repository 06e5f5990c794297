package lanetide.oilflow.motion;

import static org.assertj.core.api.Assertions.assertThat;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.LaneSurvey;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class MarchTogetherTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();

    private final RowMarch alone = new RowMarch(LaneGrid.DEFAULT);
    private final MarchTogether together = new MarchTogether(LaneGrid.DEFAULT);
    private final RandomGenerator random = new Well19937c(7);

    /** On films as they are laid and worn, level and not; some of the balls end in a gutter. */
    @Test
    void everyBallArrivesToTheLastBitAsItDoesAlone() {
        OilFilm level = worn();
        OilFilm shaped = level.on(LaneSurvey.drawn(0.0005, LaneSurvey.LIMIT_M, random::nextGaussian));
        int gutters = 0;
        for (int group = 0; group < 200; group++) {
            gutters += compare(1 + random.nextInt(MarchTogether.BALLS), group % 2 == 0 ? level : shaped);
        }
        assertThat(gutters).isPositive().isLessThan(200);
    }

    private int compare(int balls, OilFilm film) {
        Delivery[] deliveries = new Delivery[balls];
        Hand[] hands = new Hand[balls];
        Contact[] contacts = new Contact[balls];
        together.clear();
        for (int i = 0; i < balls; i++) {
            contacts[i] = contact(random.nextBoolean() ? "urethane" : "medium-reactive");
            hands[i] = random.nextBoolean() ? Hand.RIGHT : Hand.LEFT;
            deliveries[i] = delivery();
            together.add(deliveries[i], hands[i], contacts[i], film, contacts[i].oilInPlayMl());
        }
        together.run();
        int gutters = 0;
        for (int i = 0; i < balls; i++) {
            alone.readInPlay(deliveries[i], hands[i], contacts[i], film);
            gutters += alone.reachedPins() ? 0 : 1;
            assertThat(together.arrivalBoard(i)).isEqualTo(alone.arrivalBoard());
            assertThat(together.entryAngleRad(i)).isEqualTo(alone.entryAngleRad());
            assertThat(together.speedMps(i)).isEqualTo(alone.speedMps());
        }
        return gutters;
    }

    private OilFilm worn() {
        OilFilm film = OilFilm.fresh(OilPattern.of("test", 39 * LaneGeometry.FOOT_M, 26, 3), LaneGrid.DEFAULT);
        Contact contact = contact("medium-reactive");
        for (int i = 0; i < 100; i++) {
            alone.wear(delivery(), Hand.RIGHT, contact, film, new BallOil(contact.ball(), BallOil.NO_TOWEL));
        }
        return film;
    }

    private Delivery delivery() {
        Release release = Release.ofTradeUnits(16 + 4 * random.nextDouble(), 450 * random.nextDouble(), 45, 10);
        double laydownM = LaneGeometry.boardToMetres(4 + 24 * random.nextDouble());
        return Delivery.of(release, 0.1085, laydownM, Math.toRadians(4 * random.nextDouble() - 1));
    }

    private static Contact contact(String cover) {
        return Contact.between(
                BallSpec.of(CATALOGUE.covers().get(cover)), CATALOGUE.surfaces().get("hard-synthetic"));
    }
}
