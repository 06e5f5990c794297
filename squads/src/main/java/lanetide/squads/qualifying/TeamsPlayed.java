package lanetide.squads.qualifying;

import java.util.List;

/**
 * How teams stand in one playing.
 *
 * @param teams each team, in their order
 */
public record TeamsPlayed(List<Team> teams) {
    /** Copies the list. */
    public TeamsPlayed {
        teams = List.copyOf(teams);
    }

    /**
     * One team.
     *
     * @param totalPins its pins
     * @param first its chance to be first: 1 or 0, or an equal share where no rule parts those who are
     * @param place its place, from 1; the mean of those places that teams share whom no rule parts
     */
    public record Team(int totalPins, double first, double place) {}
}
