package lanetide.squads.play;

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
record Equipment(Contact first, Optional<Contact> second, Contact spare) {
    static Equipment of(Bowler bowler, LaneSurface surface, Physics physics) {
        return new Equipment(
                physics.contact(bowler.cover(), surface),
                bowler.secondCover().map(cover -> physics.contact(cover, surface)),
                physics.contact(bowler.spareCover(), surface));
    }
}
