package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.List;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.rotation.Rotation;

/**
 * An event played on and on: its squads in turn, as often as it takes, so that lanes become older than in the event
 * itself. Nothing fails in it, and nobody rests.
 */
final class LongBlock {
    private static final int MAX_SQUADS = 1000;

    private final Event event;
    private final List<int[][]> ages = new ArrayList<>();

    private LongBlock(Event event) {
        this.event = event;
        int[] games = new int[event.centre().pairs().size()];
        for (int s = 0; s < event.squads().size(); s++) {
            if (event.squads().get(s).conditioning().laysOil()) {
                java.util.Arrays.fill(games, 0);
            }
            ages.add(ages(event.rotations().get(s), games));
        }
    }

    /** On one oiling until some pair has seen so many games. */
    static LongBlock onOneOiling(Event event, int games) {
        List<Squad> squads = new ArrayList<>();
        List<SquadPlan> plans = new ArrayList<>();
        double played = 0;
        while (played < games && squads.size() < MAX_SQUADS) {
            int s = squads.size() % event.squads().size();
            Conditioning how = squads.isEmpty() ? Conditioning.STRIP_AND_OIL : Conditioning.NONE;
            squads.add(copy(event, s, squads.size(), how));
            plans.add(event.plans().get(s));
            played += event.gamesOnPair(s);
        }
        return new LongBlock(event.withSquads(squads, plans).withIncidents(Incidents.NONE));
    }

    /** The first squad three times, with the lanes done in some way before the second and the third. */
    static LongBlock repeated(Event event, Conditioning how) {
        List<Squad> squads = new ArrayList<>();
        List<SquadPlan> plans = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            squads.add(copy(event, 0, i, i == 0 ? Conditioning.STRIP_AND_OIL : how));
            plans.add(event.plans().get(0));
        }
        return new LongBlock(event.withSquads(squads, plans).withIncidents(Incidents.NONE));
    }

    /** The same, of which the first squad is played and not looked at. */
    LongBlock withoutTheFirst() {
        int[][] first = ages.get(0);
        for (int[] group : first) {
            java.util.Arrays.fill(group, Integer.MAX_VALUE);
        }
        return this;
    }

    Event event() {
        return event;
    }

    /** Games its pair had seen since it was oiled when a group began a game. */
    int age(int squad, int group, int game) {
        return ages.get(squad)[group][game];
    }

    /** A squad under another number and with bowlers of their own names, so that each has luck of his own. */
    private static Squad copy(Event event, int squad, int number, Conditioning how) {
        Squad original = event.squads().get(squad);
        String id = String.valueOf(number + 1);
        List<Group> groups = original.groups().stream()
                .map(group -> new Group(
                        group.id(),
                        group.bowlers().stream()
                                .map(bowler -> bowler.as(id + "/" + original.id() + "/" + bowler.id(), bowler.hand()))
                                .toList()))
                .toList();
        long startMs = event.squads().get(0).startMs() + number;
        return original.withoutArrangements()
                .withId(id)
                .startingAt(startMs)
                .withConditioning(how)
                .withGroups(groups);
    }

    private static int[][] ages(Rotation rotation, int[] games) {
        int[][] ages = new int[rotation.groups()][rotation.games()];
        for (int game = 0; game < rotation.games(); game++) {
            for (int group = 0; group < rotation.groups(); group++) {
                ages[group][game] = games[rotation.pairOf(game, group)]++;
            }
        }
        return ages;
    }
}
