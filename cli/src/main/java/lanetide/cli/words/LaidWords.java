package lanetide.cli.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.model.Event;
import lanetide.squads.model.OilTime;
import lanetide.squads.model.Squad;

/** Which lanes squads have, what is laid there and when, in words: where that differs between squads or lanes. */
public final class LaidWords {
    private static final long MINUTE_MS = 60_000;

    private LaidWords() {}

    /**
     * The lanes of squads that do not have all of them.
     *
     * @param event the event
     * @return a sentence for each; none if all have all lanes
     */
    public static List<String> lanes(Event event) {
        return IntStream.range(0, event.squads().size())
                .filter(squad -> !event.plans().get(squad).own().isEmpty())
                .mapToObj(squad -> "Squad " + event.squads().get(squad).id() + " has "
                        + runs(event.plans().get(squad).lanes(event.centre())) + " to itself.")
                .toList();
    }

    /**
     * What squads play on.
     *
     * @param event the event
     * @return a sentence for each squad; none if all play on one pattern
     */
    public static List<String> laid(Event event) {
        return event.patterns().size() == 1
                ? List.of()
                : IntStream.range(0, event.squads().size())
                        .mapToObj(squad ->
                                "Squad " + event.squads().get(squad).id() + " plays on " + onLanes(event, squad) + ".")
                        .toList();
    }

    /**
     * The patterns of a squad, with their lanes where there are several.
     *
     * @param event the event
     * @param squad the squad's place in it
     * @return such as {@code House (lanes 1 to 4) and Sport (lanes 5 to 8)}
     */
    public static String onLanes(Event event, int squad) {
        Map<OilPattern, List<Integer>> lanes = event.plans().get(squad).lanes(event.centre()).stream()
                .collect(Collectors.groupingBy(
                        lane -> event.pattern(squad, lane), LinkedHashMap::new, Collectors.toList()));
        return lanes.size() == 1
                ? lanes.keySet().iterator().next().id()
                : English.joined(lanes.entrySet().stream()
                        .map(entry -> entry.getKey().id() + " (" + runs(entry.getValue()) + ")")
                        .toList());
    }

    /**
     * When lanes are oiled, where somebody says.
     *
     * @param event the event
     * @param time writes a time of day
     * @return a sentence for each squad that does not leave it to the last minute
     */
    public static List<String> oiling(Event event, LongFunction<String> time) {
        List<String> sentences = new ArrayList<>();
        for (Squad squad : event.squads()) {
            OilTime oiling = squad.arrangements().oiling();
            if (!oiling.equals(OilTime.LAST_MINUTE)) {
                List<String> parts = new ArrayList<>();
                oiling.fromMs().ifPresent(fromMs -> parts.add("the machines begin at " + time.apply(fromMs)));
                if (oiling.restMs() > 0) {
                    parts.add("the oil lies " + oiling.restMs() / MINUTE_MS + " min at least");
                }
                sentences.add("Before squad " + squad.id() + " " + English.joined(parts) + ".");
            }
        }
        return sentences;
    }

    /** Lane numbers as runs, such as {@code lanes 1 to 4 and 7}. */
    private static String runs(List<Integer> lanes) {
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < lanes.size(); i++) {
            int from = i;
            while (i + 1 < lanes.size() && lanes.get(i + 1) == lanes.get(i) + 1) {
                i++;
            }
            runs.add(from == i ? String.valueOf(lanes.get(i)) : lanes.get(from) + " to " + lanes.get(i));
        }
        return (lanes.size() == 1 ? "lane " : "lanes ") + English.joined(runs);
    }
}
