package lanetide.squads.fairness;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lanetide.squads.model.Conditioning;

/**
 * A fact of the plan or of the playings that goes with an advantage; none claims more than that the two go together.
 */
public sealed interface Reason {
    /**
     * The kind of fact.
     *
     * @return lower-case words joined by hyphens, which never change between versions
     */
    String code();

    /**
     * How many games have been bowled on the lanes that each squad finds.
     *
     * @param squads the squads in order of start, at least two
     */
    record GamesSinceOiling(List<Found> squads) implements Reason {
        /** Copies the list. */
        public GamesSinceOiling {
            squads = List.copyOf(squads);
        }

        /**
         * What one squad finds.
         *
         * @param squad its name
         * @param advantagePins what playing in it is worth (pins a game), if known
         * @param conditioning what was done to the lanes before it
         * @param games games bowled on a pair since it was oiled, mean over the pairs
         */
        public record Found(String squad, OptionalDouble advantagePins, Conditioning conditioning, double games) {}

        @Override
        public String code() {
            return "games-since-oiling";
        }
    }

    /**
     * A group takes over every pair from the group that takes most oil off its lanes.
     *
     * @param squad the squad's name
     * @param group the group's name
     * @param advantagePins its advantage (pins a game), if known
     * @param startPair name of the pair it starts on
     * @param strongest name of the group that it follows
     * @param strongestMlAGame oil that group takes off its lanes (mL a game)
     * @param meanMlAGame the same on average over the squad's groups (mL a game)
     */
    record FollowsStrongest(
            String squad,
            String group,
            OptionalDouble advantagePins,
            String startPair,
            String strongest,
            double strongestMlAGame,
            double meanMlAGame)
            implements Reason {
        @Override
        public String code() {
            return "follows-strongest";
        }
    }

    /**
     * Every group takes over all its pairs from one and the same group.
     *
     * @param squads names of the squads in which it is so, at least one
     */
    record SamePredecessor(List<String> squads) implements Reason {
        /** Copies the list. */
        public SamePredecessor {
            squads = List.copyOf(squads);
        }

        @Override
        public String code() {
            return "same-predecessor";
        }
    }

    /**
     * What goes with the worst or the best place among the groups.
     *
     * @param isBest whether it is the best rather than the worst placed
     * @param group the group's name, as in its {@link Effect}
     * @param advantagePins its advantage (pins a game)
     * @param withSquadPins of it, what goes with its squad
     * @param withPairPins of it, what goes with the pair it starts on
     * @param startPair name of that pair
     * @param bowlersByStyle its bowlers, by name of their style, in order of the names; empty where others may come
     */
    record PlacedGroup(
            boolean isBest,
            String group,
            double advantagePins,
            double withSquadPins,
            double withPairPins,
            String startPair,
            Map<String, Integer> bowlersByStyle)
            implements Reason {
        @Override
        public String code() {
            return isBest ? "best-group" : "worst-group";
        }
    }

    /**
     * Few play from one side, so that the oil on that side changes more slowly than on the other.
     *
     * @param side {@code left} or {@code right}
     * @param bowlers bowlers who play from there
     * @param ofBowlers all bowlers
     * @param advantagePins what playing from there is worth (pins a game)
     */
    record FewOnOneSide(String side, int bowlers, int ofBowlers, double advantagePins) implements Reason {
        @Override
        public String code() {
            return "few-on-one-side";
        }
    }

    /**
     * What the change of the lanes does to a style, beside the whole field.
     *
     * @param style name of the style
     * @param means what it scores with and without the change
     */
    record StyleAndChange(String style, StyleMeans means) implements Reason {
        @Override
        public String code() {
            return "style-and-change";
        }
    }

    /**
     * Groups of a squad differ in size: the smaller ones have more practice a bowler and change their lanes less.
     *
     * @param squad the squad's name
     * @param fewest bowlers of the smallest group
     * @param most bowlers of the largest group
     */
    record UnevenGroups(String squad, int fewest, int most) implements Reason {
        @Override
        public String code() {
            return "uneven-groups";
        }
    }
}
