package lanetide.squads.equipment;

import java.util.Optional;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.motion.Contact;
import lanetide.squads.model.Bowler;

/**
 * A bowler's balls on the lanes of an event.
 *
 * @param first the ball he begins with at full racks
 * @param second another one for full racks, if he has one
 * @param spare the ball for spares
 */
public record Equipment(Contact first, Optional<Contact> second, Contact spare) {
    /**
     * The balls of a bowler.
     *
     * @param bowler the bowler
     * @param surface what the lanes are made of
     * @param physics the laws
     * @return his balls
     */
    public static Equipment of(Bowler bowler, LaneSurface surface, Physics physics) {
        return new Equipment(
                physics.contact(bowler.cover(), surface),
                bowler.secondCover().map(cover -> physics.contact(cover, surface)),
                physics.contact(bowler.spareCover(), surface));
    }
}
