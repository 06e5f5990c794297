package lanetide.oilflow.unknown;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lanetide.oilflow.catalogue.DataFile;

/** The unknowns of a module, as its data file {@code unknowns.properties} has them. */
public final class Unknowns {
    private final Map<String, Unknown> byId = new TreeMap<>();

    /**
     * Reads a module's file.
     *
     * @param owner class beside which it lies
     */
    public Unknowns(Class<?> owner) {
        DataFile file = new DataFile(owner, "unknowns.properties");
        for (String id : file.ids()) {
            byId.put(
                    id,
                    new Unknown(
                            id,
                            file.number(id, "usual"),
                            file.number(id, "low"),
                            file.number(id, "high"),
                            file.text(id, "scale").equals("ratio"),
                            file.text(id, "source")));
        }
    }

    /**
     * All of them.
     *
     * @return by id, in alphabetical order
     */
    public List<Unknown> all() {
        return List.copyOf(byId.values());
    }

    /**
     * One of them.
     *
     * @param id its name
     * @return the unknown
     * @throws IllegalArgumentException if there is none of this name
     */
    public Unknown of(String id) {
        Unknown found = byId.get(id);
        if (found == null) {
            throw new IllegalArgumentException("there is no unknown " + id);
        }
        return found;
    }
}
