package lanetide.squads.play;

import java.util.List;
import lanetide.des.Simulator;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.result.WaitCause;

/** Lets players whose lane has failed go on elsewhere, as the director chooses. */
final class Relocation {
    private final Director director;
    private final Simulator simulator;
    private final List<GroupInPlay> groups;
    private final Stopwatch stopwatch;
    private final RunningGames running;
    private final PaceOfPlay pace;

    Relocation(Day day, Director director, List<GroupInPlay> groups, Stopwatch stopwatch, RunningGames running) {
        this.director = director;
        this.simulator = day.simulator();
        this.groups = groups;
        this.stopwatch = stopwatch;
        this.running = running;
        this.pace = day.event().pace();
    }

    /** Whether there is a place elsewhere for so many players. */
    boolean hasPlace(PairLanes from, int players) {
        return director.hasPlace(running.all(), from, players);
    }

    /** Sends players to where there is a place, which must be. */
    void send(List<BowlerInGame> players, PairLanes from, int game) {
        if (director.remedy() == FaultResponse.SPARE) {
            moveToSpare(players, from, game);
        } else {
            players.forEach(player -> joinOthers(player, from));
        }
    }

    /** A group that has stayed on a spare pair since its last game goes on there. */
    private void moveToSpare(List<BowlerInGame> players, PairLanes from, int game) {
        PairLanes standsAt = groups.get(players.get(0).group())
                .at()
                .filter(director::isSpare)
                .orElse(from);
        PairLanes spare = director.takeSpare(standsAt).orElseThrow();
        long walkMs = standsAt.walkMs(spare, pace);
        stopwatch.waited(WaitCause.FAULT, PairLanes.LANES * walkMs);
        simulator.schedule(
                walkMs,
                Phase.MOVE,
                "arrive at spare pair",
                () -> running.play(players, spare, new RunningGames.Place(RunningGames.ELSEWHERE, game)));
    }

    private void joinOthers(BowlerInGame player, PairLanes from) {
        PairGame host = director.host(running.all(), from).orElseThrow();
        groups.get(player.group()).stands(from);
        host.expect();
        simulator.schedule(from.walkMs(host.lanes(), pace), Phase.MOVE, "join other group", () -> {
            player.member().goesTo(host.lanes());
            host.join(player);
        });
    }
}
