package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import lanetide.des.Simulator;
import lanetide.squads.model.LaneCourtesy;

/**
 * The approaches of all lanes, and who may step up while neighbours are on theirs.
 *
 * <p>Of neighbours who are ready, he goes first who was passed over more often, and of equals the one on the right.
 * That is a total order, and whoever waits for a neighbour waits for one who stands before him in it or is on the
 * approach already; so somebody can always go, and nobody is passed over without end.
 *
 * <p>All who become ready at one instant are looked at together, so that it does not matter whose event comes first.
 */
final class Approaches {
    private final Simulator simulator;
    private final LaneCourtesy courtesy;
    private final TreeMap<Integer, Approach> lanes = new TreeMap<>();
    private final List<Approach> toLookAt = new ArrayList<>();

    Approaches(Simulator simulator, LaneCourtesy courtesy, List<LaneInPlay> lanes) {
        this.simulator = simulator;
        this.courtesy = courtesy;
        lanes.forEach(lane -> this.lanes.put(lane.number(), new Approach(lane.number())));
        if (courtesy.lanes() > 0) {
            this.lanes.values().forEach(this::findNeighbours);
        }
    }

    /**
     * Lets a bowler shoot: he gets ready, waits for his neighbours, and releases.
     *
     * @param lane his lane
     * @param fromNowMs when he starts to get ready, from now (ms)
     * @param takesMs from then to his release if no neighbour holds him up (ms); the end of it he is on the approach
     * @param waited told how long neighbours held him up (ms)
     * @param release what his release does
     */
    void shoot(int lane, long fromNowMs, long takesMs, LongConsumer waited, Runnable release) {
        Approach approach = lanes.get(lane);
        if (approach.neighbours.isEmpty()) {
            simulator.schedule(fromNowMs + takesMs, Phase.PLAY, approach.releaseLabel, release);
            return;
        }
        long onApproachMs = Math.min(takesMs, courtesy.approachMs());
        simulator.schedule(fromNowMs + takesMs - onApproachMs, Phase.PLAY, approach.readyLabel, () -> {
            long readyMs = simulator.nowMs();
            approach.ready = () -> {
                waited.accept(simulator.nowMs() - readyMs);
                simulator.schedule(onApproachMs, Phase.PLAY, approach.releaseLabel, () -> {
                    leave(approach);
                    release.run();
                });
            };
            lookAt(approach);
        });
    }

    private void leave(Approach approach) {
        approach.taken = false;
        for (Approach neighbour : approach.neighbours) {
            if (neighbour.waits()) {
                lookAt(neighbour);
            }
        }
    }

    private void lookAt(Approach approach) {
        if (toLookAt.isEmpty()) {
            simulator.schedule(0, Phase.STEP_UP, "step up", this::stepUp);
        }
        toLookAt.add(approach);
    }

    /** Chooses all who may go before anybody goes, so that the choice does not depend on the order of looking. */
    private void stepUp() {
        List<Approach> going = new ArrayList<>(toLookAt.size());
        for (Approach approach : toLookAt) {
            if (approach.mayGo() && !going.contains(approach)) {
                going.add(approach);
            }
        }
        toLookAt.clear();
        going.forEach(Approach::stepUp);
    }

    private void findNeighbours(Approach approach) {
        lanes.subMap(approach.lane - courtesy.lanes(), true, approach.lane + courtesy.lanes(), true).values().stream()
                .filter(other -> other != approach)
                .forEach(approach.neighbours::add);
    }

    /** The approach of one lane. */
    private static final class Approach {
        private final int lane;
        private final String readyLabel;
        private final String releaseLabel;
        private final List<Approach> neighbours = new ArrayList<>();
        private Runnable ready;
        private boolean taken;
        private int passedOver;

        Approach(int lane) {
            this.lane = lane;
            this.readyLabel = "ready, lane " + lane;
            this.releaseLabel = "release, lane " + lane;
        }

        boolean waits() {
            return ready != null;
        }

        boolean mayGo() {
            if (!waits()) {
                return false;
            }
            for (Approach other : neighbours) {
                if (other.taken || (other.waits() && other.isBefore(this))) {
                    return false;
                }
            }
            return true;
        }

        private boolean isBefore(Approach other) {
            return passedOver != other.passedOver ? passedOver > other.passedOver : lane > other.lane;
        }

        void stepUp() {
            Runnable go = ready;
            ready = null;
            passedOver = 0;
            taken = true;
            for (Approach other : neighbours) {
                other.passedOver += other.waits() ? 1 : 0;
            }
            go.run();
        }
    }
}
