package lanetide.squads.play;

/** Gives a playing who throws its balls. */
@FunctionalInterface
interface BallSource {
    /** Who throws the balls of a playing that is set up so. */
    Balls of(Setup setup);
}
