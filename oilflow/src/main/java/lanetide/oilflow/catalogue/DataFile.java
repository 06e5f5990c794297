package lanetide.oilflow.catalogue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeSet;

/** A data file that ships with a class: blocks of {@code id.field = value}. */
public final class DataFile {
    private final String name;
    private final Properties values = new Properties();

    /**
     * Reads a file.
     *
     * @param owner class beside which the file lies
     * @param name its name
     * @throws IllegalArgumentException if there is no such file
     */
    public DataFile(Class<?> owner, String name) {
        this.name = name;
        var stream = owner.getResourceAsStream(name);
        if (stream == null) {
            throw new IllegalArgumentException("there is no data file " + name + " beside " + owner.getName());
        }
        try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            values.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException("data file " + name + " cannot be read", e);
        }
    }

    /**
     * The blocks in the file.
     *
     * @return their ids in alphabetical order
     */
    public SortedSet<String> ids() {
        SortedSet<String> ids = new TreeSet<>();
        for (String key : values.stringPropertyNames()) {
            ids.add(key.substring(0, key.indexOf('.')));
        }
        return ids;
    }

    /**
     * A text value.
     *
     * @param id block
     * @param field field in the block
     * @return the value
     * @throws IllegalArgumentException if the file does not have it
     */
    public String text(String id, String field) {
        String value = values.getProperty(id + "." + field);
        if (value == null) {
            throw new IllegalArgumentException("data file " + name + " has no " + id + "." + field);
        }
        return value;
    }

    /**
     * A number.
     *
     * @param id block
     * @param field field in the block
     * @return the value
     * @throws IllegalArgumentException if the file does not have it or it is not a number
     */
    public double number(String id, String field) {
        return Double.parseDouble(text(id, field));
    }
}
