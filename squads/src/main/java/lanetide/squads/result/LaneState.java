package lanetide.squads.result;

import java.util.List;

/**
 * One lane after a game.
 *
 * @param lane lane number
 * @param squad squad that played
 * @param afterGame the squad's game just ended on it, from 1; games in which its pair stood empty have no state. 0
 *     stands for the lane as the squad found it before practice
 * @param gamesOnOil games of groups on this lane's pair since it was last oiled, over all squads; a lane sees half of
 *     each
 * @param volumeMl oil on the lane (mL)
 * @param headUnits peak of the mean film over the first 15 ft, by board (units of oil): what is left of the heads where
 *     they are thinned most is {@code headUnitsLow}
 * @param headUnitsLow film over the first 15 ft on the most worn board between the tapers (units of oil)
 * @param carrydownMl oil past the pattern's end (mL)
 * @param windows exit windows by style and hand; empty where they were not asked for
 */
public record LaneState(
        int lane,
        String squad,
        int afterGame,
        int gamesOnOil,
        double volumeMl,
        double headUnits,
        double headUnitsLow,
        double carrydownMl,
        List<StyleWindow> windows) {
    /** Copies the list. */
    public LaneState {
        windows = List.copyOf(windows);
    }
}
