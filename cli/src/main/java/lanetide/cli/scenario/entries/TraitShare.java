package lanetide.cli.scenario.entries;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.Range;
import lanetide.squads.model.FieldMix.Share;

/**
 * The shares by which a trait is drawn.
 *
 * @param trait what is drawn
 * @param kinds every kind with its share, together 1; none if the trait is not drawn
 * @param name the name of a kind
 * @param isStated whether the scenario states the shares; else they are usual ones
 * @param <T> what is drawn
 */
record TraitShare<T>(Trait trait, List<Share<T>> kinds, Function<T, String> name, boolean isStated) {
    TraitShare {
        kinds = List.copyOf(kinds);
    }

    /** The shares, such as {@code right 88 %, left 12 %}. */
    String inWords() {
        return kinds.stream()
                .map(kind -> name.apply(kind.kind()) + " " + Range.round(100 * kind.share()) + " %")
                .collect(Collectors.joining(", "));
    }
}
