package lanetide.squads.study;

import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.play.Setup;

/**
 * An event and what all its playings share, worked out once.
 *
 * @param event what is played
 * @param physics under which laws
 * @param lines the lines that its kinds of bowlers bring
 */
public record Playable(Event event, Physics physics, StartingLines lines) {
    /**
     * Makes an event ready to be played often.
     *
     * @param event the event
     * @return the event with its physics and its lines
     */
    public static Playable of(Event event) {
        Physics physics = Physics.under(event.laws());
        return new Playable(event, physics, new StartingLines(event, physics));
    }

    /**
     * Another event; the lines of kinds of bowlers on a pattern serve both.
     *
     * @param other the other event, under the same laws
     * @return that event
     */
    public Playable with(Event other) {
        return new Playable(other, physics, lines.broughtTo(other));
    }

    /**
     * The same kinds of bowlers in another event on lanes that stay as they are laid.
     *
     * @param other the other event, under the same laws but for that
     * @return that event
     */
    public Playable staying(Event other) {
        return new Playable(other, physics.withLanesThatStay(), lines);
    }

    /**
     * What one playing takes.
     *
     * @param luck its luck
     * @return a setup of its own
     */
    public Setup setup(LuckSource luck) {
        return Setup.of(event, physics, lines, luck);
    }
}
