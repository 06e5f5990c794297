package lanetide.squads.study;

import java.util.Optional;

/** What playings have given, kept where a later run finds it. Used by several threads at once. */
public interface Checkpoint {
    /**
     * What a playing has given.
     *
     * @param study name of the study in its run
     * @param playing number of the playing in it
     * @return its bytes; empty if it is not known
     */
    Optional<byte[]> find(String study, int playing);

    /**
     * Keeps what a playing has given, before anything is made of it.
     *
     * @param study as above
     * @param playing as above
     * @param bytes what it gave
     */
    void keep(String study, int playing, byte[] bytes);
}
