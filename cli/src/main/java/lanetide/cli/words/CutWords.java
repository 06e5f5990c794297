package lanetide.cli.words;

import java.util.List;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.Range;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Finals;
import lanetide.squads.model.LanePair;
import lanetide.squads.qualifying.People;

/** The rule of a cut in words. */
public final class CutWords {
    private CutWords() {}

    /**
     * The whole rule.
     *
     * @param cut the rule
     * @param event the event that has it
     * @return one sentence, without its stop
     */
    public static String rule(Cut cut, Event event) {
        int people = new People(event).count();
        String share =
                cut.share().isPresent() ? " (" + Range.round(100 * cut.share().getAsDouble()) + " %)" : "";
        return cut.places(people) + " of " + people + " people" + share + " go on, by their totals "
                + (cut.withHandicap() ? "with" : "without") + " handicap; of those with the same total "
                + ties(cut) + (isReentered(event) ? "; " + counting(cut) : "");
    }

    /**
     * The finals.
     *
     * @param finals their plan
     * @return one sentence, without its stop
     */
    public static String finals(Finals finals) {
        int matches = finals.rounds().stream().mapToInt(List::size).sum();
        return (finals.isRoundRobin()
                        ? "Finals: everybody against everybody in "
                                + English.count(finals.rounds().size(), "round") + ", " + finals.bonusPins()
                                + " pins for a won match"
                        : "Finals: " + matches + (matches == 1 ? " match" : " matches") + " head to head in "
                                + English.count(finals.rounds().size(), "round"))
                + ", " + English.count(finals.games(), "game") + " a match, "
                + (finals.onPairs().isEmpty()
                        ? ""
                        : "on " + finals.onPairs().stream().map(LanePair::id).collect(Collectors.joining(", ")) + ", ")
                + "on the lanes as they are"
                + switch (finals.conditioning()) {
                    case STRIP_AND_OIL, OIL_OVER -> " once oiled again";
                    case CLEAN_ENDS -> " once cleaned past the end";
                    case NONE -> "";
                };
    }

    private static String ties(Cut cut) {
        return switch (cut.ties()) {
            case LOT -> "the lot decides";
            case LAST_GAME -> "who has the higher last game goes first";
            case HIGH_GAME -> "who has the higher best game goes first";
            case ALL -> "all go on";
        };
    }

    private static String counting(Cut cut) {
        return "for who is entered in several squads "
                + (cut.counting() == Counting.BEST ? "the best of them counts" : "the sum of all counts");
    }

    private static boolean isReentered(Event event) {
        return event.squads().stream()
                .flatMap(squad -> squad.groups().stream())
                .flatMap(group -> group.bowlers().stream())
                .anyMatch(bowler -> bowler.person().isPresent());
    }
}
