package lanetide.oilflow.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanetide.oilflow.ball.BallCore;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.friction.FrictionValues;
import lanetide.oilflow.friction.MixedLubrication;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.Topography;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Random shots of {@link RowMarch} beside those of {@link AdaptivePath}: styles, covers, surfaces, cores, hands,
 * speeds, rev rates, laydowns and angles, on fresh patterns and on worn ones. The march also runs over the same film
 * with its rows cut up, which changes nothing but how often it looks at the film.
 */
public final class RefereeMatch {
    /** Shots on each kind of film; on both together more than a thousand reach the pins. */
    public static final int SHOTS = 760;

    /** Rows in a foot that the march is run with. */
    public static final List<Integer> ROWS_PER_FOOT = List.of(1, 2, 4, 8);

    private static final int SHOTS_A_FILM = 20;
    private static final Catalogue CATALOGUE = Catalogue.shipped();

    private final List<Difference> differences = new ArrayList<>();
    private final List<RowMarch> marches = new ArrayList<>();

    private final Kind kind;

    /** What the shots run on. */
    private enum Kind {
        FRESH,
        WORN,
        SHAPED
    }

    private RefereeMatch(Kind kind) {
        this.kind = kind;
        for (int rows : ROWS_PER_FOOT) {
            differences.add(new Difference());
            marches.add(new RowMarch(grid(rows)));
        }
    }

    /**
     * Plays the shots on fresh patterns.
     *
     * @return a difference for each of {@link #ROWS_PER_FOOT}
     */
    public static List<Difference> onFreshFilms() {
        return play(Kind.FRESH, 1_001);
    }

    /**
     * Plays the shots on patterns that 60 to 300 balls have run over.
     *
     * @return a difference for each of {@link #ROWS_PER_FOOT}
     */
    public static List<Difference> onWornFilms() {
        return play(Kind.WORN, 2_001);
    }

    /**
     * Plays the shots on fresh patterns, each on a lane of its own shape.
     *
     * @return a difference for each of {@link #ROWS_PER_FOOT}
     */
    public static List<Difference> onShapedLanes() {
        return play(Kind.SHAPED, 3_001);
    }

    /** The first film and its shots have the first seed, the others the seeds after it. */
    private static List<Difference> play(Kind kind, long firstSeed) {
        RefereeMatch match = new RefereeMatch(kind);
        for (int film = 0; film < SHOTS / SHOTS_A_FILM; film++) {
            match.playFilm(firstSeed + film);
        }
        return match.differences;
    }

    private void playFilm(long seed) {
        RandomGenerator random = new Well19937c(seed);
        OilFilm film = film(kind == Kind.WORN, random).on(shape(random));
        List<OilFilm> cut = ROWS_PER_FOOT.stream().map(rows -> cut(film, rows)).toList();
        for (int shot = 0; shot < SHOTS_A_FILM; shot++) {
            Coverstock cover = any(List.copyOf(CATALOGUE.covers().values()), random);
            LaneSurface surface = any(List.copyOf(CATALOGUE.surfaces().values()), random);
            double gyrationM = (2.46 + 0.34 * random.nextDouble()) * 0.0254;
            BallSpec ball = new BallSpec(cover, BallCore.DEFAULT.radiusM(), gyrationM);
            Contact contact =
                    new Contact(ball, MixedLubrication.between(surface, cover, FrictionValues.USUAL), FilmSplit.NONE);
            Hand hand = random.nextBoolean() ? Hand.RIGHT : Hand.LEFT;
            Delivery delivery = delivery(random);
            AdaptivePath referee = AdaptivePath.of(delivery, hand, ball.inertiaRatio(), contact.friction(), film);
            for (int i = 0; i < marches.size(); i++) {
                marches.get(i).read(delivery, hand, contact, cut.get(i));
                differences.get(i).add(marches.get(i), referee, "seed " + seed + ", shot " + shot);
            }
        }
    }

    private Topography shape(RandomGenerator random) {
        return kind == Kind.SHAPED
                ? LaneSurvey.drawn(LaneSurvey.LIMIT_M, LaneSurvey.LIMIT_M, random::nextGaussian)
                : Topography.FLAT;
    }

    private static OilFilm film(boolean worn, RandomGenerator random) {
        OilPattern pattern = OilPattern.of(
                "any",
                (35 + 8 * random.nextDouble()) * LaneGeometry.FOOT_M,
                18 + 12 * random.nextDouble(),
                1 + 3 * random.nextDouble());
        OilFilm film = OilFilm.fresh(pattern, grid(1));
        RowMarch march = new RowMarch(grid(1));
        int balls = worn ? 60 + random.nextInt(241) : 0;
        for (int i = 0; i < balls; i++) {
            Coverstock cover = any(List.copyOf(CATALOGUE.covers().values()), random);
            Contact contact =
                    Contact.between(BallSpec.of(cover), CATALOGUE.surfaces().get("hard-synthetic"));
            Hand hand = random.nextInt(5) == 0 ? Hand.LEFT : Hand.RIGHT;
            march.wear(delivery(random), hand, contact, film, new BallOil(BallSpec.of(cover), BallOil.NO_TOWEL));
        }
        return film;
    }

    private static Delivery delivery(RandomGenerator random) {
        PlayingStyle style = any(List.copyOf(CATALOGUE.styles().values()), random);
        Release release = style.release().scaled(0.9 + 0.2 * random.nextDouble(), 0.8 + 0.4 * random.nextDouble());
        double laydownM = LaneGeometry.boardToMetres(10 + 18 * random.nextDouble());
        double launchRad = Math.toRadians(4 * random.nextDouble() - 1);
        return Delivery.of(release, BallCore.DEFAULT.radiusM(), laydownM, launchRad);
    }

    /** The same film with every row cut into several of equal thickness. */
    private static OilFilm cut(OilFilm film, int rowsPerFoot) {
        OilFilm cut = OilFilm.bare(grid(rowsPerFoot), film.topography());
        int rows = cut.grid().rows();
        for (int column = 0; column < cut.grid().columns(); column++) {
            for (int row = 0; row < rows; row++) {
                cut.cellsUm()[column * rows + row] = film.thicknessUm(column, row / rowsPerFoot);
            }
        }
        return cut;
    }

    private static LaneGrid grid(int rowsPerFoot) {
        return new LaneGrid(LaneGrid.DEFAULT.columnsPerBoard(), rowsPerFoot);
    }

    private static <T> T any(List<T> values, RandomGenerator random) {
        return values.get(random.nextInt(values.size()));
    }

    /** How far the march and the referee are apart over many shots. */
    public static final class Difference {
        private int pinShots;
        private int gutterShotsOfOneOnly;
        private double worstBoards;
        private double worstDeg;
        private double sumBoards;
        private double squareBoards;
        private String worstShot = "none";

        void add(RowMarch march, AdaptivePath referee, String shot) {
            if (march.reachedPins() != referee.reachedPins()) {
                gutterShotsOfOneOnly++;
            } else if (referee.reachedPins()) {
                double boards = march.arrivalBoard() - referee.arrivalBoard();
                double deg = Math.toDegrees(march.entryAngleRad() - referee.directionRad());
                worstShot = Math.abs(boards) > worstBoards ? shot : worstShot;
                worstBoards = Math.max(worstBoards, Math.abs(boards));
                worstDeg = Math.max(worstDeg, Math.abs(deg));
                sumBoards += boards;
                squareBoards += boards * boards;
                pinShots++;
            }
        }

        /**
         * Shots that both brought to the pins.
         *
         * @return their number
         */
        public int pinShots() {
            return pinShots;
        }

        /**
         * Shots that one brought to the pins and the other into a gutter.
         *
         * @return their number
         */
        public int gutterShotsOfOneOnly() {
            return gutterShotsOfOneOnly;
        }

        /**
         * Largest difference where the ball meets the pins.
         *
         * @return boards
         */
        public double worstBoards() {
            return worstBoards;
        }

        /**
         * Largest difference of the direction at the pins.
         *
         * @return degrees
         */
        public double worstDeg() {
            return worstDeg;
        }

        /**
         * Mean difference where the ball meets the pins.
         *
         * @return boards, positive where the march lands further in
         */
        public double meanBoards() {
            return sumBoards / pinShots;
        }

        /**
         * Root mean square of the difference where the ball meets the pins.
         *
         * @return boards
         */
        public double rmsBoards() {
            return Math.sqrt(squareBoards / pinShots);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d shots: worst %.4f boards (%s), worst %.4f degrees, mean %.4f, rms %.4f boards, %d gutters of one only",
                    pinShots,
                    worstBoards,
                    worstShot,
                    worstDeg,
                    meanBoards(),
                    rmsBoards(),
                    gutterShotsOfOneOnly);
        }
    }
}
