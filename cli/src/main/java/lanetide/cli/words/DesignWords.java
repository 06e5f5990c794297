package lanetide.cli.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
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

    /**
     * The designs of an event in words, with the pairs they leave free.
     *
     * @param designs the design of each squad
     * @param event the event
     * @return a sentence for each different design, with its squads before it where there are several
     */
    public static String describe(List<RotationDesign> designs, Event event) {
        Map<RotationDesign, List<String>> squads = new LinkedHashMap<>();
        for (int s = 0; s < designs.size(); s++) {
            squads.computeIfAbsent(designs.get(s), design -> new ArrayList<>())
                    .add(event.squads().get(s).id());
        }
        if (squads.size() == 1) {
            return describe(designs.get(0), event.centre());
        }
        String spare = describe(new Stay(), event.centre())
                .substring(describe(new Stay()).length());
        return squads.entrySet().stream()
                        .map(entry -> (entry.getValue().size() == 1 ? "Squad " : "Squads ")
                                + English.joined(entry.getValue()) + ": " + describe(entry.getKey()))
                        .collect(Collectors.joining(" "))
                + spare;
    }

    private static String way(long step) {
        long pairs = Math.abs(step);
        return pairs + (pairs == 1 ? " pair " : " pairs ") + (step > 0 ? "right" : "left");
    }
}
