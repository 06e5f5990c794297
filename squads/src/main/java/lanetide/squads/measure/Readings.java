package lanetide.squads.measure;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.ShotBowled;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.Observers;
import lanetide.squads.watch.ShotObserver;

/** Measures in one playing what could be measured at an event. */
final class Readings implements LaneObserver, ShotObserver {
    /** Error of a tape reading (units of oil, standard deviation, assumption). */
    static final double TAPE_UNITS = 1.5;

    private static final double[] TAPES_FT = {10, 25};
    private static final double PAST_END_FT = 2;
    private static final int[] TAPE_BOARDS = {10, 15, 20};
    private static final double TAPE_M = 0.05;
    private static final int SHOTS = 10;
    private static final int MOST_SQUADS = 4;

    private final Event event;
    private final List<Measurement> wanted;
    private final double[] sums;
    private final int[] counts;

    private Readings(Event event, List<Measurement> wanted) {
        this.event = event;
        this.wanted = wanted;
        this.sums = new double[wanted.size()];
        this.counts = new int[wanted.size()];
    }

    /** A fresh sheet of paper for one playing. */
    static Readings of(Event event, List<Measurement> wanted) {
        return new Readings(event, wanted);
    }

    /** What could be measured at an event: at most thirty things. */
    static List<Measurement> candidates(Event event) {
        List<Measurement> all = new ArrayList<>();
        List<Squad> squads = event.squads();
        Squad first = squads.get(0);
        Squad last = squads.get(squads.size() - 1);
        for (Squad squad : squads.size() == 1 ? List.of(first) : List.of(first, last)) {
            int place = event.squad(squad.id());
            LanePair pair = event.centre(place).rotationPairs().get(0);
            double endM = event.pattern(place, pair.left()).lengthM();
            for (int board : TAPE_BOARDS) {
                for (double feet : TAPES_FT) {
                    all.add(new Measurement.Tape(pair.left(), squad.id(), feet * LaneGeometry.FOOT_M, board));
                }
                all.add(new Measurement.Tape(pair.left(), squad.id(), endM + PAST_END_FT * LaneGeometry.FOOT_M, board));
            }
        }
        squads.stream().limit(MOST_SQUADS).forEach(squad -> {
            all.add(new Measurement.SquadScore(squad.id()));
            all.add(new Measurement.SquadTrend(squad.id()));
        });
        first.everybody().stream()
                .map(bowler -> bowler.style().id())
                .distinct()
                .sorted()
                .limit(MOST_SQUADS)
                .forEach(style -> all.add(new Measurement.Laydown(first.id(), style)));
        return all;
    }

    /** Variance of the error with which something is measured, beside the luck of play. */
    static double errorVariance(Measurement measurement) {
        return measurement instanceof Measurement.Tape ? TAPE_UNITS * TAPE_UNITS : 0;
    }

    Observers observers() {
        return new Observers(this, this, List.of());
    }

    @Override
    public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
        for (int i = 0; i < sums.length; i++) {
            if (wanted.get(i) instanceof Measurement.Tape tape
                    && tape.lane() == moment.lane()
                    && tape.squad().equals(moment.squad())
                    && moment.afterGame() == event.games(tape.squad())) {
                sums[i] = film.meanOnBoardUm(tape.board(), tape.distanceM() - TAPE_M, tape.distanceM() + TAPE_M)
                        / OilFilm.UNIT_UM;
                counts[i] = 1;
            }
        }
    }

    @Override
    public void onShot(ShotBowled shot) {
        for (int i = 0; i < sums.length; i++) {
            if (wanted.get(i) instanceof Measurement.Laydown laydown
                    && counts[i] < SHOTS
                    && shot.ball() == 1
                    && shot.squad().equals(laydown.squad())
                    && shot.game() == event.games(laydown.squad())
                    && shot.bowler().style().id().equals(laydown.style())) {
                sums[i] += shot.path().thrown().laydownBoard();
                counts[i]++;
            }
        }
    }

    /** What was measured, in the order of the candidates; the playing must be over. */
    double[] taken(EventResult result) {
        double[] taken = new double[sums.length];
        for (int i = 0; i < sums.length; i++) {
            taken[i] = taken(i, result);
        }
        return taken;
    }

    private double taken(int i, EventResult result) {
        if (wanted.get(i) instanceof Measurement.SquadScore score) {
            return squad(result, score.squad()).meanScore();
        }
        if (wanted.get(i) instanceof Measurement.SquadTrend trend) {
            SquadResult squad = squad(result, trend.squad());
            return squad.meanScore(squad.games() - 1) - squad.meanScore(0);
        }
        return counts[i] == 0 ? 0 : sums[i] / counts[i];
    }

    private static SquadResult squad(EventResult result, String id) {
        return result.squads().stream()
                .filter(squad -> squad.squad().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
