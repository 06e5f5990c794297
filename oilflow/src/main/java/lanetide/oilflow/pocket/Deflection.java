package lanetide.oilflow.pocket;

import lanetide.oilflow.lane.LaneGeometry;

/**
 * How far the pins turn a ball aside: it gives each pin it runs into a blow along the line between their centres, and
 * goes on straight until it meets the next.
 *
 * <p>Textbook mechanics of smooth bodies that collide; the ball's speed cancels out, so that its mass against a pin's
 * and the way it comes in decide. Pins: 3 lb 6 oz to 3 lb 10 oz, 4.76 in thick (USBC, as printed by several pages), the
 * mean taken. The share of the speed with which they part is chosen so that a flush hit leaves the pins near board 19
 * (Ridenour, USBC, Is that the 3 pin carrying the 10 pin?). That the best hit then touches pins 1, 3, 5 and 9 itself
 * (USBC study) and a light hit leaves near board 14 (Ridenour) is not chosen. Limits: pins that knock each other over
 * are left out, as is what spin does among the pins.
 */
public final class Deflection {
    private static final double BALL_RADIUS_M = 0.1085;
    private static final double REACH_M = BALL_RADIUS_M + Rack.PIN_RADIUS_M;
    private static final double PIN_KG = 3.5 * 0.45359237;
    private static final double PARTING_SPEED_SHARE = 0.5;
    /** Where a ball is picked up, before it can touch a pin (m before the head pin). */
    private static final double START_M = 0.5;

    private final double blowShare;
    private double x;
    private double y;
    private double vx;
    private double vy;
    private int standing;
    private int touched;

    /**
     * A ball before its way through the pins. One object serves one thread.
     *
     * @param massKg its mass (kg), above 0
     */
    public Deflection(double massKg) {
        blowShare = (1 + PARTING_SPEED_SHARE) * PIN_KG / (massKg + PIN_KG);
    }

    /**
     * Sends the ball through a full rack.
     *
     * @param arrivalBoard where it would cross the head pin's row
     * @param entryRad entry angle (rad)
     * @return board at which it leaves the last row of pins
     */
    public double exitBoard(double arrivalBoard, double entryRad) {
        vx = StrictMath.sin(entryRad);
        vy = StrictMath.cos(entryRad);
        x = LaneGeometry.boardToMetres(arrivalBoard) - START_M * vx / vy;
        y = -START_M;
        standing = Rack.FULL;
        touched = 0;
        double lastRowM = Rack.depthM(10);
        int pin = next(lastRowM);
        while (pin > 0) {
            strike(pin);
            pin = next(lastRowM);
        }
        return LaneGeometry.metresToBoard(x + vx / vy * (lastRowM - y));
    }

    /**
     * The pins that the ball itself touched on its last way.
     *
     * @return the set, as {@link Rack} writes it
     */
    public int touched() {
        return touched;
    }

    /** The pin that the ball meets next before the last row's line, moved up to it; 0 if there is none. */
    private int next(double lastRowM) {
        int nearest = 0;
        double soonest = vy > 0 ? (lastRowM - y) / vy : 0;
        for (int pin = 1; pin <= 10; pin++) {
            double after = Rack.has(standing, pin) ? timeTo(pin) : Double.POSITIVE_INFINITY;
            if (after >= 0 && after < soonest) {
                soonest = after;
                nearest = pin;
            }
        }
        if (nearest > 0) {
            x += vx * soonest;
            y += vy * soonest;
        }
        return nearest;
    }

    /** Time until the ball touches a pin; infinite if it never does. */
    private double timeTo(int pin) {
        double dx = LaneGeometry.boardToMetres(Rack.board(pin)) - x;
        double dy = Rack.depthM(pin) - y;
        double squareSpeed = vx * vx + vy * vy;
        double toNearest = (dx * vx + dy * vy) / squareSpeed;
        double missSquare = dx * dx + dy * dy - toNearest * toNearest * squareSpeed;
        double reachSquare = REACH_M * REACH_M - missSquare;
        return toNearest > 0 && reachSquare >= 0
                ? toNearest - Math.sqrt(reachSquare / squareSpeed)
                : Double.POSITIVE_INFINITY;
    }

    private void strike(int pin) {
        double nx = (LaneGeometry.boardToMetres(Rack.board(pin)) - x) / REACH_M;
        double ny = (Rack.depthM(pin) - y) / REACH_M;
        double blow = blowShare * (vx * nx + vy * ny);
        vx -= blow * nx;
        vy -= blow * ny;
        standing &= ~Rack.bit(pin);
        touched |= Rack.bit(pin);
    }
}
