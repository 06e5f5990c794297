package lanetide.squads.qualifying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.Squad;
import lanetide.squads.model.TieRule;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.SquadResult;

/**
 * Doubles, trios and teams: partners of one name, whose pins are added game by game. A substitute bowls for the team of
 * whom he replaces. A team that is entered in several squads is entered again, and counts as a person does at the cut
 * of the event: its best squad or the sum; the handicap and ties go by the cut too. Without a cut the handicap and the
 * best squad count, and a tie is shared.
 */
public final class Teams {
    /** What decides where an event has no cut. */
    private static final Cut USUAL =
            new Cut(OptionalInt.of(1), OptionalDouble.empty(), TieRule.LOT, true, Counting.BEST);

    private final Cut rule;
    private final List<String> names = new ArrayList<>();
    private final List<Integer> bowlers = new ArrayList<>();
    private final Map<String, Integer> teamOf = new HashMap<>();

    /**
     * All teams of an event.
     *
     * @param event the event as it is drawn
     */
    public Teams(Event event) {
        this.rule = event.cut().orElse(USUAL);
        Map<String, Integer> known = new LinkedHashMap<>();
        for (Squad squad : event.squads()) {
            Map<Integer, Integer> here = new HashMap<>();
            for (Group group : squad.groups()) {
                for (Bowler bowler : group.bowlers()) {
                    bowler.partners()
                            .map(name -> known.computeIfAbsent(name, key -> known.size()))
                            .ifPresent(team -> {
                                teamOf.put(People.nameOfEntry(squad.id(), bowler.id()), team);
                                here.merge(team, 1, Integer::sum);
                            });
                }
            }
            here.forEach(this::count);
            substitutes(squad);
        }
        names.addAll(known.keySet());
    }

    private void count(int team, int number) {
        while (bowlers.size() <= team) {
            bowlers.add(0);
        }
        bowlers.set(team, Math.max(bowlers.get(team), number));
    }

    private void substitutes(Squad squad) {
        for (LineUpChange change : squad.arrangements().changes()) {
            if (change instanceof LineUpChange.Substitution in) {
                Optional.ofNullable(teamOf.get(People.nameOfEntry(squad.id(), in.bowler())))
                        .ifPresent(team -> teamOf.put(
                                People.nameOfEntry(squad.id(), in.substitute().id()), team));
            }
        }
    }

    /**
     * What the teams are called.
     *
     * @return their names in the order of the squads, groups and bowlers; none if everybody bowls for himself
     */
    public List<String> names() {
        return List.copyOf(names);
    }

    /**
     * How many bowlers each team has in a squad, the most where they differ.
     *
     * @return numbers in the order of {@link #names()}
     */
    public List<Integer> bowlers() {
        return List.copyOf(bowlers);
    }

    /**
     * What each team bowled.
     *
     * @param squads what came of the event, in order of play
     * @return for each team its pins by game for every squad it is entered in, in the order of {@link #names()}
     */
    public List<Entrant> bowled(List<SquadResult> squads) {
        return IntStream.range(0, names.size())
                .mapToObj(team -> new Entrant(squads.stream()
                        .map(squad -> games(squad, result -> isOf(team, squad, result)))
                        .filter(games -> !games.isEmpty())
                        .toList()))
                .toList();
    }

    private boolean isOf(int team, SquadResult squad, BowlerResult result) {
        Integer his =
                teamOf.get(People.nameOfEntry(squad.squad(), result.bowler().id()));
        return his != null && his == team;
    }

    /** Pins of a team's bowlers together, by game; none if nobody of it bowled. */
    private List<Integer> games(SquadResult squad, Predicate<BowlerResult> whose) {
        List<BowlerResult> results = squad.bowlers().stream().filter(whose).toList();
        return results.isEmpty()
                ? List.of()
                : IntStream.range(0, squad.games())
                        .mapToObj(game -> results.stream()
                                .mapToInt(result -> pins(result, game))
                                .sum())
                        .toList();
    }

    private int pins(BowlerResult result, int game) {
        OptionalInt score = result.score(game);
        return score.isEmpty()
                ? 0
                : score.getAsInt() + (rule.withHandicap() ? result.bowler().handicapPins() : 0);
    }

    /**
     * How the teams stand in a playing.
     *
     * @param squads what came of it, in order of play
     * @return their totals and places
     */
    public TeamsPlayed standing(List<SquadResult> squads) {
        List<Standing> all =
                bowled(squads).stream().map(team -> Standing.of(team, rule)).toList();
        List<TeamsPlayed.Team> teams = new ArrayList<>();
        for (Standing one : all) {
            long before = all.stream().filter(other -> other.compareTo(one) < 0).count();
            long level = all.stream().filter(other -> other.compareTo(one) == 0).count();
            teams.add(new TeamsPlayed.Team(one.total(), before == 0 ? 1.0 / level : 0, before + (level + 1) / 2.0));
        }
        return new TeamsPlayed(teams);
    }
}
