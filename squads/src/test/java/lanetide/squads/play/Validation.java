package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Knowledge;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.rotation.design.Ring;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;

/** Plays what was published and compares. Nothing here is tuned: what does not hold is reported as open. */
final class Validation {
    private static final int PLAYINGS = 8;
    private static final int FIELDS = 6;
    private static final int MANY_PLAYINGS = 100;
    private static final int BLOCK_GAMES = 8;
    private static final int LONG_BLOCK_GAMES = 24;
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");

    private Validation() {}

    /**
     * A number and the range it should lie in.
     *
     * @param published the range in words
     */
    record Check(String what, String source, String published, double low, double high, double ours, String unit) {
        boolean met() {
            return ours >= low && ours <= high;
        }

        String row() {
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %.2f%s | %s |",
                    what,
                    source,
                    published,
                    ours,
                    unit.isEmpty() ? "" : " " + unit,
                    met() ? "met" : "OPEN");
        }
    }

    static List<Check> all() {
        List<Check> checks = new ArrayList<>();
        checks.add(headsLeft());
        checks.addAll(paces());
        checks.add(squadWindow());
        checks.add(threeSquads());
        checks.add(laneTime());
        checks.addAll(fieldMeans());
        checks.addAll(LevelRows.all());
        checks.addAll(moves());
        checks.add(oilyBall());
        checks.addAll(strategies());
        return checks;
    }

    /** Five mixed bowlers, six games on one pair: fifteen bowlers' games on each lane. */
    private static Check headsLeft() {
        Bowler[] bowlers =
                IntStream.range(0, 5).mapToObj(i -> Events.mixed("m" + i, i)).toArray(Bowler[]::new);
        OilFilm fresh = OilFilm.fresh(Events.PATTERN, Events.PHYSICS.grid());
        double left = playings()
                .boxed()
                .flatMap(seed -> WatchedSquad.play(Events.onePair(6, bowlers), seed).lanes.get(0).both().stream())
                .mapToDouble(lane -> leastHeadShare(lane.film(), fresh))
                .average()
                .orElseThrow();
        return new Check(
                "head film left on the most worn board after 15 games on each lane, mixed pair",
                "Thompson, Bowlers Journal, August 2015, p. 17",
                "50 ± 15 % after 12 to 15",
                35,
                65,
                100 * left,
                "%");
    }

    /** Every board against its own fresh film: lines may lie on the taper, where there is less to begin with. */
    private static double leastHeadShare(OilFilm worn, OilFilm fresh) {
        return IntStream.rangeClosed(1, LaneGeometry.BOARDS)
                .mapToDouble(board -> worn.meanOnBoardUm(board, 0, LaneGeometry.ARROWS_M)
                        / fresh.meanOnBoardUm(board, 0, LaneGeometry.ARROWS_M))
                .min()
                .orElseThrow();
    }

    /** The source speaks to beginners on one lane, so these are casual bowlers. */
    private static List<Check> paces() {
        String source = "bowlingforbeginners.com, as quoted";
        return List.of(
                new Check("a game of a casual bowler alone", source, "10 to 15 min", 10, 15, gameMinutes(1), "min"),
                new Check(
                        "two casual bowlers' games on one lane (two on a pair, times two lanes)",
                        source,
                        "20 to 25 min",
                        20,
                        25,
                        2 * gameMinutes(2),
                        "min"),
                new Check(
                        "four casual bowlers' games on one lane (four on a pair, times two lanes)",
                        source,
                        "40 to 50 min",
                        40,
                        50,
                        2 * gameMinutes(4),
                        "min"),
                new Check(
                        "lane time of a casual bowler's game, five on a pair",
                        source,
                        "10 to 13 min",
                        10,
                        13,
                        2 * gameMinutes(5) / 5,
                        "min"));
    }

    private static double gameMinutes(int bowlers) {
        Squad squad = Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.casualGroups(4, bowlers));
        Event event = Events.event(Events.centre(4), Events.stay(4, 4, 3), PaceOfPlay.USUAL, squad);
        return playings()
                .mapToDouble(seed -> Events.play(event, seed)
                                .squads()
                                .get(0)
                                .pace()
                                .minutesPerBowlerGame()
                                .orElseThrow()
                        * bowlers)
                .average()
                .orElseThrow();
    }

    /**
     * From the first lane's oiling to the last ball: twelve pairs, two machines, ten minutes of practice, nobody moves.
     */
    private static Check squadWindow() {
        int pairs = 12;
        List<Group> groups =
                Events.groups(IntStream.generate(() -> 6).limit(pairs).toArray());
        Squad squad = Fixtures.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, 10 * Events.MINUTE_MS, groups);
        Event event = Events.event(Events.centre(pairs, 2), Events.stay(pairs, pairs, 6), PaceOfPlay.USUAL, squad);
        EventResult result = Events.play(event, 1);
        double hours =
                (result.squads().get(0).endMs() - result.timetable().get(0).startMs()) / (60.0 * Events.MINUTE_MS);
        return new Check(
                "six bowlers a pair, six games with oiling",
                "USBC, release on the Open Championships 2013",
                "at most 4 h",
                0,
                4,
                hours,
                "h");
    }

    /** One machine on 24 lanes, with the times that a scenario has if it says nothing. */
    private static Check laneTime() {
        LaneMachines usual = LaneMachines.USUAL;
        List<Integer> lanes = IntStream.rangeClosed(1, 24).boxed().toList();
        return new Check(
                "a machine's time for a lane, cleaned, oiled and on to the next, mean of 24",
                "trade article on dual patterns, 2008-09",
                "under 120 s",
                0,
                120,
                MachinePlan.of(usual, lanes, Conditioning.STRIP_AND_OIL).durationMs() / 24_000.0,
                "s");
    }

    /** As published: squads of 48 on twelve pairs, eight games, one oiling a day; on three days that makes 24 games. */
    private static Check threeSquads() {
        int pairs = 12;
        int[] sizes = IntStream.generate(() -> 4).limit(pairs).toArray();
        Squad[] squads = IntStream.range(0, 3)
                .mapToObj(s -> Fixtures.squad(
                        String.valueOf((char) ('A' + s)),
                        Events.START_MS,
                        s == 0 ? Conditioning.STRIP_AND_OIL : Conditioning.NONE,
                        10 * Events.MINUTE_MS,
                        Events.groups(sizes)))
                .toArray(Squad[]::new);
        Event event =
                Events.event(Events.centre(pairs), new Ring(1, 1).plan(pairs, pairs, 8), PaceOfPlay.USUAL, squads);
        EventResult result = Events.play(event, 1);
        double hours =
                (result.squads().get(2).endMs() - result.timetable().get(0).startMs()) / (60.0 * Events.MINUTE_MS);
        return new Check(
                "three squads of four a pair in a day, eight games each, one oiling, one after another",
                "USBC, release on the U.S. Open, March 2017",
                "one day, at most 16 h of it",
                0,
                16,
                hours,
                "h");
    }

    /** Sixty scratch and elite bowlers, twelve games over twelve pairs; six playings. */
    private static List<Check> fieldMeans() {
        int pairs = 12;
        List<Group> groups = new ArrayList<>();
        for (int g = 0; g < pairs; g++) {
            int first = 5 * g;
            groups.add(new Group(
                    String.valueOf(g + 1),
                    IntStream.range(0, 5)
                            .mapToObj(b -> better("b" + (first + b), first + b))
                            .toList()));
        }
        Event event = Events.event(Events.centre(pairs), new Ring(1, 1).plan(pairs, pairs, 12), groups);
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        List<List<BowlerResult>> fields = LongStream.rangeClosed(1, FIELDS)
                .mapToObj(seed -> Strategies.play(event, lines, seed))
                .toList();
        double mean = fields.stream()
                .flatMap(List::stream)
                .mapToDouble(BowlerResult::meanScore)
                .average()
                .orElseThrow();
        double sd = fields.stream()
                .mapToDouble(Validation::standardDeviation)
                .average()
                .orElseThrow();
        Sheets elite = Sheets.of(fields.stream()
                .flatMap(List::stream)
                .filter(bowler -> bowler.bowler().level().id().equals("elite"))
                .toList());
        String source = "five patterns of a world-level event, 229 bowlers, forum.bowlingchat.net";
        return List.of(
                new Check(
                        "mean of a field of elite and scratch bowlers",
                        source,
                        "196.5 to 215.9",
                        196.5,
                        215.9,
                        mean,
                        ""),
                new Check(
                        "standard deviation of their 12-game means, mean of six fields",
                        source,
                        "14 to 18",
                        14,
                        18,
                        sd,
                        ""),
                new Check(
                        "the elite bowlers among them: share of strikes",
                        "televised finals (ESPN study) and elite finals, as quoted",
                        "55 to 62 %",
                        55,
                        62,
                        elite.strikePercent(),
                        "%"));
    }

    private static double standardDeviation(List<BowlerResult> field) {
        return new StandardDeviation()
                .evaluate(field.stream().mapToDouble(BowlerResult::meanScore).toArray());
    }

    private static Bowler better(String id, int i) {
        Bowler mixed = Events.mixed(id, i);
        return Fixtures.withLevel(mixed, Events.level(i % 2 == 0 ? "elite" : "scratch"));
    }

    private static List<Check> moves() {
        double[] elite = feetAfterGames("power", "elite", "medium-reactive", "strong-reactive");
        double[] power = feetAfterGames("power", "scratch", "medium-reactive", "strong-reactive");
        double[] straight = feetAfterGames("straight", "scratch", "urethane", "urethane");
        return List.of(
                new Check(
                        "high revs among flaring covers, elite, games 2 to 8: feet deeper per game",
                        "common practice, no source",
                        "0.5 to 2 boards",
                        0.5,
                        2,
                        (elite[BLOCK_GAMES] - elite[1]) / (BLOCK_GAMES - 1),
                        "boards"),
                new Check(
                        "high revs among flaring covers, scratch, games 2 to 8: feet deeper per game",
                        "common practice, no source",
                        "0.5 to 2 boards",
                        0.5,
                        2,
                        (power[BLOCK_GAMES] - power[1]) / (BLOCK_GAMES - 1),
                        "boards"),
                new Check(
                        "the same bowler from the line he brought to the end of game 1: feet deeper",
                        "common practice, no source",
                        "not toward the gutter",
                        -0.5,
                        2,
                        power[1] - power[0],
                        "boards"),
                new Check(
                        "straight player among non-flaring covers over eight games: feet toward the gutter",
                        "common practice, no source",
                        "above 0 boards",
                        0.01,
                        10,
                        straight[0] - straight[BLOCK_GAMES],
                        "boards"));
    }

    /** Mean laydown of one style at the start and after each game of a block of four styles on one pair. */
    private static double[] feetAfterGames(String style, String level, String cover, String powerCover) {
        double[] feet = new double[BLOCK_GAMES + 1];
        Event event = Events.onePair(
                BLOCK_GAMES,
                bowler("straight", level, cover),
                bowler("stroker", level, cover),
                bowler("tweener", level, cover),
                bowler("power", level, powerCover));
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        playings()
                .forEach(seed -> WatchedSquad.play(event, seed, (watched, bowler) -> {
                    if (bowler.bowler().id().equals(style)) {
                        feet[0] = lines.on(event.pattern()).of(bowler.player()).laydownBoard();
                        for (LaneInPlay lane : watched.lanes.get(0).both()) {
                            feet[bowler.result("", 0).scores().size()] +=
                                    bowler.agent().line(lane.number()).laydownBoard() / 2 / PLAYINGS;
                        }
                    }
                }));
        return feet;
    }

    private static Bowler bowler(String style, String level, String cover) {
        return Events.bowler(style, Hand.RIGHT, style, Events.level(level), cover);
    }

    /** Lines are found for a ball that a towel has been over; the first shot of any ball is thrown clean. */
    private static Check oilyBall() {
        Bowler power = bowler("power", "scratch", "strong-reactive");
        Event event = Events.onePair(1, power);
        BallOil oil =
                new BallOil(BallSpec.of(Events.CATALOGUE.covers().get("strong-reactive")), BallOil.DEFAULT_TOWEL_SHARE);
        RowMarch march = new RowMarch(Events.PHYSICS.grid());
        Player player = StartingLines.player(power, event, Events.PHYSICS);
        Line line = new StartingLines(event, Events.PHYSICS).on(event.pattern()).of(player);
        double radiusM = player.contact().ball().radiusM();
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        Delivery delivery = Delivery.of(player.style().release(), radiusM, laydownM, line.launchRad());
        double[] arrivals = new double[10];
        for (int shot = 0; shot < arrivals.length; shot++) {
            OilFilm fresh = OilFilm.fresh(Events.PATTERN, Events.PHYSICS.grid());
            oil.rest(90);
            march.wear(delivery, player.hand(), player.contact(), fresh, oil);
            arrivals[shot] = march.arrivalBoard();
        }
        return new Check(
                "tenth ball less first ball on fresh oil, high revs: what the film that a towel leaves does",
                "own check: lines are for a wiped ball, the first is clean",
                "within 0.5 board",
                -0.5,
                0.5,
                arrivals[arrivals.length - 1] - arrivals[0],
                "boards");
    }

    /** What moving gains, and where those who learn lie between the two bounds. */
    private static List<Check> strategies() {
        List<Check> checks = new ArrayList<>();
        checks.add(gainedInSixGames("elite"));
        checks.add(gainedInSixGames("scratch"));
        double never = 0;
        double learning = 0;
        double knowing = 0;
        for (String style : STYLES) {
            double[] scores = Strategies.scores(style, "scratch", LONG_BLOCK_GAMES, 2 * PLAYINGS);
            checks.add(between("scratch " + style, scores[0], scores[1], scores[2]));
            never += scores[0] / STYLES.size();
            learning += scores[1] / STYLES.size();
            knowing += scores[2] / STYLES.size();
        }
        checks.add(between("scratch, mean of the four styles", never, learning, knowing));
        return checks;
    }

    private static Check gainedInSixGames(String level) {
        double gain = 0;
        for (String style : STYLES) {
            gain += (Strategies.mean(style, level, 6, MANY_PLAYINGS, Knowledge.SEEN_AND_TOLD)
                            - Strategies.mean(style, level, 6, MANY_PLAYINGS, Knowledge.NOTHING))
                    / STYLES.size();
        }
        return new Check(
                level + ", mean of the four styles, six games on fresh oil: what moving gains over never moving",
                "own check",
                "above 0 pins a game",
                0.01,
                100,
                gain,
                "pins");
    }

    private static Check between(String who, double never, double learning, double knowing) {
        return new Check(
                String.format(
                        Locale.ROOT,
                        "%s, 24 games on one oiling: who learns, between never moving (%.1f) and all-knowing (%.1f)",
                        who,
                        never,
                        knowing),
                "own check",
                "between",
                never,
                knowing,
                learning,
                "pins");
    }

    private static LongStream playings() {
        return LongStream.range(0, PLAYINGS);
    }
}
