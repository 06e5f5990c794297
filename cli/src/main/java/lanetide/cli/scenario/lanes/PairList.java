package lanetide.cli.scenario.lanes;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.LanePair;

/** Reads pairs of lanes that are written one by one, such as {@code [7-8, 11-12]}. */
public final class PairList {
    private static final Pattern PAIR = Pattern.compile("(\\d{1,6}) ?- ?(\\d{1,6})");

    private PairList() {}

    /** The pairs in their order, without those that have a notice. */
    public static Set<LanePair> read(Value list) {
        Set<LanePair> pairs = new LinkedHashSet<>();
        List<Value> items = list.list().orElse(List.of());
        for (Value item : items) {
            pair(item).ifPresent(pair -> add(pair, pairs, item));
        }
        if (items.isEmpty() && list.written().equals("a list")) {
            list.refuse(NoticeCode.EMPTY_VALUE, " without a pair; it must name at least one." + list.advice());
        }
        return pairs;
    }

    private static void add(LanePair pair, Set<LanePair> pairs, Value item) {
        Optional<Integer> taken = lanes(pair)
                .filter(lane -> pairs.stream().flatMap(PairList::lanes).anyMatch(lane::equals))
                .findFirst();
        if (taken.isPresent()) {
            item.refuse(
                    NoticeCode.LANE_TWICE,
                    ", but lane " + taken.get() + " already stands in a pair before it; a lane must stand in one"
                            + " pair. Remove or correct one of the two.");
            return;
        }
        warnIfEven(pair, item);
        pairs.add(pair);
    }

    private static Stream<Integer> lanes(LanePair pair) {
        return Stream.of(pair.left(), pair.right());
    }

    /** One pair, such as {@code 7-8}. */
    public static Optional<LanePair> pair(Value value) {
        Optional<String> text = value.text();
        Matcher matcher = PAIR.matcher(text.orElse(""));
        if (!matcher.matches()) {
            text.ifPresent(written ->
                    value.refuse(NoticeCode.BAD_LANES, "; a pair must be two adjoining lanes, such as 7-8."));
            return Optional.empty();
        }
        int left = Integer.parseInt(matcher.group(1));
        int right = Integer.parseInt(matcher.group(2));
        if (left < 1 || right > CentreKeys.MAX_LANE) {
            value.refuse(
                    NoticeCode.OUT_OF_RANGE,
                    "; lanes must be numbered from 1 to " + CentreKeys.MAX_LANE + ", such as 7-8.");
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

    static void warnIfEven(LanePair pair, Value at) {
        if (pair.left() % 2 == 0) {
            at.refuse(
                    NoticeCode.PAIR_STARTS_EVEN,
                    ", so that lane " + pair.left() + " is a left lane; most centres pair an odd lane with the even one"
                            + " on its right. Check the lane numbers.");
        }
    }
}
