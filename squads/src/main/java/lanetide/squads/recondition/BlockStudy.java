package lanetide.squads.recondition;

import java.util.List;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import lanetide.des.Replications;
import lanetide.des.random.RandomStreams;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.fairness.UnchangingLanes;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.play.Observers;
import lanetide.squads.play.Setup;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;

/** Plays a long block many times, each time also with the same luck on lanes that do not change. */
final class BlockStudy {
    private final LongBlock block;
    private final int games;
    private final boolean looks;
    private final Physics physics;
    private final StartingLines lines;
    private final List<TypicalPlayer> players;
    private final Event unchanging;
    private final Physics stillPhysics;
    private final StartingLines stillLines;
    private final List<String> styles;

    /** A study of the first games on the oil, with or without a look at the lanes. */
    BlockStudy(LongBlock block, int games, boolean looks) {
        this.block = block;
        this.games = games;
        this.looks = looks;
        this.physics = Physics.under(block.event().laws());
        this.lines = new StartingLines(block.event(), physics);
        this.players = TypicalPlayer.of(block.event(), physics, lines);
        this.unchanging = UnchangingLanes.of(block.event());
        this.stillPhysics = Physics.under(unchanging.laws());
        this.stillLines = new StartingLines(unchanging, stillPhysics);
        this.styles = List.copyOf(
                new TreeSet<>(players.stream().map(TypicalPlayer::style).toList()));
    }

    List<String> styles() {
        return styles;
    }

    List<BlockPlaying> run(long seed, int replications, int threads, IntConsumer onDone) {
        RandomStreams streams = new RandomStreams(seed);
        return Replications.run(replications, threads, r -> play(streams.forReplication(r)), onDone);
    }

    private BlockPlaying play(RandomStreams streams) {
        LaneLooks eye = new LaneLooks(block.event(), physics, players, games);
        EventResult result = new TournamentSimulation(
                        Setup.of(block.event(), physics, lines, LuckSource.byFrame(streams))
                                .watchedBy(looks ? Observers.of(eye) : Observers.NONE))
                .play();
        EventResult still = new TournamentSimulation(
                        Setup.of(unchanging, stillPhysics, stillLines, LuckSource.byFrame(streams)))
                .play();
        double[][] change = new double[games][styles.size()];
        int[][] count = new int[games][styles.size()];
        for (int s = 0; s < result.squads().size(); s++) {
            addSquad(s, result.squads().get(s).bowlers(), still.squads().get(s).bowlers(), change, count);
        }
        return new BlockPlaying(change, count, eye.looks());
    }

    private void addSquad(
            int squad, List<BowlerResult> played, List<BowlerResult> still, double[][] change, int[][] count) {
        List<String> groups = block.event().squads().get(squad).groups().stream()
                .map(group -> group.id())
                .toList();
        for (int b = 0; b < played.size(); b++) {
            BowlerResult bowler = played.get(b);
            int style = styles.indexOf(bowler.bowler().style().id());
            int group = groups.indexOf(bowler.group());
            for (int game = 0; game < bowler.scores().size(); game++) {
                int age = block.age(squad, group, game);
                if (age < games) {
                    change[age][style] +=
                            bowler.scores().get(game) - still.get(b).scores().get(game);
                    count[age][style]++;
                }
            }
        }
    }
}
