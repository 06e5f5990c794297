package lanetide.squads.bowler;

/**
 * What a bowler sees of a ball at a full rack that reached the pins.
 *
 * @param arrivalBoard where he thinks it met the pins
 * @param missAtArrowsBoards how far his release missed the arrow; the ball's own early hook is none of his faults
 * @param entryRad the angle at which he thinks it met the pins (rad)
 */
public record Sight(double arrivalBoard, double missAtArrowsBoards, double entryRad) {}
