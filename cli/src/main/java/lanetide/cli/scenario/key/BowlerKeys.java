package lanetide.cli.scenario.key;

import static lanetide.cli.scenario.key.Key.optional;
import static lanetide.cli.scenario.key.Key.required;
import static lanetide.cli.scenario.key.Key.usual;

import java.util.List;
import java.util.stream.Stream;
import lanetide.squads.model.Bowling;

/** Keys of the bowlers: drawn by shares or listed, and who does not bowl as listed. */
public final class BowlerKeys {
    /** Bowlers by shares. */
    public static final List<Key> FIELD = List.of(
            required("perSquad", "whole number", "bowlers in a squad, spread evenly over the pairs", "4 to 6 a pair"),
            required("hands", "%", "share of right and left", "{right: 85 %, left: 15 %}"),
            required("styles", "%", "share of each playing style", "{stroker: 60 %, tweener: 40 %}"),
            required("levels", "%", "share of each level of skill", "{scratch: 60 %, league: 40 %}"),
            required("covers", "%", "share of each strike ball cover", "{urethane: 20 %, medium-reactive: 80 %}"),
            usual("spareCover", "name", "cover of everybody's spare ball", Defaults.SPARE_COVER),
            optional("slow", "%", "share of slow bowlers", "0 % to 20 %", Defaults.SLOW),
            usual("slowTempo", "%", "time slow bowlers take over a shot, of the usual", Defaults.SLOW_TEMPO),
            optional(
                    "secondCover", "name", "cover of everybody's second ball for full racks", "weak-reactive", "none"));

    /** One bowler. */
    public static final List<Key> ENTRY = Stream.concat(
                    bowler("Anchor"),
                    Stream.of(
                            optional(
                                    "average",
                                    "pins",
                                    "the bowler's average, for the handicap",
                                    "187 pins",
                                    "the level's"),
                            optional("squad", "text", "id of the bowler's squad", "A", "the only squad"),
                            optional(
                                    "group",
                                    "whole number",
                                    "who shares a pair, by starting pair",
                                    "1",
                                    "the list fills the pairs")))
            .toList();

    /** A change of who bowls. */
    public static final List<Key> CHANGE = List.of(
            required("bowler", "text", "name of a bowler, listed or drawn", "A-07"),
            optional("from", "whole number", "first game that he does not bowl", "3", "1"),
            optional(
                    "arrives",
                    "time of day",
                    "when a late bowler is there; he joins at his group's next game",
                    "\"08:40\"",
                    "in time"),
            optional("substitute", "block", "who bowls in his place", "{id: Guest, hand: right}", "nobody"));

    /** A substitute. */
    public static final List<Key> SUBSTITUTE = bowler("Guest").toList();

    /** What all bowlers have in common. */
    public static final List<Key> BOWLERS = List.of(
            usual(
                    "knowledge",
                    "name",
                    "what they choose lines by: own-balls, everything (they see the oil) or nothing (they never move)",
                    Bowling.USUAL.knowledge().id()),
            optional(
                    "tiring",
                    "%",
                    "share of his speed a bowler loses over 72 balls at full racks",
                    "0 % to 2 %",
                    Defaults.TIRING));

    private BowlerKeys() {}

    private static Stream<Key> bowler(String typicalId) {
        return Stream.of(
                required("id", "text", "name or number, alone in the event", typicalId),
                required("hand", "name", "right or left", "right"),
                required("style", "name", "playing style", "tweener"),
                required("level", "name", "level of skill", "league"),
                required("cover", "name", "cover of the strike ball", "medium-reactive"),
                usual("spareCover", "name", "cover of the spare ball", Defaults.SPARE_COVER),
                optional("tempo", "%", "time he takes over a shot, of the usual", "80 % to 150 %", Defaults.TEMPO),
                optional("secondCover", "name", "cover of a second ball for full racks", "weak-reactive", "none"));
    }
}
