package lanetide.cli.fairness;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.words.LaidWords;
import lanetide.squads.model.Event;

/** What to keep in mind of a verdict on squads that do not all play on the same lanes with the same pattern. */
public final class OwnLanesWords {
    private OwnLanesWords() {}

    /**
     * The words about an event.
     *
     * @param event the event
     * @param lanesChange whether it was played on lanes that change
     * @return paragraphs; none if all squads have the same lanes and pattern
     */
    public static List<String> of(Event event, boolean lanesChange) {
        List<String> words = new ArrayList<>(LaidWords.lanes(event));
        if (event.patterns().size() > 1) {
            words.addAll(LaidWords.laid(event));
            words.add("Bowlers change seats between patterns too, so that an advantage of a squad, a group or a pair"
                    + " holds what its pattern is worth beside what the oil became."
                    + (lanesChange
                            ? " What the pattern alone is worth `--still-lanes` tells."
                            : " Here it is the pattern alone: everybody finds his own as it is laid."));
        }
        return words.isEmpty() ? words : List.of(String.join(" ", words));
    }
}
