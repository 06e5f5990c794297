package lanetide.squads.unknown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.LineQuality;
import lanetide.oilflow.line.LineSearch;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.BallPath;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.ValueSet;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/**
 * The facts by which sets of values of the oil model are judged, and what the model says of each. They are those of the
 * oil model's validation table that are marked fitted, with their sources there; the last few are held out.
 */
final class OilFacts {
    private static final double FOOT_M = LaneGeometry.FOOT_M;
    private static final double MPH_MPS = 0.44704;
    private static final double UNIT_UM = OilFilm.UNIT_UM;
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    private static final int[] LENGTHS_FT = {33, 36, 39, 42, 45};
    private static final int BLOCKS = 4;
    private static final int BALLS_A_GAME = 12;
    private static final double BETWEEN_SHOTS_S = 120;
    private static final ReleaseSpread GOOD =
            new ReleaseSpread(0.5 * LaneGeometry.BOARD_M, Math.toRadians(0.17), 0.012, 0.03);
    private static final ReleaseSpread ELITE = new ReleaseSpread(
            0.65 / Math.sqrt(2) * LaneGeometry.BOARD_M,
            0.65 / Math.sqrt(2) * LaneGeometry.BOARD_M / LaneGeometry.ARROWS_M,
            0.015,
            0.04);

    /** All facts; what is said of each by {@link #of} stands in the same order. */
    static final List<Fact> FACTS = facts();

    private final OilModel model;
    private final LineFinder finder;
    private final RowMarch march = new RowMarch(LaneGrid.DEFAULT);
    private final Map<String, Double> said = new HashMap<>();

    private OilFacts(OilModel model) {
        this.model = model;
        this.finder = new LineFinder(march, model.carry());
    }

    private static List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        for (int feet : LENGTHS_FT) {
            facts.add(new Fact("exit at " + feet + " ft", feet - 31, 2, 0, 1, 0, false));
        }
        facts.add(new Fact("head film", 95, 25, 0, 5, 0, false));
        facts.add(new Fact("entry angle, style furthest off", 5, 1, 0, 0.5, 0, false));
        facts.add(new Fact("speed lost, style furthest off", 2.75, 0.75, 0, 0.25, 0, false));
        facts.add(new Fact("feet to textured", 2.5, 0.5, 0, 0.5, 0, false));
        facts.add(new Fact("least step of laydown by revs, 3:1", 0, 1, 0, 1, -1, false));
        facts.add(new Fact("least step of laydown by revs, 5:1", 0, 1, 0, 1, -1, false));
        facts.add(new Fact("exits at 5:1, style furthest off", 8.5, 3.5, 0, 1, 0, false));
        facts.add(new Fact("low end of windows at 5:1", 7, 1, 0, 1, 1, false));
        facts.add(new Fact("high end of windows at 5:1", 11, 1, 0, 1, -1, false));
        for (String cover : List.of("weak", "medium")) {
            facts.add(new Fact("house exits, " + cover + ", style furthest off", 9, 2, 0, 1, 0, false));
            facts.add(new Fact("house step of laydown, " + cover, 0, 1, 0, 1, -1, false));
            facts.add(new Fact("house pocket, " + cover, 80, 5, 1, 5, 0, false));
            facts.add(new Fact("house least pocket, " + cover, 60, 5, 1, 5, -1, false));
            facts.add(new Fact("house narrowest window, " + cover, 0.5, 0.5, 0, 0.5, -1, false));
        }
        facts.add(new Fact("heads left after 12 games", 50, 15, 1, 5, 0, false));
        facts.add(new Fact("heads lost more than mid-lane", 0, 2, 1, 2, -1, false));
        facts.add(new Fact("urethane past the end over reactive, at most", 50, 20, 5, 20, 1, false));
        facts.add(new Fact("urethane removal before 16 ft", 100, 20, 2, 10, 0, false));
        facts.add(new Fact("urethane mid-lane change, at most", 10, 5, 1, 5, 1, false));
        facts.add(new Fact("plastic past the end over reactive, at most", 50, 20, 5, 20, 1, false));
        facts.add(new Fact("plastic removal before 16 ft", 100, 20, 2, 10, 0, false));
        facts.add(new Fact("pocket at 220 rpm", 50, 7, 1, 5, 0, false));
        facts.add(new Fact("spread at 220 rpm", 1.45, 0.145, 0.02, 0.1, 0, false));
        facts.add(new Fact("heads left after 15 games", 50, 15, 1, 5, 0, true));
        facts.add(new Fact("pocket at 325 rpm", 55, 7, 1, 5, 0, true));
        facts.add(new Fact("spread at 325 rpm", 1.59, 0.159, 0.02, 0.1, 0, true));
        facts.add(new Fact("friction under 20 units", 0.035, 0.015, 0, 0.005, 0, true));
        facts.add(new Fact("friction gained by a halved head", 0.0085, 0.0043, 0, 0.001, 0, true));
        facts.add(new Fact("roll begins (ft)", 42.5, 8, 0, 2, 0, true));
        return List.copyOf(facts);
    }

    /** What the usual laws say of the facts under some values; NaN where no line meets the pocket. */
    static double[] of(ValueSet set) {
        return of(FrictionModel.MIXED_LUBRICATION, set);
    }

    /** What the model says of the facts under some values. */
    static double[] of(FrictionModel friction, ValueSet set) {
        OilFacts facts = new OilFacts(new OilModel(friction, SplitModel.FORWARD_ROLL, set));
        try {
            facts.lengths();
            facts.free();
            facts.house();
            facts.blocks();
            facts.bands();
            facts.heldOut();
        } catch (NoLine none) {
            // What has not been said stays unknown, and counts as contradicted.
        }
        return FACTS.stream()
                .mapToDouble(fact -> facts.said.getOrDefault(fact.id(), Double.NaN))
                .toArray();
    }

    /** No line meets the pocket. */
    private static final class NoLine extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private Player player(String style, String cover, String surface, ReleaseSpread spread) {
        Catalogue catalogue = model.catalogue();
        Contact contact = model.contact(
                catalogue.covers().get(cover), catalogue.surfaces().get(surface));
        return new Player(catalogue.styles().get(style), spread, Hand.RIGHT, contact);
    }

    private List<Player> field(String cover, String surface, ReleaseSpread spread) {
        return STYLES.stream()
                .map(style -> player(style, cover, surface, spread))
                .toList();
    }

    private OilPattern pattern(double feet, double volumeMl, double ratio) {
        return model.laid(OilPattern.of("test", feet * FOOT_M, volumeMl, ratio));
    }

    private static OilFilm fresh(OilPattern pattern) {
        return OilFilm.fresh(pattern, LaneGrid.DEFAULT);
    }

    private List<Line> starts(List<Player> players, OilPattern pattern) {
        OilFilm film = fresh(pattern);
        HomeLines homes = new HomeLines(
                finder,
                pattern,
                own -> model.catalogue().knownCovers(own).stream()
                        .map(cover -> model.contact(
                                cover, model.catalogue().surfaces().get(Catalogue.REFERENCE_SURFACE)))
                        .toList());
        return players.stream()
                .map(player -> homes.start(player, film).orElseThrow(NoLine::new))
                .toList();
    }

    private double[] exits(List<Player> players, List<Line> lines, OilPattern pattern) {
        OilFilm film = fresh(pattern);
        return IntStream.range(0, players.size())
                .mapToDouble(i -> finder.exitBoard(players.get(i), film, lines.get(i), pattern.lengthM()))
                .toArray();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double furthest(double[] values, double from) {
        return Arrays.stream(values)
                .boxed()
                .reduce((a, b) -> Math.abs(b - from) > Math.abs(a - from) ? b : a)
                .orElseThrow();
    }

    private static double leastStep(double[] values) {
        return IntStream.range(1, values.length)
                .mapToDouble(i -> values[i] - values[i - 1])
                .min()
                .orElseThrow();
    }

    private void lengths() {
        List<Player> field = field("medium-reactive", "hard-synthetic", GOOD);
        for (int feet : LENGTHS_FT) {
            OilPattern pattern = pattern(feet, 26, 3);
            said.put("exit at " + feet + " ft", mean(exits(field, starts(field, pattern), pattern)));
        }
        OilPattern pattern = pattern(39, 26, 3);
        OilFilm film = fresh(pattern);
        said.put("head film", film.meanOnBoardUm(20, 0, FOOT_M) / UNIT_UM);
        List<Line> starts = starts(field, pattern);
        double[] entries = new double[field.size()];
        double[] losses = new double[field.size()];
        double[] deeper = new double[field.size()];
        double[] roll = new double[field.size()];
        for (int i = 0; i < entries.length; i++) {
            Player player = field.get(i);
            BallPath path = finder.path(player, film, starts.get(i), pattern.lengthM());
            entries[i] = Math.toDegrees(path.entryAngleRad());
            losses[i] = (player.style().release().speedMps() - path.speedAtPinsMps()) / MPH_MPS;
            roll[i] = march.rollDistanceM().orElse(LaneGeometry.HEAD_PIN_M) / FOOT_M;
            Player textured = player(player.style().id(), "medium-reactive", "textured-synthetic", GOOD);
            deeper[i] = finder.moveToPocket(textured, film, starts.get(i))
                            .orElseThrow(NoLine::new)
                            .laydownBoard()
                    - starts.get(i).laydownBoard();
        }
        said.put("entry angle, style furthest off", furthest(entries, 5));
        said.put("speed lost, style furthest off", furthest(losses, 2.75));
        said.put("feet to textured", mean(deeper));
        said.put("roll begins (ft)", mean(roll));
    }

    private void free() {
        List<Player> field = field("medium-reactive", "hard-synthetic", GOOD);
        said.put("least step of laydown by revs, 3:1", freeStep(field, pattern(39, 26, 3)));
        OilPattern pattern = pattern(39, 23, 5);
        said.put("least step of laydown by revs, 5:1", freeStep(field, pattern));
        List<Line> starts = starts(field, pattern);
        said.put("exits at 5:1, style furthest off", furthest(exits(field, starts, pattern), 8.5));
        OilFilm film = fresh(pattern);
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (int i = 0; i < starts.size(); i++) {
            ExitWindow window = finder.windowOf(field.get(i), film, starts.get(i), pattern.lengthM());
            low = Math.min(low, window.lowBoard());
            high = Math.max(high, window.highBoard());
        }
        said.put("low end of windows at 5:1", low);
        said.put("high end of windows at 5:1", high);
    }

    private double freeStep(List<Player> field, OilPattern pattern) {
        OilFilm film = fresh(pattern);
        LineSearch search = new LineSearch(finder);
        return leastStep(field.stream()
                .mapToDouble(player ->
                        search.free(player, film).orElseThrow(NoLine::new).laydownBoard())
                .toArray());
    }

    private void house() {
        OilPattern pattern = pattern(40, 23, 8);
        OilFilm film = fresh(pattern);
        for (String strength : List.of("weak", "medium")) {
            List<Player> field = field(strength + "-reactive", "textured-synthetic", ELITE);
            List<Line> starts = starts(field, pattern);
            double[] pockets = new double[field.size()];
            double narrowest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < pockets.length; i++) {
                LineQuality quality = finder.fineQuality(field.get(i), film, starts.get(i));
                pockets[i] = 100 * quality.pocketShare();
                ExitWindow window = finder.windowOf(field.get(i), film, starts.get(i), pattern.lengthM());
                narrowest = Math.min(narrowest, window.highBoard() - window.lowBoard());
            }
            said.put("house exits, " + strength + ", style furthest off", furthest(exits(field, starts, pattern), 9));
            said.put(
                    "house step of laydown, " + strength,
                    leastStep(starts.stream().mapToDouble(Line::laydownBoard).toArray()));
            said.put("house pocket, " + strength, mean(pockets));
            said.put(
                    "house least pocket, " + strength,
                    Arrays.stream(pockets).min().orElseThrow());
            said.put("house narrowest window, " + strength, narrowest);
        }
    }

    private void blocks() {
        OilPattern pattern = pattern(39, 26, 3);
        OilFilm fresh = fresh(pattern);
        List<Block> reactive = blocks("medium-reactive", pattern);
        reactive.forEach(block -> block.play(12));
        said.put("heads left after 12 games", 100 * mean(reactive, block -> left(block.film, fresh, 0, 20, true)));
        reactive.forEach(block -> block.play(3));
        said.put("heads left after 15 games", 100 * mean(reactive, block -> left(block.film, fresh, 0, 20, true)));
        said.put(
                "heads lost more than mid-lane",
                100
                        * mean(
                                reactive,
                                block -> left(block.film, fresh, 20, 38, true) - left(block.film, fresh, 0, 20, true)));
        double reactiveMl = mean(reactive, block -> block.film.volumePastMl(pattern.lengthM()));
        for (String cover : List.of("urethane", "plastic")) {
            List<Block> blocks = blocks(cover, pattern);
            blocks.forEach(block -> block.play(15));
            said.put(
                    cover + " past the end over reactive, at most",
                    mean(blocks, block -> block.film.volumePastMl(pattern.lengthM())) / reactiveMl);
            said.put(
                    cover + " removal before 16 ft",
                    100
                            * mean(
                                    blocks,
                                    block -> takenBefore(fresh, block.film, 16)
                                            / (fresh.volumeMl() - block.film.volumeMl())));
            if (cover.equals("urethane")) {
                blocks.forEach(block -> block.play(9));
                double lost = 100 * (1 - mean(blocks, block -> left(block.film, fresh, 20, 38, true)));
                double gained = 100 * (mean(blocks, block -> left(block.film, fresh, 20, 38, false)) - 1);
                said.put("urethane mid-lane change, at most", Math.max(lost, gained));
            }
        }
    }

    private static double mean(List<Block> blocks, ToDoubleFunction<Block> of) {
        return blocks.stream().mapToDouble(of).average().orElseThrow();
    }

    private List<Block> blocks(String cover, OilPattern pattern) {
        List<Player> field = field(cover, "hard-synthetic", GOOD);
        List<Line> starts = starts(field, pattern);
        return IntStream.rangeClosed(1, BLOCKS)
                .mapToObj(seed -> new Block(field, starts, fresh(pattern), seed))
                .toList();
    }

    /** First balls of the four styles in turn on one lane, each moving "two and one" before every game. */
    private final class Block {
        private final List<Player> players;
        private final List<Line> lines;
        private final OilFilm film;
        private final RandomGenerator random;
        private final List<BallOil> oils;

        Block(List<Player> players, List<Line> starts, OilFilm film, long seed) {
            this.players = players;
            this.lines = new ArrayList<>(starts);
            this.film = film;
            this.random = new Well19937c(seed);
            this.oils =
                    players.stream().map(player -> player.contact().cleanBall()).toList();
        }

        void play(int games) {
            for (int game = 0; game < games; game++) {
                for (int i = 0; i < players.size(); i++) {
                    Optional<Line> moved = finder.moveToPocket(players.get(i), film, lines.get(i));
                    int at = i;
                    moved.ifPresent(line -> lines.set(at, line));
                }
                for (int ball = 0; ball < BALLS_A_GAME; ball++) {
                    shoot(ball % players.size());
                }
            }
        }

        private void shoot(int i) {
            Player player = players.get(i);
            march.wear(scattered(player, lines.get(i), random), player.hand(), player.contact(), film, oils.get(i));
            oils.get(i).rest(BETWEEN_SHOTS_S);
        }
    }

    private static Delivery scattered(Player player, Line line, RandomGenerator random) {
        ReleaseSpread spread = player.spread();
        Release release = player.style()
                .release()
                .scaled(
                        1 + spread.speedShare() * random.nextGaussian(),
                        1 + spread.spinShare() * random.nextGaussian());
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard()) + spread.laydownM() * random.nextGaussian();
        double launchRad = line.launchRad() + spread.launchRad() * random.nextGaussian();
        return Delivery.of(release, player.contact().ball().radiusM(), laydownM, launchRad);
    }

    private static double left(OilFilm worn, OilFilm fresh, int fromFt, int toFt, boolean least) {
        var shares = IntStream.rangeClosed(1, LaneGeometry.BOARDS)
                .mapToDouble(board -> worn.meanOnBoardUm(board, fromFt * FOOT_M, toFt * FOOT_M)
                        / fresh.meanOnBoardUm(board, fromFt * FOOT_M, toFt * FOOT_M));
        return (least ? shares.min() : shares.max()).orElseThrow();
    }

    private static double takenBefore(OilFilm fresh, OilFilm worn, int feet) {
        double freshMl = fresh.volumeMl() - fresh.volumePastMl(feet * FOOT_M);
        return freshMl - (worn.volumeMl() - worn.volumePastMl(feet * FOOT_M));
    }

    private void bands() {
        band("220 rpm", Release.ofTradeUnits(19, 220, 45, 10), "stroker");
        band("325 rpm", Release.ofTradeUnits(18, 325, 48, 12), "tweener");
    }

    private void band(String words, Release release, String style) {
        double launchRad = model.catalogue().styles().get(style).naturalLaunchRad();
        Player like = player(style, "medium-reactive", "hard-synthetic", GOOD);
        Player player = new Player(
                new PlayingStyle(words, release, launchRad, "published band"), GOOD, Hand.RIGHT, like.contact());
        OilPattern pattern = pattern(40, 23, 2);
        Line line = starts(List.of(player), pattern).get(0);
        OilFilm film = fresh(pattern);
        RandomGenerator random = new Well19937c(20_261);
        SummaryStatistics at37Ft = new SummaryStatistics();
        int pockets = 0;
        int shots = 2000;
        for (int i = 0; i < shots; i++) {
            march.read(scattered(player, line, random), player.hand(), player.contact(), film);
            at37Ft.addValue(LaneGeometry.metresToBoard(march.positionM(37 * FOOT_M)));
            pockets += PinCarry.isPocket(march.arrivalBoard()) ? 1 : 0;
        }
        said.put("pocket at " + words, 100.0 * pockets / shots);
        said.put("spread at " + words, at37Ft.getStandardDeviation());
    }

    private void heldOut() {
        var friction = player("straight", "medium-reactive", "hard-synthetic", GOOD)
                .contact()
                .friction();
        said.put("friction under 20 units", friction.coefficient(20 * UNIT_UM));
        said.put(
                "friction gained by a halved head",
                friction.coefficient(20 * UNIT_UM) - friction.coefficient(40 * UNIT_UM));
    }
}
