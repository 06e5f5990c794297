package lanetide.cli.scenario.entries;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What of the bowlers was drawn by shares or told by averages because the entries do not say it, which answers must not
 * show as known; and what the entries say that only people want to know.
 *
 * @param bowlers how many bowlers the entries list; 0 if there is no list
 * @param byAverage how many of them have their level by their average
 * @param drawn what was drawn of whom; bowlers of whom everything is listed are left out
 * @param teams the teams of those who name one
 */
public record DrawnTraits(int bowlers, int byAverage, Map<Who, Set<Trait>> drawn, Map<Who, String> teams) {
    /** How the names of assumptions begin that tell it. */
    public static final String ASSUMED = "entries.";

    /** Nothing: there is no list of bowlers. */
    public static final DrawnTraits NONE = new DrawnTraits(0, 0, Map.of());

    /**
     * A bowler in the event.
     *
     * @param squad his squad's id
     * @param bowler his name
     */
    public record Who(String squad, String bowler) {}

    /** Copies the maps. */
    public DrawnTraits {
        drawn = Collections.unmodifiableMap(new LinkedHashMap<>(drawn));
        teams = Collections.unmodifiableMap(new LinkedHashMap<>(teams));
    }

    /**
     * The same where nobody names a team.
     *
     * @param bowlers as above
     * @param byAverage as above
     * @param drawn as above
     */
    public DrawnTraits(int bowlers, int byAverage, Map<Who, Set<Trait>> drawn) {
        this(bowlers, byAverage, drawn, Map.of());
    }

    /** The same with teams. */
    DrawnTraits with(Map<Who, String> named) {
        return new DrawnTraits(bowlers, byAverage, drawn, named);
    }

    /**
     * The team of one bowler.
     *
     * @param squad his squad's id
     * @param bowler his name
     * @return empty if the entries name none
     */
    public Optional<String> team(String squad, String bowler) {
        return Optional.ofNullable(teams.get(new Who(squad, bowler)));
    }

    /**
     * Whether nothing is left open.
     *
     * @return true if there are no entries, or they say all of everybody
     */
    public boolean sayAll() {
        return byAverage == 0 && drawn.isEmpty();
    }

    /**
     * What was drawn of one bowler.
     *
     * @param squad his squad's id
     * @param bowler his name
     * @return none if everything of him is known, or he is one of a field
     */
    public Set<Trait> of(String squad, String bowler) {
        return Collections.unmodifiableSet(drawn.getOrDefault(new Who(squad, bowler), EnumSet.noneOf(Trait.class)));
    }

    /**
     * Of how many bowlers a trait was drawn.
     *
     * @param trait the trait
     * @return their number
     */
    public long count(Trait trait) {
        return drawn.values().stream().filter(traits -> traits.contains(trait)).count();
    }
}
