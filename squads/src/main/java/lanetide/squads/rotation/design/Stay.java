package lanetide.squads.rotation.design;

import java.util.OptionalInt;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;

/** Every group bowls all its games on the pair it starts on. */
public record Stay() implements RotationDesign {

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        return Rotation.tabulate(groups, pairs, games, (game, group) -> group);
    }

    @Override
    public OptionalInt maxGamesWithoutRepeat(int pairs) {
        PlanSize.requirePairs(pairs);
        return OptionalInt.empty();
    }
}
