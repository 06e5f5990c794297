package lanetide.squads.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.model.Event;
import lanetide.squads.qualifying.Teams;
import lanetide.squads.qualifying.TeamsPlayed;

/**
 * How a team stands over the playings of an event as it is drawn.
 *
 * @param name what it is called
 * @param bowlers how many bowlers it has in a squad
 * @param totalPins mean of its total (pins)
 * @param totalCi95 interval of the mean, with luck and what is not known; empty for one playing
 * @param firstShare share of the playings in which it is first, ties shared
 * @param firstCi95 interval of that share, within 0 and 1; empty for one playing
 * @param place mean of its place, from 1
 */
public record TeamStatistics(
        String name,
        int bowlers,
        double totalPins,
        Optional<ConfidenceInterval> totalCi95,
        double firstShare,
        Optional<ConfidenceInterval> firstCi95,
        double place) {
    /** Over some playings that went through sets of values in turn, in the order in which the event has the teams. */
    static List<TeamStatistics> of(Event event, List<TeamsPlayed> playings, int sets) {
        Teams teams = new Teams(event);
        List<TeamStatistics> found = new ArrayList<>();
        for (int team = 0; team < teams.names().size(); team++) {
            double[] totals = each(playings, team, TeamsPlayed.Team::totalPins);
            double[] firsts = each(playings, team, TeamsPlayed.Team::first);
            found.add(new TeamStatistics(
                    teams.names().get(team),
                    teams.bowlers().get(team),
                    OverPlayings.mean(totals, sets),
                    OverPlayings.interval(totals, sets),
                    OverPlayings.mean(firsts, sets),
                    OverPlayings.interval(firsts, sets).map(share -> share.within(0, 1)),
                    OverPlayings.mean(each(playings, team, TeamsPlayed.Team::place), sets)));
        }
        return found;
    }

    private static double[] each(List<TeamsPlayed> playings, int team, ToDoubleFunction<TeamsPlayed.Team> of) {
        return playings.stream()
                .mapToDouble(playing -> of.applyAsDouble(playing.teams().get(team)))
                .toArray();
    }
}
