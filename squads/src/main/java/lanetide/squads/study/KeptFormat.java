package lanetide.squads.study;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Writes what is kept of a playing and reads it back exactly: numbers are kept to the last bit. What is kept is a
 * record, or an array, of numbers, strings, truth values, constants of enums, and of lists, arrays, maps, options and
 * records of these.
 *
 * <p>The form is that of {@link java.io.DataOutput}: big-endian numbers, doubles by their 64 bits, strings as modified
 * UTF-8 with their length before them. A record is its components in the order of their declaration; a list, an array
 * or a map is its size as an int and its items; a constant is its name; what may be missing has a truth value before
 * it, and so has every item of an array of objects.
 */
final class KeptFormat<T> {
    private final Class<T> kind;
    private final Form form;

    /**
     * The form of a kind of things.
     *
     * @throws IllegalArgumentException if one of the kind may hold anything else
     */
    KeptFormat(Class<T> kind) {
        this.kind = kind;
        this.form = form(kind);
    }

    byte[] write(T kept) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            form.writer.write(kept, new DataOutputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Reads what {@link #write} has written. */
    T read(byte[] bytes) {
        try {
            return kind.cast(form.reader.read(new DataInputStream(new ByteArrayInputStream(bytes))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Writer {
        void write(Object value, DataOutputStream out) throws IOException;
    }

    private interface Reader {
        Object read(DataInputStream in) throws IOException;
    }

    /** How things of one type are written and read. */
    private record Form(Writer writer, Reader reader) {}

    private static final Map<Class<?>, Form> SIMPLE = Map.of(
            int.class, new Form((value, out) -> out.writeInt((Integer) value), DataInputStream::readInt),
            long.class, new Form((value, out) -> out.writeLong((Long) value), DataInputStream::readLong),
            double.class, new Form((value, out) -> out.writeDouble((Double) value), DataInputStream::readDouble),
            boolean.class, new Form((value, out) -> out.writeBoolean((Boolean) value), DataInputStream::readBoolean),
            String.class, new Form((value, out) -> out.writeUTF((String) value), in -> in.readUTF()));

    private static final Map<Class<?>, Class<?>> UNBOXED = Map.of(
            Integer.class, int.class, Long.class, long.class, Double.class, double.class, Boolean.class, boolean.class);

    private static Form form(Type type) {
        if (type instanceof ParameterizedType generic) {
            Form[] of = Arrays.stream(generic.getActualTypeArguments())
                    .map(KeptFormat::form)
                    .toArray(Form[]::new);
            return ofMany((Class<?>) generic.getRawType(), of);
        }
        if (!(type instanceof Class<?> plain)) {
            throw unknown(type);
        }
        if (SIMPLE.containsKey(UNBOXED.getOrDefault(plain, plain))) {
            return SIMPLE.get(UNBOXED.getOrDefault(plain, plain));
        }
        if (plain.isRecord()) {
            return record(plain);
        }
        if (plain.isArray()) {
            return array(plain.getComponentType());
        }
        if (plain.isEnum()) {
            return constant(plain);
        }
        if (plain == OptionalDouble.class) {
            return optionalDouble();
        }
        throw unknown(type);
    }

    private static Form ofMany(Class<?> raw, Form[] of) {
        if (raw == List.class) {
            return list(of[0]);
        }
        if (raw == Optional.class) {
            return optional(of[0]);
        }
        if (raw == Map.class) {
            return map(of[0], of[1]);
        }
        throw unknown(raw);
    }

    private static IllegalArgumentException unknown(Type type) {
        return new IllegalArgumentException(type.getTypeName() + " is nothing that can be kept of a playing");
    }

    private static Form list(Form item) {
        return new Form(
                (value, out) -> {
                    List<?> list = (List<?>) value;
                    out.writeInt(list.size());
                    for (Object one : list) {
                        item.writer.write(one, out);
                    }
                },
                in -> {
                    int size = in.readInt();
                    List<Object> list = new ArrayList<>();
                    for (int i = 0; i < size; i++) {
                        list.add(item.reader.read(in));
                    }
                    return List.copyOf(list);
                });
    }

    private static Form map(Form key, Form value) {
        return new Form(
                (map, out) -> {
                    Map<?, ?> all = (Map<?, ?>) map;
                    out.writeInt(all.size());
                    for (Map.Entry<?, ?> entry : all.entrySet()) {
                        key.writer.write(entry.getKey(), out);
                        value.writer.write(entry.getValue(), out);
                    }
                },
                in -> {
                    int size = in.readInt();
                    Map<Object, Object> all = new LinkedHashMap<>();
                    for (int i = 0; i < size; i++) {
                        all.put(key.reader.read(in), value.reader.read(in));
                    }
                    return all;
                });
    }

    private static Form optional(Form item) {
        return new Form(
                (value, out) -> {
                    Optional<?> optional = (Optional<?>) value;
                    out.writeBoolean(optional.isPresent());
                    if (optional.isPresent()) {
                        item.writer.write(optional.get(), out);
                    }
                },
                in -> in.readBoolean() ? Optional.of(item.reader.read(in)) : Optional.empty());
    }

    private static Form optionalDouble() {
        return new Form(
                (value, out) -> {
                    OptionalDouble optional = (OptionalDouble) value;
                    out.writeBoolean(optional.isPresent());
                    if (optional.isPresent()) {
                        out.writeDouble(optional.getAsDouble());
                    }
                },
                in -> in.readBoolean() ? OptionalDouble.of(in.readDouble()) : OptionalDouble.empty());
    }

    private static Form array(Class<?> component) {
        Form item = component.isPrimitive() ? form(component) : orNull(form(component));
        return new Form(
                (value, out) -> {
                    int length = Array.getLength(value);
                    out.writeInt(length);
                    for (int i = 0; i < length; i++) {
                        item.writer.write(Array.get(value, i), out);
                    }
                },
                in -> {
                    int length = in.readInt();
                    Object array = Array.newInstance(component, length);
                    for (int i = 0; i < length; i++) {
                        Array.set(array, i, item.reader.read(in));
                    }
                    return array;
                });
    }

    private static Form orNull(Form item) {
        return new Form(
                (value, out) -> {
                    out.writeBoolean(value != null);
                    if (value != null) {
                        item.writer.write(value, out);
                    }
                },
                in -> in.readBoolean() ? item.reader.read(in) : null);
    }

    private static Form constant(Class<?> kind) {
        return new Form((value, out) -> out.writeUTF(((Enum<?>) value).name()), in -> {
            String name = in.readUTF();
            return Arrays.stream(kind.getEnumConstants())
                    .filter(one -> ((Enum<?>) one).name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IOException(name + " is no " + kind.getSimpleName()));
        });
    }

    private static Form record(Class<?> kind) {
        RecordComponent[] components = kind.getRecordComponents();
        Form[] forms = Arrays.stream(components)
                .map(component -> form(component.getGenericType()))
                .toArray(Form[]::new);
        Method[] accessors =
                Arrays.stream(components).map(RecordComponent::getAccessor).toArray(Method[]::new);
        Constructor<?> constructor = constructor(kind, components);
        // What is kept is private to the study that keeps it.
        constructor.setAccessible(true);
        Arrays.stream(accessors).forEach(accessor -> accessor.setAccessible(true));
        return new Form(
                (value, out) -> {
                    for (int i = 0; i < forms.length; i++) {
                        forms[i].writer.write(component(accessors[i], value), out);
                    }
                },
                in -> {
                    Object[] values = new Object[forms.length];
                    for (int i = 0; i < forms.length; i++) {
                        values[i] = forms[i].reader.read(in);
                    }
                    return made(constructor, values);
                });
    }

    private static Constructor<?> constructor(Class<?> kind, RecordComponent... components) {
        try {
            return kind.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every record has this constructor", e);
        }
    }

    private static Object component(Method accessor, Object of) {
        try {
            return accessor.invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(accessor + " tells nothing", e);
        }
    }

    private static Object made(Constructor<?> constructor, Object... values) throws IOException {
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IOException("no " + constructor.getDeclaringClass().getSimpleName() + " holds this", e);
        }
    }
}
