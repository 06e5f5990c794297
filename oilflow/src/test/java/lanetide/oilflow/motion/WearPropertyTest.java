package lanetide.oilflow.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.WalkerFetskoSplit;
import lanetide.oilflow.friction.FrictionValues;
import lanetide.oilflow.friction.MixedLubrication;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.LaneSurface;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for any shots on any film; each seed is printed when it fails. */
class WearPropertyTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();
    private static final LaneSurface SURFACE = CATALOGUE.surfaces().get("hard-synthetic");
    private static final LaneGrid GRID = LaneGrid.DEFAULT;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {101, 102, 103, 104, 105, 106, 107, 108, 109, 110})
    void theOilAccountClosesAfterAnyShotsOilingsStripsAndRests(long seed) {
        RandomGenerator random = new Well19937c(seed);
        LaneGrid grid = new LaneGrid(2 + random.nextInt(12), 1 + random.nextInt(2));
        RowMarch march = new RowMarch(grid);
        OilFilm film = OilFilm.bare(grid);
        List<BallOil> oils = new ArrayList<>();
        double appliedMl = 0;
        double strippedMl = 0;
        for (int step = 0; step < 400; step++) {
            double what = random.nextDouble();
            if (what < 0.02 || step == 0) {
                appliedMl += film.lay(pattern(random));
            } else if (what < 0.03) {
                strippedMl += film.strip();
            } else {
                Coverstock cover = anyCover(random);
                BallOil oil = new BallOil(BallSpec.of(cover), random.nextDouble());
                oils.add(oil);
                for (int shot = 0; shot < 5; shot++) {
                    march.wear(anyDelivery(random), anyHand(random), contact(cover), film, oil);
                    oil.rest(300 * random.nextDouble());
                    assertThat(oil.onBallMl())
                            .as("oil on a ball, seed %d, step %d", seed, step)
                            .isNotNegative();
                }
                if (step % 20 == 0) {
                    assertNowhereNegative(film, "seed " + seed + ", step " + step);
                }
            }
        }
        OilAccount account = new OilAccount(appliedMl, film.volumeMl(), 0, 0, 0, strippedMl);
        for (BallOil oil : oils) {
            account = account.plus(oil.account());
        }
        assertThat(account.relativeError()).as("account, seed %d", seed).isLessThan(1e-9);
    }

    @Test
    void aHundredThousandShotsLoseNoOil() {
        RandomGenerator random = new Well19937c(7);
        RowMarch march = new RowMarch(GRID);
        OilPattern pattern = OilPattern.of("long day", 40 * LaneGeometry.FOOT_M, 25, 3);
        OilFilm film = OilFilm.bare(GRID);
        List<Coverstock> covers = List.copyOf(CATALOGUE.covers().values());
        List<BallOil> oils = new ArrayList<>();
        List<Contact> contacts = new ArrayList<>();
        for (Coverstock cover : covers) {
            oils.add(new BallOil(BallSpec.of(cover), BallOil.DEFAULT_TOWEL_SHARE));
            contacts.add(contact(cover));
        }
        double appliedMl = 0;
        double strippedMl = 0;
        for (int shot = 0; shot < 100_000; shot++) {
            if (shot % 250 == 0) {
                strippedMl += film.strip();
                appliedMl += film.lay(pattern);
            }
            int ball = shot % covers.size();
            march.wear(anyDelivery(random), Hand.RIGHT, contacts.get(ball), film, oils.get(ball));
            oils.get(ball).rest(90);
        }
        OilAccount account = new OilAccount(appliedMl, film.volumeMl(), 0, 0, 0, strippedMl);
        for (BallOil oil : oils) {
            account = account.plus(oil.account());
        }
        assertNowhereNegative(film, "seed 7");
        assertThat(account.relativeError()).isLessThan(1e-9);
    }

    /**
     * The hardest case for "a ball lays no more than it has": a wet ball that turns as often as a ball can on a dry
     * lane.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void aBallNeverLaysMoreOilThanItBrought(long seed) {
        RandomGenerator random = new Well19937c(seed);
        RowMarch march = new RowMarch(GRID);
        for (int i = 0; i < 200; i++) {
            double overlap = random.nextDouble();
            Coverstock cover = new Coverstock("any", 0.3 + random.nextDouble(), 0.2, overlap, 1e9, "test");
            BallOil oil = new BallOil(BallSpec.of(cover), BallOil.NO_TOWEL);
            oil.add(0.2 + 3 * random.nextDouble());
            double speed = 4 + 4 * random.nextDouble();
            double spin = Math.min(75, speed / 0.1085 * (1 + random.nextDouble()));
            Delivery delivery = Delivery.of(new Release(speed, spin, 0, 0), 0.1085, LaneGeometry.WIDTH_M / 2, 0);
            OilFilm film = OilFilm.bare(GRID);
            double beforeMl = oil.onBallMl();
            march.wear(delivery, Hand.RIGHT, contact(cover), film, oil);
            assertThat(oil.onBallMl())
                    .as(
                            "oil left of %s mL, overlap %s, %s m/s, %s rad/s, seed %d",
                            beforeMl, overlap, speed, spin, seed)
                    .isNotNegative();
            assertThat(film.volumeMl() + oil.onBallMl()).isCloseTo(beforeMl, within(1e-12));
            assertNowhereNegative(film, "seed " + seed);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {71, 72, 73})
    void coversWithOpenPoresKeepTheAccountToo(long seed) {
        RandomGenerator random = new Well19937c(seed);
        RowMarch march = new RowMarch(GRID);
        OilFilm film = OilFilm.bare(GRID);
        double appliedMl = film.lay(pattern(random));
        OilAccount balls = OilAccount.EMPTY;
        for (int i = 0; i < 60; i++) {
            WalkerFetskoSplit split =
                    new WalkerFetskoSplit(0.1 + 5 * random.nextDouble(), 2 * random.nextDouble(), random.nextDouble());
            Coverstock cover = anyCover(random);
            Contact contact = new Contact(
                    BallSpec.of(cover), MixedLubrication.between(SURFACE, cover, FrictionValues.USUAL), split);
            BallOil oil = new BallOil(BallSpec.of(cover), random.nextDouble());
            for (int shot = 0; shot < 5; shot++) {
                march.wear(anyDelivery(random), anyHand(random), contact, film, oil);
                assertThat(oil.onBallMl())
                        .as("oil on a ball, %s, seed %d", split, seed)
                        .isNotNegative();
                oil.rest(120);
            }
            balls = balls.plus(oil.account());
        }
        assertNowhereNegative(film, "seed " + seed);
        OilAccount account = new OilAccount(appliedMl, film.volumeMl(), 0, 0, 0, 0).plus(balls);
        assertThat(account.relativeError()).as("account, seed %d", seed).isLessThan(1e-9);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {31, 32, 33, 34, 35})
    void aLeftHanderOnTheMirroredLaneThrowsTheMirrorImageToTheLastBit(long seed) {
        RandomGenerator random = new Well19937c(seed);
        OilFilm film = wornFilm(random);
        OilFilm mirrored = mirrored(film);
        RowMarch march = new RowMarch(GRID);
        RowMarch other = new RowMarch(GRID);
        for (int i = 0; i < 50; i++) {
            Coverstock cover = anyCover(random);
            BallOil oil = new BallOil(BallSpec.of(cover), 0.5);
            BallOil otherOil = new BallOil(BallSpec.of(cover), 0.5);
            oil.add(0.05);
            otherOil.add(0.05);
            Delivery delivery = anyDelivery(random);
            march.wear(delivery, Hand.RIGHT, contact(cover), film, oil);
            other.wear(delivery, Hand.LEFT, contact(cover), mirrored, otherOil);
            assertThat(other.path(12)).as("path, seed %d, shot %d", seed, i).isEqualTo(march.path(12));
            assertThat(otherOil.onBallMl()).as("oil, seed %d, shot %d", seed, i).isEqualTo(oil.onBallMl());
        }
        assertThat(mirrored(mirrored).cellsUm()).as("film, seed %d", seed).isEqualTo(film.cellsUm());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {41, 42, 43})
    void aCleanBallThatWearsTheFilmTakesThePathOfOneThatOnlyReadsIt(long seed) {
        RandomGenerator random = new Well19937c(seed);
        OilFilm film = wornFilm(random);
        RowMarch march = new RowMarch(GRID);
        for (int i = 0; i < 50; i++) {
            Coverstock cover = anyCover(random);
            Delivery delivery = anyDelivery(random);
            Hand hand = anyHand(random);
            double[] before = film.cellsUm().clone();
            march.read(delivery, hand, contact(cover), film);
            BallPath read = march.path(12);
            assertThat(film.cellsUm()).as("film after reading, seed %d", seed).isEqualTo(before);
            march.wear(delivery, hand, contact(cover), film, new BallOil(BallSpec.of(cover), BallOil.NO_TOWEL));
            assertThat(march.path(12)).as("path, seed %d, shot %d", seed, i).isEqualTo(read);
        }
    }

    @Test
    void aLaneThatNobodyUsedStaysFresh() {
        OilPattern pattern = OilPattern.of("any", 12, 25, 3);
        OilFilm unused = OilFilm.fresh(pattern, GRID);
        OilFilm used = OilFilm.fresh(pattern, GRID);
        RowMarch march = new RowMarch(GRID);
        RandomGenerator random = new Well19937c(51);
        Coverstock cover = CATALOGUE.covers().get("urethane");
        BallOil oil = new BallOil(BallSpec.of(cover), 0.5);
        for (int i = 0; i < 200; i++) {
            march.wear(anyDelivery(random), Hand.RIGHT, contact(cover), used, oil);
        }
        assertThat(unused.cellsUm()).isEqualTo(OilFilm.fresh(pattern, GRID).cellsUm());
        assertThat(used.volumeMl()).isLessThan(unused.volumeMl());
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Hand.class)
    void aDryBallOnABareLaneLeavesItBare(Hand hand) {
        RandomGenerator random = new Well19937c(61);
        OilFilm film = OilFilm.bare(GRID);
        RowMarch march = new RowMarch(GRID);
        for (Coverstock cover : CATALOGUE.covers().values()) {
            BallOil oil = new BallOil(BallSpec.of(cover), BallOil.NO_TOWEL);
            march.wear(anyDelivery(random), hand, contact(cover), film, oil);
            assertThat(oil.onBallMl()).isZero();
        }
        assertThat(film.cellsUm()).containsOnly(0.0);
    }

    private static OilFilm wornFilm(RandomGenerator random) {
        OilFilm film = OilFilm.fresh(pattern(random), GRID);
        RowMarch march = new RowMarch(GRID);
        for (int i = 0; i < 100; i++) {
            Coverstock cover = anyCover(random);
            march.wear(
                    anyDelivery(random),
                    anyHand(random),
                    contact(cover),
                    film,
                    new BallOil(BallSpec.of(cover), BallOil.NO_TOWEL));
        }
        return film;
    }

    private static OilFilm mirrored(OilFilm film) {
        OilFilm image = film.copy();
        int rows = GRID.rows();
        for (int column = 0; column < GRID.columns(); column++) {
            int from = (GRID.columns() - 1 - column) * rows;
            System.arraycopy(film.cellsUm(), from, image.cellsUm(), column * rows, rows);
        }
        return image;
    }

    private static OilPattern pattern(RandomGenerator random) {
        return OilPattern.of(
                "any",
                (33 + 12 * random.nextDouble()) * LaneGeometry.FOOT_M,
                15 + 15 * random.nextDouble(),
                1 + 3 * random.nextDouble());
    }

    /** From no spin at all to full roll, and from the inside of the lane into either gutter. */
    private static Delivery anyDelivery(RandomGenerator random) {
        Release release = Release.ofTradeUnits(
                12 + 10 * random.nextDouble(),
                random.nextInt(10) == 0 ? 0 : 600 * random.nextDouble(),
                90 * random.nextDouble(),
                20 * random.nextDouble());
        double laydownM = LaneGeometry.boardToMetres(3 + 34 * random.nextDouble());
        return Delivery.of(release, 0.1085, laydownM, Math.toRadians(5 * random.nextDouble() - 1.5));
    }

    private static Coverstock anyCover(RandomGenerator random) {
        List<Coverstock> covers = List.copyOf(CATALOGUE.covers().values());
        return covers.get(random.nextInt(covers.size()));
    }

    private static Hand anyHand(RandomGenerator random) {
        return random.nextBoolean() ? Hand.RIGHT : Hand.LEFT;
    }

    private static Contact contact(Coverstock cover) {
        return Contact.between(BallSpec.of(cover), SURFACE);
    }

    private static void assertNowhereNegative(OilFilm film, String where) {
        double least = 0;
        for (double um : film.cellsUm()) {
            least = Math.min(least, um);
        }
        assertThat(least).as("thinnest film, %s", where).isZero();
    }
}
