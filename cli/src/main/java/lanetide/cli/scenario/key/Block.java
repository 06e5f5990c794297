package lanetide.cli.scenario.key;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** A block of a scenario and its keys, in the order a file usually has them: the reader knows no others. */
public final class Block {
    private final String path;
    private final String name;
    private final List<Key<?>> keys = new ArrayList<>();

    /** A block at a path; empty for the file itself. */
    Block(String path) {
        this(path, path);
    }

    /** A block under another name than its path, where another block may stand in its place. */
    Block(String path, String name) {
        this.path = path;
        this.name = name;
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
     * What it is called: no other block is called so.
     *
     * @return its path, unless several blocks may stand there
     */
    public String name() {
        return name;
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

    /** Begins to declare a key; what holds where it is left out ends it. */
    <T> Declared<T> key(String name, Form<T> form, String meaning) {
        return new Declared<>(this, name, form, meaning);
    }

    /** Declares a key of another block here too. */
    <T> Key<T> add(Key<T> key) {
        keys.add(key);
        return key;
    }

    /** A key of which is still to be said what holds where it is left out. */
    record Declared<T>(Block block, String name, Form<T> form, String meaning) {
        /** It must be there. */
        Key<T> required(String typical) {
            return optional(typical, Key.REQUIRED);
        }

        /** It may be left out; what holds then is in words only. */
        Key<T> optional(String typical, String otherwise) {
            return key(typical, otherwise, Optional.empty(), Optional.empty());
        }

        /** A value holds where it is left out, which is the typical one too. */
        Key<T> usual(T value) {
            return usual(form.write(value), value);
        }

        /** A value holds where it is left out. */
        Key<T> usual(String typical, T value) {
            return key(typical, form.write(value), Optional.of(value), Optional.empty());
        }

        /** The typical value holds where it is left out, and answers say that they rest on it. */
        Key<T> assumed(T value, String source) {
            return assumed(form.write(value), value, source);
        }

        /** A value holds where it is left out, and answers say that they rest on it. */
        Key<T> assumed(String typical, T value, String source) {
            return key(typical, form.write(value), Optional.of(value), Optional.of(source));
        }

        private Key<T> key(String typical, String otherwise, Optional<T> usual, Optional<String> source) {
            return block.add(new Key<>(name, form, meaning, typical, otherwise, usual, source));
        }
    }
}
