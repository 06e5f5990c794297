package lanetide.squads.recondition;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.fairness.UnchangingLanes;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.play.Setup;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.study.Design;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Part;
import lanetide.squads.study.Playable;
import lanetide.squads.study.Playing;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;
import lanetide.squads.unknown.ValueSets;
import lanetide.squads.watch.Observers;

/** Plays a long block many times, each time also with the same luck on lanes that do not change. */
final class BlockStudy implements Design {
    private final LongBlock block;
    private final int games;
    private final boolean looks;
    private final RandomStreams streams;
    private final PossibleEvents events;
    private final Map<Integer, List<TypicalPlayer>> players = new ConcurrentHashMap<>();
    private final List<String> styles;

    /**
     * A study of the first games on the oil, with or without a look at the lanes, under the sets of an event in turn.
     */
    BlockStudy(PossibleEvents events, LongBlock block, int games, boolean looks, long seed) {
        this.block = block;
        this.games = games;
        this.looks = looks;
        this.streams = new RandomStreams(seed);
        this.events = events.with(block.event());
        this.styles = List.copyOf(new TreeSet<>(
                players(Playing.DEFAULT_SET).stream().map(TypicalPlayer::style).toList()));
    }

    private List<TypicalPlayer> players(int set) {
        return players.computeIfAbsent(set, number -> {
            Playable playable = events.under(number);
            return TypicalPlayer.of(playable.event(), playable.physics(), playable.lines());
        });
    }

    List<String> styles() {
        return styles;
    }

    /** Every luck is met twice, on lanes that change and then on those that do not. */
    @Override
    public Playing playing(int number) {
        int round = number / 2;
        return new Playing(number, round, ValueSets.ofRound(round, events.sets()), number % 2);
    }

    @Override
    public Setup setup(Playing playing) {
        RandomStreams round = streams.forReplication(playing.luck());
        Playable changing = events.under(events.inRound(playing.luck(), round), playing.set());
        Playable playable = changes(playing) ? changing : changing.staying(UnchangingLanes.of(changing.event()));
        return playable.setup(LuckSource.byFrame(round));
    }

    private static boolean changes(Playing playing) {
        return playing.seating() == 0;
    }

    List<BlockPlaying> run(int replications, Execution execution, IntConsumer onDone) {
        Part all = Part.first(2 * replications);
        List<Kept> kept = new Study(this).play(all, execution, Kept.class, this::watch, done -> {
            if (done % 2 == 0) {
                onDone.accept(done / 2);
            }
        });
        return IntStream.range(0, replications)
                .mapToObj(r -> compare(kept.get(2 * r), kept.get(2 * r + 1)))
                .toList();
    }

    /** What is kept of a playing: the scores by squad and bowler, and what was seen of the lanes. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Kept(List<List<Scores>> squads, LaneLooks.Look[][][] looks) {}

    /** The games of a bowler. */
    private record Scores(String style, String group, List<Integer> pins) {
        static Scores of(BowlerResult bowler) {
            return new Scores(bowler.bowler().style().id(), bowler.group(), bowler.scores());
        }
    }

    private Watch<Kept> watch(int number) {
        Playing playing = playing(number);
        LaneLooks eye =
                new LaneLooks(block.event(), events.under(playing.set()).physics(), players(playing.set()), games);
        boolean watched = looks && changes(playing);
        return Watch.by(
                watched ? Observers.of(eye) : Observers.NONE,
                summary -> new Kept(
                        summary.result().squads().stream()
                                .map(squad ->
                                        squad.bowlers().stream().map(Scores::of).toList())
                                .toList(),
                        eye.looks()));
    }

    private BlockPlaying compare(Kept played, Kept still) {
        double[][] change = new double[games][styles.size()];
        int[][] count = new int[games][styles.size()];
        for (int s = 0; s < played.squads().size(); s++) {
            addSquad(s, played.squads().get(s), still.squads().get(s), change, count);
        }
        return new BlockPlaying(change, count, played.looks());
    }

    private void addSquad(int squad, List<Scores> played, List<Scores> still, double[][] change, int[][] count) {
        List<String> groups = block.event().squads().get(squad).groups().stream()
                .map(group -> group.id())
                .toList();
        for (int b = 0; b < played.size(); b++) {
            Scores bowler = played.get(b);
            int style = styles.indexOf(bowler.style());
            int group = groups.indexOf(bowler.group());
            for (int game = 0; game < bowler.pins().size(); game++) {
                int age = block.age(squad, group, game);
                if (age < games) {
                    change[age][style] +=
                            bowler.pins().get(game) - still.get(b).pins().get(game);
                    count[age][style]++;
                }
            }
        }
    }
}
