package lanetide.cli.words;

import java.util.List;
import java.util.Map;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LanePair;
import lanetide.squads.rotation.design.Counter;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.Patterson;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.Searched;
import lanetide.squads.rotation.design.Shuffled;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.rotation.design.Turning;

/** Designs of rotations in words for a tournament director. */
public final class DesignWords {
    private static final Map<RotationDesign, String> WITHOUT_NUMBERS = Map.of(
            new Stay(),
            "Every group stays on its starting pair.",
            new RowComplete(),
            "Everybody moves together, 1 pair left, then 2 right, 3 left and so on, so that groups follow each other evenly.",
            new Patterson(),
            "Everybody moves together, by another distance after every game, so that nobody need follow the same group twice.");

    private DesignWords() {}

    /**
     * A design in words.
     *
     * @param design a design
     * @return one sentence
     */
    public static String describe(RotationDesign design) {
        if (design instanceof Ring ring) {
            String games = ring.everyGames() == 1 ? "game" : ring.everyGames() + " games";
            return "After every " + games + " everybody moves " + way(ring.step()) + ".";
        }
        if (design instanceof Turning turning) {
            return "After every game everybody moves " + way(turning.step())
                    + ", turns back at the last pair over those left out, and turns again at the first.";
        }
        if (design instanceof Counter counter) {
            return "After every game the groups that started on the 2nd, 4th, 6th ... pair move " + way(counter.step())
                    + " and the others " + way(-(long) counter.step()) + ".";
        }
        if (design instanceof Explicit written) {
            return "The pairs are written out game by game, "
                    + English.count(written.pairByGameAndGroup().size(), "game") + " in all.";
        }
        if (design instanceof Shuffled drawn) {
            return "The pairs are drawn by lot for every game (seed " + drawn.seed() + ").";
        }
        if (design instanceof Searched searched) {
            return "The pairs are designed by search, so that groups follow each other evenly, find lanes alike and walk"
                    + " little (seed " + searched.seed() + ").";
        }
        return WITHOUT_NUMBERS.get(design);
    }

    /**
     * A design in words, with the pairs it leaves free.
     *
     * @param design a design
     * @param centre the centre, for its spare pairs
     * @return one or two sentences
     */
    public static String describe(RotationDesign design, Centre centre) {
        List<String> spare = centre.spare().stream().map(LanePair::id).toList();
        String kept = (spare.size() == 1 ? " Pair " : " Pairs ") + String.join(", ", spare)
                + (spare.size() == 1 ? " is" : " are") + " kept spare.";
        return describe(design) + (spare.isEmpty() ? "" : kept);
    }

    private static String way(long step) {
        long pairs = Math.abs(step);
        return pairs + (pairs == 1 ? " pair " : " pairs ") + (step > 0 ? "right" : "left");
    }
}
