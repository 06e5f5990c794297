package lanetide.cli.rotate;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.words.DesignWords;
import lanetide.squads.model.Event;
import lanetide.squads.rotation.design.RotationDesign;

/**
 * What a report says about where rotations come from.
 *
 * @param labels the designs' names, squad by squad
 * @param descriptions the designs in words, squad by squad
 * @param description all of it in words
 * @param spare pairs that are kept spare or are lost, counted from zero
 */
public record RotationNote(
        List<RotationDesigns.Label> labels, List<String> descriptions, String description, Set<Integer> spare) {
    /** Copies the collections. */
    public RotationNote {
        labels = List.copyOf(labels);
        descriptions = List.copyOf(descriptions);
        spare = Set.copyOf(spare);
    }

    /**
     * The note on designs.
     *
     * @param designs the design of each squad
     * @param event the event, for its squads and its spare pairs
     * @return their note
     */
    public static RotationNote of(List<RotationDesign> designs, Event event) {
        return new RotationNote(
                designs.stream().map(RotationDesigns::labelOf).toList(),
                designs.stream()
                        .map(design -> DesignWords.describe(design, event.centre()))
                        .toList(),
                DesignWords.describe(designs, event),
                event.centre().spare().stream()
                        .map(event.centre().pairs()::indexOf)
                        .collect(Collectors.toSet()));
    }

    /** The name of the design of all squads; {@code various} where they differ. */
    RotationDesigns.Label label() {
        return labels.stream().distinct().count() == 1 ? labels.get(0) : new RotationDesigns.Label("various", 0, 0);
    }

    /** The note on rotations that late changes have made out of this design's, for so many squads. */
    RotationNote changed(Set<Integer> unused, int squads) {
        Set<Integer> none = new TreeSet<>(spare);
        none.addAll(unused);
        String words = description + " Then the late changes.";
        return new RotationNote(
                Collections.nCopies(squads, new RotationDesigns.Label("changed", 0, 0)),
                Collections.nCopies(squads, words),
                words,
                none);
    }
}
