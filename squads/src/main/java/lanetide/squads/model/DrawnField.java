package lanetide.squads.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanetide.des.random.RandomStreams;

/**
 * How a squad's bowlers were drawn, so that others can be drawn who might come as well.
 *
 * @param squad the name the squad was drawn under, with which its bowlers' names begin
 * @param mix the shares
 * @param handicapPins the handicap of each level (pins a game); levels that are missing have none
 */
public record DrawnField(String squad, FieldMix mix, Map<Level, Integer> handicapPins) {
    /** Copies the map. */
    public DrawnField {
        handicapPins = Map.copyOf(handicapPins);
    }

    /**
     * The field of a squad that has been drawn.
     *
     * @param squad its name
     * @param mix the shares it was drawn by
     * @param groups its bowlers as drawn, with their handicaps
     * @return the field
     */
    public static DrawnField of(String squad, FieldMix mix, List<Group> groups) {
        Map<Level, Integer> handicaps = new LinkedHashMap<>();
        groups.forEach(
                group -> group.bowlers().forEach(bowler -> handicaps.put(bowler.level(), bowler.handicapPins())));
        return new DrawnField(squad, mix, handicaps);
    }

    /**
     * The same groups, with others in them who might come as well: everybody who was drawn has his name and his place,
     * and the hand, style, skill and balls that he is drawn this time.
     *
     * @param groups groups with bowlers of this field, and perhaps others, who stay as they are
     * @param streams family of the round
     * @return the groups
     */
    List<Group> drawnAgain(List<Group> groups, RandomStreams streams) {
        Map<String, Bowler> byName =
                mix.bowlers(squad, streams).stream().collect(Collectors.toMap(Bowler::id, Function.identity()));
        return groups.stream()
                .map(group -> new Group(
                        group.id(),
                        group.bowlers().stream()
                                .map(bowler -> again(bowler, byName))
                                .toList()))
                .toList();
    }

    private Bowler again(Bowler bowler, Map<String, Bowler> byName) {
        Bowler other = byName.get(bowler.id());
        return other == null ? bowler : other.withHandicap(handicapPins.getOrDefault(other.level(), 0));
    }
}
