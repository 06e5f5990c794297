package lanetide.squads.rotation.design;

import lanetide.squads.rotation.Rotation;

/** Every group bowls all its games on the pair it starts on. */
public record Stay() implements RotationDesign {

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        return Rotation.tabulate(groups, pairs, games, (game, group) -> group);
    }
}
