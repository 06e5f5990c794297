package lanetide.squads.measured;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A ball that somebody watched. What nobody noted of it is empty.
 *
 * @param lane lane number
 * @param when when it was thrown, to the game; where no lane is known games are those of the squad
 * @param bowler name of the bowler in the squad
 * @param seen what was seen of its way
 * @param speedMps its speed when it left the hand (m/s)
 * @param spinRadps how fast it turned (rad/s)
 * @param place where it stands, for what is said of it
 */
public record BallThrown(
        OptionalInt lane,
        When when,
        Optional<String> bowler,
        BallSeen seen,
        OptionalDouble speedMps,
        OptionalDouble spinRadps,
        String place) {
    /**
     * Whether it shows where its bowler plays.
     *
     * @return true if he and his board at the arrows are known
     */
    public boolean tellsWhereHePlays() {
        return bowler.isPresent() && seen.arrowsBoard().isPresent();
    }
}
