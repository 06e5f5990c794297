package lanetide.squads.rotation;

import java.util.function.IntFunction;

/**
 * What groups and pairs are called in a sentence.
 *
 * @param group the name of a group counted from zero, worded to stand inside a sentence
 * @param pair the name of a pair counted from zero, worded likewise
 */
public record RotationNames(IntFunction<String> group, IntFunction<String> pair) {

    /**
     * Plain numbers counted from one.
     *
     * @return names such as "group 1" and "pair 1"
     */
    public static RotationNames numbered() {
        return new RotationNames(group -> "group " + (group + 1), pair -> "pair " + (pair + 1));
    }
}
