package lanetide.squads.recondition;

/**
 * Strip and oil against oiling over, before every squad.
 *
 * @param games games of a squad
 * @param stripSpreadPins mean change of expected scores with stripping (pins a game)
 * @param overSpreadPins the same with oil laid over what is left
 * @param stripCostPerGame cost of a pair's game with stripping
 * @param overCostPerGame the same with oiling over
 * @param stripMinutes time of the machines with stripping (min)
 * @param overMinutes the same with oiling over
 */
public record OilOver(
        int games,
        double stripSpreadPins,
        double overSpreadPins,
        double stripCostPerGame,
        double overCostPerGame,
        double stripMinutes,
        double overMinutes) {}
