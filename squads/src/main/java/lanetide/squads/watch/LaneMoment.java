package lanetide.squads.watch;

/**
 * A lane at a time when it is looked at.
 *
 * @param lane lane number
 * @param squad squad that plays
 * @param afterGame the squad's game just ended on it, from 1; 0 stands for the lane as the squad found it
 * @param gamesOnOil games of groups on this lane's pair since it was last oiled, over all squads
 */
public record LaneMoment(int lane, String squad, int afterGame, int gamesOnOil) {}
