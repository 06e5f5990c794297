package lanetide.squads;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.ball.Coverstock;
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
import lanetide.squads.watch.LaneRecords;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One playing of a championship: three squads of 60 bowlers, eight games on twelve pairs, oiled once. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class ChampionshipBenchmark {
    private static final int PAIRS = 12;
    private static final int GAMES = 8;
    private static final long HOUR_MS = 3_600_000;

    /** Whether exit windows are worked out after every game. */
    @Param({"false", "true"})
    public boolean windows;

    private final Catalogue catalogue = Catalogue.shipped();
    private final Physics physics = Physics.under(Laws.USUAL);
    private final RandomStreams streams = new RandomStreams(1);
    private final Event event = championship();
    private final StartingLines lines = new StartingLines(event, physics);
    private int replication;

    @Benchmark
    public EventResult play() {
        RandomStreams luck = streams.forReplication(replication++);
        return new TournamentSimulation(Setup.of(event, physics, lines, LuckSource.byBall(luck))
                        .recording(windows ? LaneRecords.WINDOWS : LaneRecords.FILMS))
                .play();
    }

    @Benchmark
    public StartingLines startingLines() {
        return new StartingLines(event, physics);
    }

    private Event championship() {
        List<LanePair> pairs = IntStream.range(0, PAIRS)
                .mapToObj(pair -> new LanePair(2 * pair + 1, 2 * pair + 2))
                .toList();
        Centre centre = new Centre(
                pairs,
                catalogue.surfaces().get("hard-synthetic"),
                new LaneMachines(1, 0, 0, 45_000, 45_000, 0),
                Map.of(),
                List.of());
        List<Squad> squads = List.of(
                squad("A", 8 * HOUR_MS, Conditioning.STRIP_AND_OIL),
                squad("B", 13 * HOUR_MS, Conditioning.NONE),
                squad("C", 18 * HOUR_MS, Conditioning.NONE));
        Rotation rotation = new Ring(2, 1).plan(PAIRS, PAIRS, GAMES);
        OilPattern pattern = OilPattern.of("benchmark", 41 * LaneGeometry.FOOT_M, 26, 3);
        return new Event(
                "benchmark",
                centre,
                squads,
                Collections.nCopies(3, new SquadPlan(rotation, LanePatterns.everywhere(pattern))),
                PaceOfPlay.USUAL,
                Laws.USUAL,
                Bowling.USUAL,
                Incidents.NONE);
    }

    private Squad squad(String id, long startMs, Conditioning conditioning) {
        return new Squad(id, startMs, conditioning, 600_000, field().groups(id, PAIRS, streams), Arrangements.NONE);
    }

    private FieldMix field() {
        var styles = catalogue.styles();
        var levels = Levels.shipped();
        var covers = catalogue.covers();
        Coverstock spare = covers.get("plastic");
        return new FieldMix(
                60,
                List.of(new Share<>(Hand.RIGHT, 0.85), new Share<>(Hand.LEFT, 0.15)),
                List.of(
                        new Share<>(styles.get("straight"), 0.10),
                        new Share<>(styles.get("stroker"), 0.30),
                        new Share<>(styles.get("tweener"), 0.35),
                        new Share<>(styles.get("power"), 0.25)),
                List.of(
                        new Share<>(levels.get("elite"), 0.25),
                        new Share<>(levels.get("scratch"), 0.50),
                        new Share<>(levels.get("league"), 0.25)),
                List.of(
                        new Share<>(covers.get("urethane"), 0.10),
                        new Share<>(covers.get("weak-reactive"), 0.20),
                        new Share<>(covers.get("medium-reactive"), 0.40),
                        new Share<>(covers.get("strong-reactive"), 0.30)),
                spare,
                List.of(new Share<>(Bowler.DEFAULT_TEMPO, 1.0)),
                Optional.empty());
    }
}
