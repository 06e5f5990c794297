package lanetide.squads.unknown;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lanetide.oilflow.catalogue.DataFile;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.model.Event;

/**
 * The sets of values that published facts do not rule out, equally likely. Their order is such that the first few, of
 * any number, are spread like all.
 */
public final class ValueSets {
    /** Most sets that a study takes. */
    public static final int MOST_IN_A_STUDY = 25;

    private ValueSets() {}

    /**
     * How many sets the rounds of a study are shared among: each set is to be met twice at least, so that luck can be
     * told from what is not known.
     *
     * @param rounds independent rounds of luck, at least 1
     * @return the number of sets; 1 if there are too few rounds, and then all values are as usual
     */
    public static int inStudy(int rounds) {
        return Math.max(1, Math.min(MOST_IN_A_STUDY, rounds / 2));
    }

    /**
     * The set of a round in a study that goes through its sets in turn.
     *
     * @param round number of the round, from 0
     * @param sets number of sets, at least 1
     * @return number of a shipped set, or 0 for the usual values if there is one set
     */
    public static int ofRound(int round, int sets) {
        return sets == 1 ? 0 : 1 + round % sets;
    }

    /**
     * A shipped set.
     *
     * @param number its number from 1, or 0 for the usual values
     * @return the set
     * @throws IllegalArgumentException if there is none of this number
     */
    public static ValueSet shipped(int number) {
        if (number == 0) {
            return ValueSet.USUAL;
        }
        if (number < 0 || number > Shipped.ALL.size()) {
            throw new IllegalArgumentException(
                    "there is no set of values " + number + "; there are " + Shipped.ALL.size());
        }
        return Shipped.ALL.get(number - 1);
    }

    /**
     * The sets under which an event is played: those that its centre's measurements leave, or those that ship.
     *
     * @param event the event
     * @return the sets, equally likely, the first few spread like all
     */
    public static List<ValueSet> of(Event event) {
        List<ValueSet> fitted = event.centre().findings().sets();
        return fitted.isEmpty() ? Shipped.ALL : fitted;
    }

    /**
     * One of the sets under which an event is played.
     *
     * @param event the event
     * @param number its number from 1, or 0 for the one that stands for all: the usual values, or the first of those
     *     that were fitted
     * @return the set
     * @throws IllegalArgumentException if there is none of this number
     */
    public static ValueSet of(Event event, int number) {
        List<ValueSet> fitted = event.centre().findings().sets();
        return fitted.isEmpty() ? shipped(number) : fitted.get(Math.max(1, number) - 1);
    }

    /**
     * All shipped sets.
     *
     * @return the sets in order of their numbers
     */
    public static List<ValueSet> shipped() {
        return Shipped.ALL;
    }

    /**
     * How many sets ship with the program.
     *
     * @return their number
     */
    public static int count() {
        return Shipped.ALL.size();
    }

    /**
     * What the shipped sets are known by: other sets, another mark.
     *
     * @return SHA-256 (FIPS 180-4) of their unknowns and values, in lower-case hexadecimal
     */
    public static String mark() {
        MessageDigest digest;
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256, which every Java platform must provide, is missing", e);
        }
        Shipped.ALL.forEach(set -> digest.update(set.values().toString().getBytes(StandardCharsets.UTF_8)));
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Read once, and only where sets are asked for. */
    private static final class Shipped {
        private static final List<ValueSet> ALL = read();

        private static List<ValueSet> read() {
            DataFile file = new DataFile(ValueSets.class, "value-sets.properties");
            String[] names = file.text("unknowns", "names").split(" ", -1);
            List<ValueSet> all = new ArrayList<>();
            for (String id : file.ids()) {
                if (!id.equals("unknowns")) {
                    all.add(set(
                            Integer.parseInt(id), names, file.text(id, "values").split(" ", -1)));
                }
            }
            return List.copyOf(all);
        }

        private static ValueSet set(int number, String[] names, String[] values) {
            Map<String, Double> byName = new TreeMap<>();
            for (int i = 0; i < names.length; i++) {
                byName.put(names[i], Double.parseDouble(values[i]));
            }
            return new ValueSet(number, byName);
        }
    }
}
