package lanetide.squads;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.ref.Reference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.FieldMix.Share;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.LanePatterns;
import lanetide.squads.model.Laws;
import lanetide.squads.model.Levels;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.play.Setup;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.EventResult;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Ring;

/**
 * What one playing costs as events grow: processor time of the thread per shot, and memory in use after the garbage has
 * gone, with the event, its playing and the result held. Groups of four play three games; lanes are oiled before every
 * squad.
 *
 * <p>Each argument is a case of lanes and squads, such as {@code 64x600}; it prints a row of the table in
 * des/README.md.
 */
public final class Scale {

    private static final int GAMES = 3;
    private static final int GROUP = 4;
    private static final long SQUAD_MS = 6 * 3_600_000L;

    private final Catalogue catalogue = Catalogue.shipped();
    private final Physics physics = Physics.under(Laws.USUAL);
    private final RandomStreams streams = new RandomStreams(1);
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

    private Scale() {}

    /** Plays a small event to warm up, then the cases. */
    public static void main(String[] cases) {
        Scale scale = new Scale();
        for (int i = 0; i < 5; i++) {
            scale.row(8, 10);
        }
        for (String each : cases) {
            List<Integer> numbers =
                    Arrays.stream(each.split("x", -1)).map(Integer::valueOf).toList();
            System.out.println(scale.row(numbers.get(0), numbers.get(1)));
        }
    }

    private String row(int lanes, int squads) {
        Event event = event(lanes / 2, squads);
        StartingLines lines = new StartingLines(event, physics);
        TournamentSimulation simulation =
                new TournamentSimulation(Setup.of(event, physics, lines, LuckSource.byBall(streams.forReplication(0))));
        long startNs = threads.getCurrentThreadCpuTime();
        EventResult result = simulation.play();
        double seconds = (threads.getCurrentThreadCpuTime() - startNs) / 1e9;
        double usedMb = usedMb();
        String row = String.format(
                Locale.ROOT,
                "| %d | %d | %,d | %.1f | %.1f |",
                lanes,
                squads,
                result.shots(),
                seconds * 1e6 / result.shots(),
                usedMb);
        Reference.reachabilityFence(simulation);
        Reference.reachabilityFence(result);
        Reference.reachabilityFence(lines);
        return row;
    }

    private static double usedMb() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
    }

    private Event event(int pairs, int squads) {
        List<LanePair> lanes = IntStream.range(0, pairs)
                .mapToObj(pair -> new LanePair(2 * pair + 1, 2 * pair + 2))
                .toList();
        Centre centre = new Centre(
                lanes,
                catalogue.surfaces().get("hard-synthetic"),
                new LaneMachines(pairs / 4, 0, 0, 45_000, 45_000, 0),
                Map.of(),
                List.of());
        FieldMix field = field(pairs * GROUP);
        List<Squad> played = new ArrayList<>();
        for (int squad = 0; squad < squads; squad++) {
            String id = "S" + (squad + 1);
            played.add(new Squad(
                    id,
                    squad * SQUAD_MS,
                    Conditioning.STRIP_AND_OIL,
                    0,
                    field.groups(id, pairs, streams),
                    Arrangements.NONE));
        }
        Rotation rotation = new Ring(2, 1).plan(pairs, pairs, GAMES);
        OilPattern pattern = OilPattern.of("scale", 41 * LaneGeometry.FOOT_M, 26, 3);
        return new Event(
                "scale",
                centre,
                played,
                Collections.nCopies(squads, new SquadPlan(rotation, LanePatterns.everywhere(pattern))),
                PaceOfPlay.USUAL,
                Laws.USUAL,
                Bowling.USUAL,
                Incidents.NONE);
    }

    private FieldMix field(int bowlers) {
        var styles = catalogue.styles();
        var covers = catalogue.covers();
        return new FieldMix(
                bowlers,
                List.of(new Share<>(Hand.RIGHT, 0.85), new Share<>(Hand.LEFT, 0.15)),
                List.of(new Share<>(styles.get("stroker"), 0.5), new Share<>(styles.get("power"), 0.5)),
                List.of(new Share<>(Levels.shipped().get("scratch"), 1.0)),
                List.of(new Share<>(covers.get("medium-reactive"), 1.0)),
                covers.get("plastic"),
                List.of(new Share<>(Bowler.DEFAULT_TEMPO, 1.0)),
                Optional.empty());
    }
}
