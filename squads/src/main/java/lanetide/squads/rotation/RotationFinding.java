package lanetide.squads.rotation;

/** Something a director should know about a rotation. */
public sealed interface RotationFinding permits Collision, RepeatedVisit, SolePredecessor {

    /**
     * The kind of finding; never changes between versions.
     *
     * @return lower-case words joined by hyphens
     */
    String code();

    /**
     * The finding in words.
     *
     * @param names what groups and pairs are called; games are numbered from one
     * @return one sentence
     */
    String sentence(RotationNames names);

    /**
     * The finding in words, groups and pairs numbered from one.
     *
     * @return one sentence
     */
    default String sentence() {
        return sentence(RotationNames.numbered());
    }
}
