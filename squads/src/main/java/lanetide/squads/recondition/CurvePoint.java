package lanetide.squads.recondition;

import java.util.OptionalDouble;

/**
 * A pair after some games on one oiling.
 *
 * @param games games it has seen, from 1
 * @param windowShiftBoards how far the windows of exit boards have moved since the oiling: mean over lanes and typical
 *     players of the absolute move of the best board (boards)
 * @param windowWidthBoards mean width of the windows (boards); empty if no lane looked at has become so old
 * @param pocketShare share of pocket hits on the best lines, 0 to 1; empty with the width
 * @param paceBoards move of the windows in the last game (boards)
 * @param spreadPins root mean square change of the bowlers' expected scores in that game against lanes that do not
 *     change (pins)
 * @param levelPins mean change of their scores in that game (pins)
 * @param costPerGame cost of a pair's game if all lanes are oiled after so many games
 */
public record CurvePoint(
        int games,
        double windowShiftBoards,
        OptionalDouble windowWidthBoards,
        OptionalDouble pocketShare,
        double paceBoards,
        double spreadPins,
        double levelPins,
        double costPerGame) {}
