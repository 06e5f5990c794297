package lanetide.oilflow.ball;

import lanetide.oilflow.Require;

/**
 * How far a bowler's shots scatter: standard deviations of independent normal errors.
 *
 * @param laydownM of the laydown point (m), 0 to 0.3
 * @param launchRad of the launch angle (rad), 0 to 0.1
 * @param speedShare of the speed, as a share of it, 0 to 0.1
 * @param spinShare of the rev rate, as a share of it, 0 to 0.3
 */
public record ReleaseSpread(double laydownM, double launchRad, double speedShare, double spinShare) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public ReleaseSpread {
        Require.inRange(laydownM, "laydown spread (m)", 0, 0.3);
        Require.inRange(launchRad, "launch angle spread (rad)", 0, 0.1);
        Require.inRange(speedShare, "speed spread (share)", 0, 0.1);
        Require.inRange(spinShare, "rev rate spread (share)", 0, 0.3);
    }
}
