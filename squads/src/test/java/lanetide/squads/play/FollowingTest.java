package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Knowledge;
import lanetide.squads.result.EventResult;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How far bowlers follow the lanes on their way from never moving to knowing all. One bowler is judged among others who
 * learn, with the same luck each time; no fact is known to hold the figures against.
 */
@Tag("slow")
class FollowingTest {
    private static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    private static final List<String> LEVELS = List.of("elite", "scratch", "league", "casual");
    private static final int PLAYINGS = 40;
    private static final int GAMES = 8;
    private static final long FIVE_HOURS_MS = 300 * Events.MINUTE_MS;

    /** A game of the judged bowler: of the early squad or of the late one, from 0. */
    private enum Look {
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

    private record Kind(String style, String level) {}

    private static void says(String who, List<Kind> kinds) {
        List<SummaryStatistics> learning = statistics();
        List<SummaryStatistics> knowing = statistics();
        for (Kind kind : kinds) {
            Event event = event(kind);
            StartingLines lines = new StartingLines(event, Events.PHYSICS);
            for (long seed = 0; seed < PLAYINGS; seed++) {
                List<Double> never = scores(event, lines, seed, Knowledge.NOTHING);
                addGains(learning, scores(event, lines, seed, Knowledge.OWN_BALLS), never);
                addGains(knowing, scores(event, lines, seed, Knowledge.EVERYTHING), never);
            }
        }
        ReadmeRow.says(
                "follows the lanes: " + who,
                IntStream.range(0, Look.values().length)
                        .mapToObj(i -> gain(learning.get(i)) + " of " + gain(knowing.get(i)))
                        .collect(Collectors.joining("; ")));
    }

    private static List<SummaryStatistics> statistics() {
        List<SummaryStatistics> statistics = new ArrayList<>();
        for (int i = 0; i < Look.values().length; i++) {
            statistics.add(new SummaryStatistics());
        }
        return statistics;
    }

    private static void addGains(List<SummaryStatistics> gains, List<Double> scores, List<Double> never) {
        for (int i = 0; i < scores.size(); i++) {
            gains.get(i).addValue(scores.get(i) - never.get(i));
        }
    }

    private static String gain(SummaryStatistics gains) {
        double half = 1.96 * gains.getStandardDeviation() / Math.sqrt((double) gains.getN());
        return String.format(Locale.ROOT, "%+.1f ± %.1f", gains.getMean(), half);
    }

    /** Two squads on one oiling; in each the judged bowler and four who always learn. */
    private static Event event(Kind kind) {
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

    private static List<Double> scores(Event event, StartingLines lines, long seed, Knowledge knowledge) {
        Agents agents = new Agents(event, lines, Events.PHYSICS);
        EventResult result = new TournamentSimulation(Events.withAgents(
                        Events.setup(event, lines, seed),
                        (bowler, player, pattern) -> bowler.id().endsWith(" judged")
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
