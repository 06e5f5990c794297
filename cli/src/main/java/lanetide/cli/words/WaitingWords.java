package lanetide.cli.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanetide.squads.change.WaitingList.Waiting;

/** Who waits for a place, in words. */
public final class WaitingWords {
    private WaitingWords() {}

    /**
     * Who waits.
     *
     * @param waiting in order
     * @return a sentence for each squad
     */
    public static List<String> of(List<Waiting> waiting) {
        Map<String, List<String>> bySquad = waiting.stream()
                .collect(Collectors.groupingBy(
                        Waiting::squad,
                        LinkedHashMap::new,
                        Collectors.mapping(one -> one.bowler().id(), Collectors.toList())));
        return bySquad.entrySet().stream()
                .map(squad -> "Waiting for a place in squad " + squad.getKey() + ", in this order: "
                        + String.join(", ", squad.getValue()) + ".")
                .toList();
    }
}
