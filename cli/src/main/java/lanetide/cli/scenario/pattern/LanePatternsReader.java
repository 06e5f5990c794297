package lanetide.cli.scenario.pattern;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.lanes.LaneRange;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.lanes.PairList;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.model.LanePair;

/**
 * Reads which lanes are laid with which pattern.
 *
 * @param patterns the patterns there are
 * @param lanes the lanes there are: the centre's, or a squad's own
 * @param whose whose lanes they are, in words
 */
public record LanePatternsReader(NamedPatterns patterns, Lanes lanes, String whose) {
    private static final List<String> WORDS = List.of("odd pairs", "even pairs", "left lanes", "right lanes");

    /** The patterns by lane number; lanes that are not named are missing. */
    public Map<Integer, OilPattern> read(Section section, Key<Void> key) {
        Map<Integer, OilPattern> byLane = new LinkedHashMap<>();
        for (Section item : section.blocks(key)) {
            Optional<OilPattern> pattern = patterns.find(item, EventKeys.LAID);
            item.value(EventKeys.LAID_ON).ifPresent(value -> {
                for (int lane : lanes(value)) {
                    if (byLane.containsKey(lane)) {
                        value.say(
                                NoticeCode.LANE_TWICE,
                                String.valueOf(lane),
                                value.path() + " names lane " + lane
                                        + ", which has a pattern already; a lane must have one. Name it once.");
                    } else {
                        pattern.ifPresent(known -> byLane.put(lane, known));
                    }
                }
            });
        }
        return byLane;
    }

    private List<Integer> lanes(Value value) {
        String written = value.plain();
        if (WORDS.contains(written)) {
            return IntStream.range(0, lanes.pairs().size())
                    .boxed()
                    .flatMap(pair -> byWords(written, pair))
                    .toList();
        }
        if (value.isScalar() && !written.matches("\\d{1,6} to \\d{1,6}")) {
            value.mustBe(
                    NoticeCode.BAD_LANES,
                    "a range such as `1 to 8`, a list of lanes and pairs, or one of " + String.join(", ", WORDS),
                    "");
            return List.of();
        }
        if (value.isScalar()) {
            return LaneRange.read(value).stream()
                    .flatMap(pair -> Stream.of(pair.left(), pair.right()))
                    .filter(lane -> isThere(lane, value))
                    .toList();
        }
        return value.list().orElse(List.of()).stream()
                .flatMap(item -> listed(item).filter(lane -> isThere(lane, item)))
                .toList();
    }

    private Stream<Integer> byWords(String words, int index) {
        LanePair pair = lanes.pairs().get(index);
        boolean isOdd = index % 2 == 0;
        return switch (words) {
            case "odd pairs" -> isOdd ? Stream.of(pair.left(), pair.right()) : Stream.of();
            case "even pairs" -> isOdd ? Stream.of() : Stream.of(pair.left(), pair.right());
            case "left lanes" -> Stream.of(pair.left());
            default -> Stream.of(pair.right());
        };
    }

    /** A lane by its number, or both of a pair. */
    private static Stream<Integer> listed(Value item) {
        return item.plain().matches("\\d{1,6}")
                ? Stream.of(Integer.parseInt(item.plain()))
                : PairList.pair(item).stream().flatMap(pair -> Stream.of(pair.left(), pair.right()));
    }

    private boolean isThere(int lane, Value at) {
        if (lanes.pairs().isEmpty() || has(lanes.pairs(), lane)) {
            return !lanes.pairs().isEmpty();
        }
        boolean isClosed = has(List.copyOf(lanes.closed()), lane);
        at.refuse(
                isClosed ? NoticeCode.PAIR_NOT_IN_USE : NoticeCode.UNKNOWN_LANE,
                ", but lane " + lane
                        + (isClosed
                                ? " is closed; a pattern must be laid on lanes in use. Leave it out."
                                : " is not among " + whose + "; a pattern must be laid on those. Correct the number."));
        return false;
    }

    private static boolean has(List<LanePair> pairs, int lane) {
        return pairs.stream().anyMatch(pair -> pair.holds(lane));
    }
}
