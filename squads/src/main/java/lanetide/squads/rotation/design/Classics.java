package lanetide.squads.rotation.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;

/** The designs that are known by rule, for comparison and as the start of a search. */
public final class Classics {

    private Classics() {}

    /**
     * A design and the rotation it gives.
     *
     * @param design the design
     * @param rotation its rotation
     */
    public record Planned(RotationDesign design, Rotation rotation) {}

    /**
     * A design that cannot serve.
     *
     * @param design the design
     * @param reason why not, and what to try, in words
     */
    public record Refused(RotationDesign design, String reason) {}

    /**
     * What the classic designs give for some numbers.
     *
     * @param planned those that can serve, in a fixed order
     * @param refused those that cannot
     */
    public record Choice(List<Planned> planned, List<Refused> refused) {
        /** A choice; the lists are copied. */
        public Choice {
            planned = List.copyOf(planned);
            refused = List.copyOf(refused);
        }
    }

    /**
     * Plans every classic design.
     *
     * @param groups groups that bowl at the same time
     * @param pairs lane pairs in the rotation
     * @param games games each group bowls
     * @return what they give
     * @throws ImpossibleRotationException if {@code groups < 1}, {@code pairs < 1}, {@code games < 1} or {@code groups
     *     > pairs}
     */
    public static Choice of(int groups, int pairs, int games) {
        PlanSize.requirePlayable(groups, pairs, games);
        List<Planned> planned = new ArrayList<>();
        List<Refused> refused = new ArrayList<>();
        for (RotationDesign design : designs(pairs)) {
            try {
                planned.add(new Planned(design, design.plan(groups, pairs, games)));
            } catch (ImpossibleRotationException e) {
                refused.add(new Refused(design, e.getMessage()));
            }
        }
        return new Choice(planned, refused);
    }

    /** The first of the best under an objective. */
    static Planned best(int groups, int pairs, int games, SearchObjective objective) {
        return of(groups, pairs, games).planned().stream()
                .min(Comparator.comparingDouble(planned -> objective.cost(planned.rotation())))
                .orElseThrow();
    }

    private static List<RotationDesign> designs(int pairs) {
        List<RotationDesign> designs = new ArrayList<>();
        designs.add(new Stay());
        for (int step = 1; step <= Math.min(4, pairs - 1); step++) {
            designs.add(new Ring(step, 1));
        }
        designs.add(new Turning(2));
        designs.add(new Counter(1));
        designs.add(new Counter(2));
        designs.add(new RowComplete());
        designs.add(new Patterson());
        return designs;
    }
}
