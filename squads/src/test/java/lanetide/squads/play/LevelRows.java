package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.result.BowlerResult;

/** What the levels score on a house pattern, and what another ball is worth. */
final class LevelRows {
    private static final String ACCURACY = "O'Keefe, US Bowler, July 2012, by average";
    private static final String MARKS = "coaching article, as quoted";
    private static final OilPattern HOUSE = OilPattern.of("house", 40 * LaneGeometry.FOOT_M, 23, 8);
    private static final int HOUSE_NIGHTS = 30;
    private static final int HOUSE_GAMES = 3;

    private LevelRows() {}

    static List<Validation.Check> all() {
        List<Validation.Check> checks = new ArrayList<>();
        checks.add(house("elite", 220, 240));
        checks.add(house("scratch", 200, 220));
        checks.add(house("league", 180, 200));
        checks.add(house("casual", 160, 180));
        checks.addAll(marks());
        checks.add(secondBall());
        return checks;
    }

    private static Validation.Check house(String level, int from, int to) {
        double mean = houseNights(level).stream()
                .mapToDouble(BowlerResult::meanScore)
                .average()
                .orElseThrow();
        return new Validation.Check(
                level + " bowlers on a house pattern, three games (calibration)",
                ACCURACY,
                from + " to " + to,
                from,
                to,
                mean,
                "");
    }

    private static List<Validation.Check> marks() {
        Sheets league = Sheets.of(houseNights("league"));
        Sheets casual = Sheets.of(houseNights("casual"));
        return List.of(
                new Validation.Check(
                        "league bowlers there: strikes in ten frames",
                        MARKS,
                        "3 to 4 (175 to 190), 4 to 6 (190 to 200)",
                        3,
                        6,
                        league.strikePercent() / 10,
                        ""),
                new Validation.Check(
                        "league bowlers there: spares among other frames",
                        MARKS,
                        "60 % (175 to 190) to 90 % (190 to 200)",
                        60,
                        90,
                        league.sparePercent(),
                        "%"),
                new Validation.Check(
                        "casual bowlers there: strikes in ten frames",
                        MARKS,
                        "1 to 2 (150 to 155), 3 to 4 (175 to 190)",
                        1,
                        4,
                        casual.strikePercent() / 10,
                        ""),
                new Validation.Check(
                        "casual bowlers there: spares among other frames",
                        MARKS,
                        "50 % (150 to 155) to 60 % (175 to 190)",
                        50,
                        60,
                        casual.sparePercent(),
                        "%"));
    }

    /** Four styles on a pair, fresh oil, three games; thirty nights. */
    private static List<BowlerResult> houseNights(String level) {
        Event event = on(HOUSE, HOUSE_GAMES, fourOf(level));
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        return LongStream.range(0, HOUSE_NIGHTS)
                .boxed()
                .flatMap(seed -> Strategies.play(event, lines, seed).stream())
                .toList();
    }

    private static Event on(OilPattern pattern, int games, List<Bowler> bowlers) {
        Event event = Events.onePair(games, bowlers.toArray(Bowler[]::new));
        return Fixtures.withPattern(event, pattern);
    }

    private static List<Bowler> fourOf(String level) {
        return List.of(
                bowler("straight", level, "weak-reactive"),
                bowler("stroker", level, "weak-reactive"),
                bowler("tweener", level, "medium-reactive"),
                bowler("power", level, "strong-reactive"));
    }

    private static Bowler bowler(String style, String level, String cover) {
        return Events.bowler(style, Hand.RIGHT, style, Events.level(level), cover);
    }

    /** Five elite bags on 24 games of one oiling, eight playings each. */
    private static Validation.Check secondBall() {
        double gain = (gain("power", "strong-reactive", "weak-reactive")
                        + gain("power", "strong-reactive", "medium-reactive")
                        + gain("tweener", "medium-reactive", "weak-reactive")
                        + gain("stroker", "weak-reactive", "strong-reactive")
                        + gain("straight", "weak-reactive", "strong-reactive"))
                / 5;
        return new Validation.Check(
                "a second ball in the bag, mean of five elite bags, 24 games on one oiling: what it is worth",
                "World Bowling, limited-ball test, 2014: largest difference between choices of balls",
                "at most 7.2 pins a game",
                -7.2,
                7.2,
                gain,
                "pins");
    }

    private static double gain(String style, String cover, String second) {
        Bowler one = bowler(style, "elite", cover);
        Bowler two = new Bowler(
                one.id(),
                one.hand(),
                one.style(),
                one.level(),
                one.cover(),
                one.spareCover(),
                one.tempo(),
                Optional.of(Events.CATALOGUE.covers().get(second)),
                0);
        return mean(two) - mean(one);
    }

    private static double mean(Bowler judged) {
        List<Bowler> bowlers = new ArrayList<>(List.of(judged));
        fourOf("elite").forEach(bowler -> bowlers.add(bowler.as("other " + bowler.id(), bowler.hand())));
        Event event = on(Events.PATTERN, 24, bowlers);
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        return LongStream.range(0, 8)
                .mapToDouble(seed -> Strategies.play(event, lines, seed).get(0).meanScore())
                .average()
                .orElseThrow();
    }
}
