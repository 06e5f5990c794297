package lanetide.cli.scenario.entries;

import java.util.Optional;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Level;

/**
 * What holds for listed bowlers of whom the list does not say it.
 *
 * @param hands shares of the delivery sides
 * @param styles shares of the playing styles
 * @param levels shares of the levels, for who has neither level nor average; none if every bowler must have one
 * @param covers shares of the strike ball's covers
 * @param tempos shares of the time bowlers take over a shot; none if all take the usual time
 * @param spareCover cover of the spare ball; empty for the usual one
 * @param secondCover cover of a second ball for full racks; empty for none
 */
record TraitShares(
        TraitShare<Hand> hands,
        TraitShare<PlayingStyle> styles,
        TraitShare<Level> levels,
        TraitShare<Coverstock> covers,
        TraitShare<Double> tempos,
        Optional<Coverstock> spareCover,
        Optional<Coverstock> secondCover) {}
