package lanetide.oilflow.ball;

import lanetide.oilflow.Require;

/**
 * A way of throwing the ball: the release and the launch angle the bowler feels at home with.
 *
 * @param id name by which scenarios choose it
 * @param release the release on an average shot
 * @param naturalLaunchRad launch angle the bowler uses when nothing forces another (rad), positive toward the bowler's
 *     own gutter, -0.05 to 0.1
 * @param source where the values come from, or {@code assumption}
 */
public record PlayingStyle(String id, Release release, double naturalLaunchRad, String source) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range or a text is blank
     */
    public PlayingStyle {
        Require.named(id, "style");
        Require.inRange(naturalLaunchRad, "natural launch angle (rad) of style " + id, -0.05, 0.1);
        Require.named(source, "source of style " + id);
    }
}
