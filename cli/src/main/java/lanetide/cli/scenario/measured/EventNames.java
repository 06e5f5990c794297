package lanetide.cli.scenario.measured;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.notice.Nearest;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.measured.GameEnded;
import lanetide.squads.measured.When;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.study.DayClock;

/** The lanes, squads and bowlers of an event, as people write them: capitals and spaces in names do not matter. */
final class EventNames {

    /** Lanes are measured so long before a squad starts at most. */
    private static final long BEFORE_MS = 12 * 3_600_000L;

    private static final Form.Quantity<Integer> LANES = Form.whole(1, CentreKeys.MAX_LANE);

    private final Event event;
    private final Supplier<DayClock> foreseen;
    private final Supplier<List<GameEnded>> ends;
    private Optional<DayClock> clock = Optional.empty();
    private final List<String> squads;
    private final Map<String, List<String>> squadsByPlainName;
    private final List<Map<String, List<String>>> bowlersByPlainName;

    EventNames(Event event, Supplier<DayClock> foreseen, Supplier<List<GameEnded>> ends) {
        this.event = event;
        this.foreseen = foreseen;
        this.ends = ends;
        squads = event.squads().stream().map(Squad::id).toList();
        squadsByPlainName = squads.stream().collect(Collectors.groupingBy(EventNames::plain));
        bowlersByPlainName = event.squads().stream()
                .map(squad -> bowlers(squad).stream().collect(Collectors.groupingBy(name -> plain(name, squad.id()))))
                .toList();
    }

    private static List<String> bowlers(Squad squad) {
        return squad.everybody().stream().map(Bowler::id).toList();
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
    }

    /** The same of a bowler, whom an event calls by his squad too where he bowls in an earlier one as well. */
    private static String plain(String bowler, String squad) {
        String plain = plain(bowler);
        String called = plain("(" + squad + ")");
        return plain.endsWith(called) ? plain.substring(0, plain.length() - called.length()) : plain;
    }

    /** Of names that are plainly the same: the one that is written so, else the only one. */
    private static Optional<String> find(String written, List<String> alike) {
        return alike.stream()
                .filter(name -> name.equals(written) || alike.size() == 1)
                .findFirst();
    }

    private Optional<String> findSquad(String written) {
        return find(written, squadsByPlainName.getOrDefault(plain(written), List.of()));
    }

    private Optional<String> findBowler(String written, int squad) {
        return find(written, bowlersByPlainName.get(squad).getOrDefault(plain(written, squads.get(squad)), List.of()));
    }

    /** Whether a squad need not be named, there being one. */
    boolean hasOneSquad() {
        return squads.size() == 1;
    }

    /** A lane in use; empty, with a notice, if it is none. */
    Optional<Integer> lane(Value value) {
        Optional<Integer> lane = value.read(LANES);
        List<Integer> lanes = event.centre().laneNumbers();
        if (lane.isPresent() && !lanes.contains(lane.get())) {
            int nearest = lanes.stream()
                    .min(Comparator.comparingInt(other -> Math.abs(other - lane.get())))
                    .orElseThrow();
            value.refuse(
                    NoticeCode.UNKNOWN_LANE,
                    ", which is not a lane in use; the nearest is " + nearest
                            + ". Correct the number, or add the lane to the centre.");
            return Optional.empty();
        }
        return lane;
    }

    /** The place of a squad among the event's; empty, with a notice, if there is none of that name. */
    Optional<Integer> squad(Value value) {
        Optional<String> written = value.text();
        Optional<String> squad =
                written.flatMap(name -> findSquad(name).or(() -> findSquad(name.replaceFirst("(?i)^squad", ""))));
        if (written.isPresent() && squad.isEmpty()) {
            unknown(value, "which is not a squad of the event", squads);
        }
        return squad.map(squads::indexOf);
    }

    /** The name of a bowler of a squad as the event has it; empty, with a notice, if there is none of that name. */
    Optional<String> bowler(Value value, int squad) {
        Optional<String> written = value.text();
        Optional<String> bowler = written.flatMap(name -> findBowler(name, squad));
        if (written.isPresent() && bowler.isEmpty()) {
            String elsewhere = IntStream.range(0, squads.size())
                    .filter(other -> findBowler(written.get(), other).isPresent())
                    .mapToObj(other -> ", but in squad " + squads.get(other))
                    .findFirst()
                    .orElse("");
            unknown(
                    value,
                    "who does not bowl in squad " + squads.get(squad) + elsewhere,
                    bowlers(event.squads().get(squad)));
        }
        return bowler;
    }

    private static void unknown(Value value, String problem, List<String> known) {
        value.refuse(
                NoticeCode.UNKNOWN_NAME,
                ", " + problem + "." + Nearest.question(value.plain(), known)
                        + " Correct the name, or add it to the scenario.");
    }

    /** The name of a squad. */
    String squad(int squad) {
        return squads.get(squad);
    }

    /** Games that every bowler of a squad plays. */
    int games(int squad) {
        return event.games(squad);
    }

    /** Games that a squad plays on the pair of a lane. */
    int gamesOnPairOf(int squad, int lane) {
        return gamesOnPairOf(squad, lane, games(squad));
    }

    /** When a squad is planned to start (ms from midnight before the first day). */
    long startMs(int squad) {
        return event.squads().get(squad).startMs();
    }

    /** A time of day, on the day on which a squad starts or the night after it; one that names its day stays. */
    long onDayOf(int squad, long timeMs) {
        long earliestMs = startMs(squad) - BEFORE_MS;
        return timeMs >= earliestMs
                ? timeMs
                : timeMs + -Math.floorDiv(timeMs - earliestMs, TimeOfDay.DAY_MS) * TimeOfDay.DAY_MS;
    }

    /** The place of the squad that has the lanes at a time, or had them last: from when its machines begin. */
    int squadAt(long timeMs) {
        return IntStream.range(0, squads.size())
                .filter(squad -> timeMs >= startMs(squad) - machinesMs(squad))
                .max()
                .orElse(0);
    }

    private long machinesMs(int squad) {
        return MachinePlan.of(event, squad).durationMs();
    }

    /**
     * Games of a squad that are done at a time, to the nearest end of a game: as the games of the event were measured
     * to end, else as its clock foresees them.
     */
    int gamesDone(int squad, long timeMs) {
        long nearestMs = Math.abs(timeMs - startMs(squad));
        int done = 0;
        for (int game = 1; game <= games(squad); game++) {
            long apartMs = Math.abs(timeMs - endMs(squad, game));
            if (apartMs <= nearestMs) {
                nearestMs = apartMs;
                done = game;
            }
        }
        return done;
    }

    private long endMs(int squad, int game) {
        return ends.get().stream()
                .filter(end -> end.squad().equals(squads.get(squad)) && end.game() == game)
                .mapToLong(GameEnded::endedMs)
                .findFirst()
                .orElseGet(() -> foreseenMs(squad, game));
    }

    private long foreseenMs(int squad, int game) {
        if (clock.isEmpty()) {
            clock = Optional.of(foreseen.get());
        }
        return clock.get().squads().get(squad).games().get(game - 1).meanMs();
    }

    /** Games that a squad has played on the pair of a lane when so many of its games are done. */
    int gamesOnPairOf(int squad, int lane, int done) {
        Rotation rotation = event.rotations().get(squad);
        int pair = event.centre().pairs().indexOf(pairOf(lane));
        return (int) IntStream.range(0, done)
                .filter(game -> rotation.groupOn(game, pair).isPresent())
                .count();
    }

    /** Whether nobody had played on the oil at that time. */
    boolean isFresh(When when) {
        return event.isFresh(when);
    }

    /** The pair of a lane in use. */
    LanePair pairOf(int lane) {
        return event.centre().pairs().stream()
                .filter(pair -> pair.holds(lane))
                .findFirst()
                .orElseThrow();
    }
}
