package lanetide.cli.scenario.key;

import java.util.Optional;

/**
 * One key of a scenario: the one place where its form, limits and default stand. It is declared in a {@link Block} and
 * read by the class of the readers that names it.
 *
 * @param name the key
 * @param form what its value may be
 * @param meaning what it says
 * @param typical usual values, offered where a value is wrong
 * @param otherwise what holds where the key is left out, in words; {@code required} if it must not be
 * @param usual the value that holds where the key is left out; empty if none does
 * @param source where that value comes from, if answers name it among what they rest on
 * @param <T> what its value becomes when it is read
 */
public record Key<T>(
        String name,
        Form<T> form,
        String meaning,
        String typical,
        String otherwise,
        Optional<T> usual,
        Optional<String> source) {
    static final String REQUIRED = "required";

    /** A key is its declaration. Comparing every part would besides have the JVM make some twenty classes at start. */
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /**
     * Whether the key must be there.
     *
     * @return true if a block without it is faulty
     */
    public boolean isRequired() {
        return otherwise.equals(REQUIRED);
    }
}
