package lanetide.cli.scenario.lanes;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.LanePair;

/** Reads a range of lanes, such as {@code 1 to 24}, and pairs them from the left. */
public final class LaneRange {
    private static final Pattern LANES = Pattern.compile("(\\d{1,6}) to (\\d{1,6})");

    private LaneRange() {}

    /** The pairs; none, and a notice, if the range is wrong. */
    public static List<LanePair> read(Value lanes) {
        Optional<String> text = lanes.text();
        Matcher matcher = LANES.matcher(text.orElse(""));
        if (!matcher.matches()) {
            if (text.isPresent() && !text.get().isBlank()) {
                lanes.mustBe(NoticeCode.BAD_LANES, "the first and the last lane, such as `1 to 24`", "");
            }
            return List.of();
        }
        return pairs(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)), lanes);
    }

    private static List<LanePair> pairs(int first, int last, Value lanes) {
        if (first < 1 || last > CentreKeys.MAX_LANE || last <= first) {
            lanes.refuse(
                    NoticeCode.OUT_OF_RANGE,
                    "; lanes must run upward from 1 to at most " + CentreKeys.MAX_LANE + ", such as `1 to 24`.");
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
        PairList.warnIfEven(new LanePair(first, first + 1), lanes);
        return IntStream.iterate(first, left -> left < last, left -> left + 2)
                .mapToObj(left -> new LanePair(left, left + 1))
                .toList();
    }
}
