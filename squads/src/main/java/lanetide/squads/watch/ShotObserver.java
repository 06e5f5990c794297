package lanetide.squads.watch;

import lanetide.squads.result.ShotBowled;

/** Is told of every ball right after it was bowled, practice included. */
@FunctionalInterface
public interface ShotObserver {
    /** Looks at nothing. */
    ShotObserver NONE = shot -> {};

    /**
     * Looks at a ball.
     *
     * @param shot the ball
     */
    void onShot(ShotBowled shot);
}
