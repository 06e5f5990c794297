package lanetide.cli.rotate;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.words.DesignWords;
import lanetide.squads.model.Centre;
import lanetide.squads.rotation.design.RotationDesign;

/**
 * What a report says about where rotations come from.
 *
 * @param label the design's name
 * @param description the design in words
 * @param spare pairs that are kept spare or are lost, counted from zero
 */
public record RotationNote(RotationDesigns.Label label, String description, Set<Integer> spare) {
    /** Copies the set. */
    public RotationNote {
        spare = Set.copyOf(spare);
    }

    /**
     * The note on a design.
     *
     * @param design the design
     * @param centre the centre, for its spare pairs
     * @return its note
     */
    public static RotationNote of(RotationDesign design, Centre centre) {
        return new RotationNote(
                RotationDesigns.labelOf(design),
                DesignWords.describe(design, centre),
                centre.spare().stream().map(centre.pairs()::indexOf).collect(Collectors.toSet()));
    }

    /** The note on rotations that late changes have made out of this design's. */
    RotationNote changed(Set<Integer> unused) {
        Set<Integer> none = new TreeSet<>(spare);
        none.addAll(unused);
        return new RotationNote(
                new RotationDesigns.Label("changed", 0, 0), description + " Then the late changes.", none);
    }
}
