package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.LaneState;
import lanetide.squads.rotation.Rotation;

/** How much oil each group takes off its lanes, from a playing of the event as it is drawn. */
final class GroupWear {
    private final List<double[]> mlAGame = new ArrayList<>();

    GroupWear(Event event, EventResult playing) {
        Map<String, Double> volumes = new HashMap<>();
        for (LaneState state : playing.lanes()) {
            volumes.put(key(state.squad(), state.lane(), state.afterGame()), state.volumeMl());
        }
        for (int s = 0; s < event.squads().size(); s++) {
            mlAGame.add(ofSquad(event, s, volumes));
        }
    }

    private static double[] ofSquad(Event event, int squad, Map<String, Double> volumes) {
        Rotation rotation = event.rotations().get(squad);
        String id = event.squads().get(squad).id();
        double[] taken = new double[rotation.groups()];
        for (LanePair pair : event.plans().get(squad).pairs(event.centre())) {
            int index = event.centre().pairs().indexOf(pair);
            for (int lane : new int[] {pair.left(), pair.right()}) {
                double before = volumes.get(key(id, lane, 0));
                for (int game = 0; game < rotation.games(); game++) {
                    var group = rotation.groupOn(game, index);
                    if (group.isPresent()) {
                        double after = volumes.get(key(id, lane, game + 1));
                        taken[group.getAsInt()] += (before - after) / rotation.games();
                        before = after;
                    }
                }
            }
        }
        return taken;
    }

    private static String key(String squad, int lane, int game) {
        return squad + "/" + lane + "/" + game;
    }

    /** Oil a group takes off the two lanes of a pair (mL a game). */
    double mlAGame(int squad, int group) {
        return mlAGame.get(squad)[group];
    }

    /** The group of a squad that takes most. */
    int strongest(int squad) {
        double[] taken = mlAGame.get(squad);
        int strongest = 0;
        for (int group = 1; group < taken.length; group++) {
            strongest = taken[group] > taken[strongest] ? group : strongest;
        }
        return strongest;
    }

    double meanMlAGame(int squad) {
        return java.util.Arrays.stream(mlAGame.get(squad)).average().orElseThrow();
    }
}
