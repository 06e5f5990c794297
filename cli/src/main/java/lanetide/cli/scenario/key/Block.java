package lanetide.cli.scenario.key;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** A block of a scenario and its keys, in the order a file usually has them: the reader knows no others. */
public final class Block {
    private final String path;
    private final List<Key<?>> keys = new ArrayList<>();

    /** A block at a path; empty for the file itself. */
    Block(String path) {
        this.path = path;
    }

    /**
     * Where the block stands.
     *
     * @return its path in the file, empty for the file itself
     */
    public String path() {
        return path;
    }

    /**
     * The path of a key in this block.
     *
     * @param key one of its keys
     * @return for example {@code pattern.length}
     */
    public String path(Key<?> key) {
        return path.isEmpty() ? key.name() : path + "." + key.name();
    }

    /**
     * The keys the reader knows in this block.
     *
     * @return in the order a file usually has them
     */
    public List<Key<?>> keys() {
        return Collections.unmodifiableList(keys);
    }

    /**
     * The names of these keys.
     *
     * @return in the same order
     */
    public List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    /**
     * Describes a key.
     *
     * @param name the key's name
     * @return the key, empty if this block has none of that name
     */
    public Optional<Key<?>> key(String name) {
        return keys.stream().filter(key -> key.name().equals(name)).findFirst();
    }

    /** Declares a key that must be there. */
    <T> Key<T> required(String name, Form<T> form, String meaning, String typical) {
        return add(new Key<>(name, form, meaning, typical, Key.REQUIRED, Optional.empty(), Optional.empty()));
    }

    /** Declares a key that may be left out; what holds then is in words only. */
    <T> Key<T> optional(String name, Form<T> form, String meaning, String typical, String otherwise) {
        return add(new Key<>(name, form, meaning, typical, otherwise, Optional.empty(), Optional.empty()));
    }

    /** Declares a key for which a value holds where it is left out; without typical values that is the typical one. */
    <T> Key<T> usual(String name, Form<T> form, String meaning, String typical, T value) {
        return add(withDefault(name, form, meaning, typical, value, Optional.empty()));
    }

    /** Declares such a key of which answers say that they rest on it, and where its value comes from. */
    <T> Key<T> assumed(String name, Form<T> form, String meaning, String typical, T value, String source) {
        return add(withDefault(name, form, meaning, typical, value, Optional.of(source)));
    }

    /** Declares a key of another block here too. */
    <T> Key<T> add(Key<T> key) {
        keys.add(key);
        return key;
    }

    private static <T> Key<T> withDefault(
            String name, Form<T> form, String meaning, String typical, T value, Optional<String> source) {
        String text = form.write(value);
        return new Key<>(name, form, meaning, typical.isEmpty() ? text : typical, text, Optional.of(value), source);
    }
}
