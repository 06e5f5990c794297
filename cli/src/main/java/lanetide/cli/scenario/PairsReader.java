package lanetide.cli.scenario;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lanetide.squads.model.LanePair;

/** Reads pairs of lanes, from a range or one by one. */
final class PairsReader {
    /** Highest lane number. */
    static final int MOST_LANES = 200;

    private static final Pattern LANES = Pattern.compile("(\\d{1,6}) to (\\d{1,6})");
    private static final Pattern PAIR = Pattern.compile("(\\d{1,6}) ?- ?(\\d{1,6})");

    private PairsReader() {}

    /** The pairs in use, from left to right; with a notice if they are wrong. */
    static List<LanePair> pairs(Section section) {
        Optional<Value> listed = section.get("pairs");
        if (section.has("lanes") && listed.isPresent()) {
            listed.get()
                    .say(
                            NoticeCode.CONFLICTING_KEYS,
                            "",
                            "Both `lanes` and `pairs` are given; the lanes must come from one of the two. Remove the other.");
            return List.of();
        }
        if (listed.isPresent()) {
            section.get("closed")
                    .ifPresent(closed -> closed.say(
                            NoticeCode.CONFLICTING_KEYS,
                            "",
                            "`closed` goes with `lanes`, but `pairs` is given; a closed pair must be left out of `pairs`. Remove"
                                    + " `closed`."));
            return new ArrayList<>(pairList(listed.get()));
        }
        return section.require("lanes")
                .map(lanes -> range(lanes, closed(section)))
                .orElse(List.of());
    }

    /** The pairs kept free, from left to right; with a notice if one of them is in use. */
    static List<LanePair> spares(Section section, List<LanePair> inUse) {
        Optional<Value> listed = section.get("spares");
        List<LanePair> spares =
                new ArrayList<>(listed.map(PairsReader::pairList).orElse(Set.of()));
        for (LanePair spare : spares) {
            boolean overlaps = inUse.stream()
                    .anyMatch(pair -> pair.left() == spare.left()
                            || pair.right() == spare.left()
                            || pair.left() == spare.right());
            if (overlaps) {
                listed.get()
                        .say(
                                NoticeCode.LANE_TWICE,
                                spare.id(),
                                listed.get().path() + " names pair " + spare.id()
                                        + ", but a lane of it is in use already; a spare pair must be kept free. Take it out"
                                        + " of one of the two.");
            }
        }
        return spares;
    }

    private static Set<LanePair> closed(Section section) {
        return section.get("closed").map(PairsReader::pairList).orElse(Set.of());
    }

    /** Which of the centre's pairs are in use; with a notice if a spare pair is none of them. */
    static Lanes lanes(Section section, List<LanePair> pairs) {
        Set<LanePair> closed =
                section.get("closed").map(PairsReader::quietPairs).orElse(Set.of());
        Set<LanePair> spare = section.get("spare").map(PairsReader::pairList).orElse(Set.of());
        section.get("spare").ifPresent(value -> checkSpare(value, spare, closed, pairs));
        return new Lanes(pairs, closed, spare);
    }

    private static void checkSpare(Value value, Set<LanePair> spare, Set<LanePair> closed, List<LanePair> pairs) {
        for (LanePair pair : spare) {
            if (closed.contains(pair)) {
                value.say(
                        NoticeCode.PAIR_NOT_IN_USE,
                        pair.id(),
                        value.path() + " names " + pair.id()
                                + ", but that pair is closed; a spare pair must be in use. Remove it from one of the two.");
            } else if (!pairs.contains(pair)) {
                value.say(
                        NoticeCode.UNKNOWN_PAIR,
                        pair.id(),
                        value.path() + " names " + pair.id() + ", which is no pair of the centre. Its pairs are "
                                + pairs.stream().map(LanePair::id).collect(Collectors.joining(", ")) + ".");
            }
        }
        if (spare.containsAll(pairs)) {
            value.say(
                    NoticeCode.BAD_LANES,
                    "",
                    value.path() + " keeps all pairs spare; at least one must have a group. Leave one out.");
        }
    }

    /** A list that has been read before, without its notices again. */
    private static Set<LanePair> quietPairs(Value value) {
        Set<LanePair> pairs = new LinkedHashSet<>();
        for (Value item : value.list().orElse(List.of())) {
            Matcher matcher = PAIR.matcher(item.plain());
            if (matcher.matches()) {
                int left = Integer.parseInt(matcher.group(1));
                int right = Integer.parseInt(matcher.group(2));
                if (left >= 1 && right == left + 1) {
                    pairs.add(new LanePair(left, right));
                }
            }
        }
        return pairs;
    }

    private static List<LanePair> range(Value lanes, Set<LanePair> closed) {
        Matcher matcher = LANES.matcher(lanes.text().orElse(""));
        if (!matcher.matches()) {
            if (!lanes.written().isBlank() && lanes.text().isPresent()) {
                lanes.refuse(NoticeCode.BAD_LANES, "; it must be the first and the last lane, such as `1 to 24`.");
            }
            return List.of();
        }
        int first = Integer.parseInt(matcher.group(1));
        int last = Integer.parseInt(matcher.group(2));
        if (first < 1 || last > MOST_LANES || last <= first) {
            lanes.refuse(
                    NoticeCode.OUT_OF_RANGE,
                    "; lanes must run upward from 1 to at most " + MOST_LANES + ", such as `1 to 24`.");
            return List.of();
        }
        if ((last - first) % 2 == 0) {
            lanes.refuse(
                    NoticeCode.LANES_ODD,
                    ", which is " + (last - first + 1) + " lanes and leaves lane " + last
                            + " without a partner; the number of lanes must be even. Try `" + first + " to "
                            + (last - 1)
                            + "`.");
            return List.of();
        }
        return without(closed, pairsOf(first, last, lanes), lanes);
    }

    private static List<LanePair> pairsOf(int first, int last, Value lanes) {
        List<LanePair> pairs = new ArrayList<>();
        for (int left = first; left < last; left += 2) {
            pairs.add(new LanePair(left, left + 1));
        }
        warnIfEven(pairs.get(0), lanes);
        return pairs;
    }

    private static List<LanePair> without(Set<LanePair> closed, List<LanePair> pairs, Value lanes) {
        for (LanePair pair : closed) {
            if (!pairs.remove(pair)) {
                lanes.refuse(
                        NoticeCode.UNKNOWN_PAIR,
                        ", and the closed pair " + pair.id() + " is not among its pairs ("
                                + pairs.stream().map(LanePair::id).collect(Collectors.joining(", "))
                                + "). Correct the range or the closed pair.");
            }
        }
        if (pairs.isEmpty()) {
            lanes.refuse(NoticeCode.BAD_LANES, ", and all its pairs are closed; at least one must be in use.");
        }
        return pairs;
    }

    private static Set<LanePair> pairList(Value value) {
        Set<LanePair> pairs = new LinkedHashSet<>();
        Set<Integer> lanes = new LinkedHashSet<>();
        List<Value> items = value.list().orElse(List.of());
        for (Value item : items) {
            pair(item).ifPresent(pair -> addOnce(pair, pairs, lanes, item));
        }
        if (items.isEmpty() && value.written().equals("a list")) {
            value.refuse(NoticeCode.EMPTY_VALUE, " without a pair; it must name at least one." + value.advice());
        }
        return pairs;
    }

    private static void addOnce(LanePair pair, Set<LanePair> pairs, Set<Integer> lanes, Value item) {
        OptionalInt taken = lanes.contains(pair.left())
                ? OptionalInt.of(pair.left())
                : lanes.contains(pair.right()) ? OptionalInt.of(pair.right()) : OptionalInt.empty();
        if (taken.isPresent()) {
            item.refuse(
                    NoticeCode.LANE_TWICE,
                    ", but lane " + taken.getAsInt() + " already stands in a pair before it; a lane must stand in one"
                            + " pair. Remove or correct one of the two.");
            return;
        }
        warnIfEven(pair, item);
        pairs.add(pair);
        lanes.add(pair.left());
        lanes.add(pair.right());
    }

    /** One pair, such as {@code 7-8}. */
    static Optional<LanePair> pair(Value value) {
        Optional<String> text = value.text();
        Matcher matcher = PAIR.matcher(text.orElse(""));
        if (!matcher.matches()) {
            text.ifPresent(written ->
                    value.refuse(NoticeCode.BAD_LANES, "; a pair must be two adjoining lanes, such as 7-8."));
            return Optional.empty();
        }
        int left = Integer.parseInt(matcher.group(1));
        int right = Integer.parseInt(matcher.group(2));
        if (left < 1 || right > MOST_LANES) {
            value.refuse(
                    NoticeCode.OUT_OF_RANGE, "; lanes must be numbered from 1 to " + MOST_LANES + ", such as 7-8.");
            return Optional.empty();
        }
        if (right != left + 1) {
            value.refuse(
                    NoticeCode.LANES_NOT_ADJOINING,
                    "; the second lane of a pair must be one above the first. Try " + left + "-" + (left + 1) + ".");
            return Optional.empty();
        }
        return Optional.of(new LanePair(left, right));
    }

    private static void warnIfEven(LanePair pair, Value at) {
        if (pair.left() % 2 == 0) {
            at.refuse(
                    NoticeCode.PAIR_STARTS_EVEN,
                    ", so that lane " + pair.left() + " is a left lane; most centres pair an odd lane with the even one"
                            + " on its right. Check the lane numbers.");
        }
    }
}
