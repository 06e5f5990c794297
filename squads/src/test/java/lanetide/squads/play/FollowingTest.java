package lanetide.squads.play;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Knowledge;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.ShotBowled;
import lanetide.squads.study.Playable;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.Observers;
import lanetide.squads.watch.ShotObserver;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How far bowlers follow the lanes on their way from never moving to knowing all. One bowler is judged among others who
 * learn, with the same luck each time; no fact is known to hold the figures against.
 */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FollowingTest {
    static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    static final List<String> LEVELS = List.of("elite", "scratch", "league", "casual");
    private static final int PLAYINGS = 40;
    private static final int GAMES = 8;
    private static final long FIVE_HOURS_MS = 300 * Events.MINUTE_MS;

    /** A game of the judged bowler: of the early squad or of the late one, from 0. */
    enum Look {
        SECOND(0, 1),
        FOURTH(0, 3),
        EIGHTH(0, 7),
        LATE_FIRST(1, 0);

        private final int squad;
        private final int game;

        Look(int squad, int game) {
            this.squad = squad;
            this.game = game;
        }
    }

    private final Map<Kind, List<Playing>> played = new HashMap<>();

    @ParameterizedTest
    @ValueSource(strings = {"elite", "scratch", "league", "casual"})
    void howBowlersOfALevelFollowTheLanesStandsInTheReadme(String level) {
        says(
                level + ", four styles",
                STYLES.stream().map(style -> new Kind(style, level)).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void howBowlersOfAStyleFollowTheLanesStandsInTheReadme(String style) {
        says(
                style + ", four levels",
                LEVELS.stream().map(level -> new Kind(style, level)).toList());
    }

    record Kind(String style, String level) {}

    /** What the judged bowler scored in a playing, by what he went by, look by look, and how often he moved. */
    private record Playing(Map<Knowledge, List<Double>> scores, double movesAGame) {
        double gain(Knowledge knowledge, int look) {
            return scores.get(knowledge).get(look)
                    - scores.get(Knowledge.NOTHING).get(look);
        }
    }

    private void says(String who, List<Kind> kinds) {
        List<Playing> playings = kinds.stream()
                .flatMap(kind -> played.computeIfAbsent(kind, FollowingTest::play).stream())
                .toList();
        ReadmeRow.says(
                "follows the lanes: " + who,
                IntStream.range(0, Look.values().length)
                                .mapToObj(look -> gain(playings, Knowledge.OWN_BALLS, look) + ", "
                                        + gain(playings, Knowledge.SEEN_AND_TOLD, look) + " of "
                                        + gain(playings, Knowledge.EVERYTHING, look))
                                .collect(Collectors.joining("; "))
                        + "; "
                        + String.format(
                                Locale.ROOT,
                                "%.2f moves",
                                playings.stream()
                                        .mapToDouble(Playing::movesAGame)
                                        .average()
                                        .orElseThrow()));
    }

    private static String gain(List<Playing> playings, Knowledge knowledge, int look) {
        SummaryStatistics gains = new SummaryStatistics();
        playings.forEach(playing -> gains.addValue(playing.gain(knowledge, look)));
        double half = 1.96 * gains.getStandardDeviation() / Math.sqrt((double) gains.getN());
        return String.format(Locale.ROOT, "%+.1f ± %.1f", gains.getMean(), half);
    }

    private static List<Playing> play(Kind kind) {
        Playable playable = Playable.of(event(kind));
        return LongStream.range(0, PLAYINGS)
                .mapToObj(seed -> {
                    Moves moves = new Moves();
                    Map<Knowledge, List<Double>> scores = new EnumMap<>(Knowledge.class);
                    for (Knowledge knowledge : Knowledge.values()) {
                        ShotObserver watcher = knowledge == Knowledge.SEEN_AND_TOLD ? moves : ShotObserver.NONE;
                        scores.put(knowledge, scores(playable, seed, knowledge, watcher));
                    }
                    return new Playing(scores, moves.count / (2.0 * GAMES));
                })
                .toList();
    }

    /** Counts how often the judged bowlers move their feet on a lane. */
    private static final class Moves implements ShotObserver {
        private final Map<String, Double> stood = new HashMap<>();
        private int count;

        @Override
        public void onShot(ShotBowled shot) {
            if (shot.standing() != Rack.FULL || !isJudged(shot.bowler())) {
                return;
            }
            double stands = shot.path().meant().laydownBoard();
            Double before = stood.put(shot.bowler().id() + " on " + shot.lane(), stands);
            if (before != null && before != stands) {
                count++;
            }
        }
    }

    private static boolean isJudged(Bowler bowler) {
        return bowler.id().endsWith(" judged");
    }

    /** Two squads on one oiling; in each the judged bowler and four who always learn. */
    static Event event(Kind kind) {
        return Events.event(
                Events.centre(1),
                Events.stay(1, 1, GAMES),
                Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, five("early", kind)),
                Events.squad("B", Events.START_MS + FIVE_HOURS_MS, Conditioning.NONE, five("late", kind)));
    }

    private static List<Group> five(String squad, Kind kind) {
        return Events.oneGroup(
                bowler(squad + " judged", kind.style(), kind.level(), "medium-reactive"),
                bowler(squad + " straight", "straight", kind.level(), "weak-reactive"),
                bowler(squad + " stroker", "stroker", kind.level(), "weak-reactive"),
                bowler(squad + " tweener", "tweener", kind.level(), "medium-reactive"),
                bowler(squad + " power", "power", kind.level(), "strong-reactive"));
    }

    private static Bowler bowler(String id, String style, String level, String cover) {
        return Events.bowler(id, Hand.RIGHT, style, Events.level(level), cover);
    }

    /** What the judged bowler scores in the games that are looked at. */
    static List<Double> scores(Playable playable, long seed, Knowledge knowledge, ShotObserver watcher) {
        Agents agents = new Agents(playable.event(), playable.lines(), playable.physics());
        Setup watched = playable.setup(LuckSource.byBall(new RandomStreams(seed).forReplication(0)))
                .watchedBy(new Observers(LaneObserver.NONE, watcher, List.of()));
        EventResult result = new TournamentSimulation(Events.withAgents(
                        watched,
                        (bowler, player, pattern) -> isJudged(bowler)
                                ? agents.of(bowler, player, pattern, knowledge)
                                : agents.of(bowler, player, pattern)))
                .play();
        List<Double> scores = new ArrayList<>();
        for (Look look : Look.values()) {
            scores.add((double) result.squads()
                    .get(look.squad)
                    .bowlers()
                    .get(0)
                    .score(look.game)
                    .orElseThrow());
        }
        return scores;
    }
}
