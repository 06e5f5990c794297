package lanetide.squads.play;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.Incidents;

/** Decides where bowlers go whose lane is out of order. */
final class Director {
    /** Most bowlers on a pair: two teams of five (common practice, no source). */
    private static final int MAX_ON_A_PAIR = 10;

    private final Incidents incidents;
    private final Faults faults;
    private final List<PairLanes> sparePairs;
    private final Set<PairLanes> taken = new HashSet<>();

    Director(Incidents incidents, Faults faults, List<PairLanes> sparePairs) {
        this.incidents = incidents;
        this.faults = faults;
        this.sparePairs = sparePairs;
    }

    FaultResponse remedy() {
        return incidents.remedy();
    }

    /** Whether the work on a lane takes longer than one waits for. */
    boolean isAsked(LaneInPlay lane) {
        return incidents.remedy() != FaultResponse.WAIT
                && faults.isOut(lane)
                && faults.workMs(lane) > incidents.patienceMs();
    }

    /** The same for either lane of a pair. */
    boolean isAsked(PairLanes lanes) {
        return lanes.both().stream().anyMatch(this::isAsked);
    }

    /** Whether there is a place for all of so many players. */
    boolean hasPlace(Collection<PairGame> games, PairLanes from, int players) {
        return switch (incidents.remedy()) {
            case WAIT -> false;
            case SPARE -> freeSpare(from).isPresent();
            case SPLIT ->
                hosts(games, from)
                                .mapToInt(game -> MAX_ON_A_PAIR - game.players())
                                .sum()
                        >= players;
        };
    }

    /** Takes a spare pair: the one the group is on, else the nearest. */
    Optional<PairLanes> takeSpare(PairLanes near) {
        Optional<PairLanes> spare = freeSpare(near);
        spare.ifPresent(taken::add);
        return spare;
    }

    void giveBack(PairLanes lanes) {
        taken.remove(lanes);
    }

    boolean isSpare(PairLanes lanes) {
        return sparePairs.contains(lanes);
    }

    /** The game a bowler joins: the one with the fewest bowlers, of these the nearest. */
    Optional<PairGame> host(Collection<PairGame> games, PairLanes from) {
        return hosts(games, from)
                .min(Comparator.comparingInt(PairGame::players)
                        .thenComparingInt(game -> game.lanes().apart(from))
                        .thenComparingInt(game -> game.lanes().left().number()));
    }

    private Stream<PairGame> hosts(Collection<PairGame> games, PairLanes from) {
        return games.stream()
                .filter(game -> game.isGoingOn() && game.players() < MAX_ON_A_PAIR && !isAsked(game.lanes()))
                .filter(game -> !game.lanes().equals(from));
    }

    private Optional<PairLanes> freeSpare(PairLanes near) {
        return sparePairs.stream()
                .filter(spare -> !taken.contains(spare) && spare.both().stream().noneMatch(faults::isOut))
                .min(Comparator.comparingInt(spare -> spare.apart(near)));
    }
}
