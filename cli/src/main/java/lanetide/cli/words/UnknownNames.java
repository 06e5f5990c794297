package lanetide.cli.words;

import java.util.Map;

/** What is not known, as people call it. */
public final class UnknownNames {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("absorption", "how fast covers take in oil"),
            Map.entry("axis-power", "the axis of power players"),
            Map.entry("axis-straight", "the axis of straight players"),
            Map.entry("axis-stroker", "the axis of strokers"),
            Map.entry("axis-tweener", "the axis of tweeners"),
            Map.entry("carry-best", "how well the best hit carries"),
            Map.entry("carry-fall", "how fast carry falls away from the best hit"),
            Map.entry("cover-step", "how far covers differ in friction"),
            Map.entry("coverage", "how well thin oil reaches a ball"),
            Map.entry("dry-friction", "friction of the dry lane"),
            Map.entry("end-floor", "oil at the end of the pattern"),
            Map.entry("flare-odds", "how far tracks flare"),
            Map.entry("fluid-friction", "friction under thick oil"),
            Map.entry("head-decay", "how fast the pattern thins from the heads"),
            Map.entry("launch-power", "the launch angle of power players"),
            Map.entry("launch-straight", "the launch angle of straight players"),
            Map.entry("launch-stroker", "the launch angle of strokers"),
            Map.entry("launch-tweener", "the launch angle of tweeners"),
            Map.entry("roughness-share", "how far roughness stands out of the oil"),
            Map.entry("surface-step", "how far surfaces differ in friction"),
            Map.entry("towel-share", "how much oil a towel leaves"),
            Map.entry("viscosity", "how thick the oil is at the lane's temperature"),
            Map.entry("arrows-scatter", "how far shots scatter at the arrows"),
            Map.entry("dead-band", "how small a miss makes bowlers move"),
            Map.entry("deeper", "how far bowlers expect a game to move them in"),
            Map.entry("drift", "how fast bowlers reckon that lines go off"),
            Map.entry("first-shot", "time over a first ball"),
            Map.entry("form", "how much form changes from game to game"),
            Map.entry("friction-law", "how friction falls with the film"),
            Map.entry("gain", "how much of a miss a move takes out"),
            Map.entry("lane-oil", "how far a machine's oil differs from lane to lane"),
            Map.entry("lane-tilt", "how far lanes are out of level"),
            Map.entry("others", "how little others' balls tell"),
            Map.entry("patience", "how long bowlers wait before they move again"),
            Map.entry("release-scatter", "how far speed and revs scatter"),
            Map.entry("settling", "time to get ready on a new pair"),
            Map.entry("sight", "how badly bowlers read where a ball met the pins"),
            Map.entry("spare-shot", "time over a spare"),
            Map.entry("told", "how little the last squad's word is worth"));

    private UnknownNames() {}

    /**
     * An unknown in words.
     *
     * @param id its name
     * @return what people call it, to go on with in a sentence
     * @throws IllegalArgumentException if it has no words
     */
    public static String of(String id) {
        String words = WORDS.get(id);
        if (words == null) {
            throw new IllegalArgumentException("there are no words for the unknown " + id);
        }
        return words;
    }
}
