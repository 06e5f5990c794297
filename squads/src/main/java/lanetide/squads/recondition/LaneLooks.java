package lanetide.squads.recondition;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.model.Event;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;

/** Looks at some lanes after every game: where the windows of all typical players are, how wide, and how good. */
final class LaneLooks implements LaneObserver {
    private static final int MAX_LANES = 4;

    private final Event event;
    private final List<TypicalPlayer> players;
    private final LineFinder finder;
    private final List<Integer> lanes;
    private final Look[][][] looks;
    private final Map<String, Line> lastLines = new HashMap<>();

    /** One player's window on one lane at one age; without a best board it has no width. */
    record Look(OptionalDouble bestBoard, double widthBoards, double pocketShare) {}

    LaneLooks(Event event, Physics physics, List<TypicalPlayer> players, int games) {
        this.event = event;
        this.players = players;
        this.finder = new LineFinder(new RowMarch(physics.grid()), physics.carry());
        this.lanes = event.centre().lanesToLookAt(MAX_LANES);
        this.looks = new Look[lanes.size()][games + 1][players.size()];
    }

    @Override
    public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
        int lane = lanes.indexOf(moment.lane());
        int age = moment.gamesOnOil();
        if (lane < 0 || age >= looks[lane].length || isSeen(lane, age)) {
            return;
        }
        for (int p = 0; p < players.size(); p++) {
            looks[lane][age][p] = look(moment.lane(), players.get(p), film);
        }
    }

    private boolean isSeen(int lane, int age) {
        return Arrays.stream(looks[lane][age]).anyMatch(look -> look != null);
    }

    private Look look(int lane, TypicalPlayer typical, OilFilm film) {
        String key = lane + "/" + typical.style() + "/" + typical.hand();
        Line near = lastLines.getOrDefault(key, typical.start());
        double lengthM = event.pattern(0, lane).lengthM();
        Optional<ExitWindow> window = finder.movedWindow(typical.player(), film, near, lengthM);
        if (window.isEmpty()) {
            return new Look(OptionalDouble.empty(), 0, 0);
        }
        lastLines.put(key, window.get().played());
        return new Look(
                OptionalDouble.of(window.get().exitBoard()),
                window.get().highBoard() - window.get().lowBoard(),
                finder.quality(typical.player(), film, window.get().played()).pocketShare());
    }

    /** What was seen, by lane, then by games on the oil, then by player; without the ages that no lane has reached. */
    Look[][][] looks() {
        return looks;
    }
}
