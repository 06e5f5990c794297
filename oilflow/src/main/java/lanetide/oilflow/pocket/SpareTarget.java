package lanetide.oilflow.pocket;

/**
 * Where to roll a spare ball.
 *
 * @param board board from the gutter on the delivery side
 * @param depthM how far behind the head pin's row the ball should be there (m)
 */
public record SpareTarget(double board, double depthM) {}
