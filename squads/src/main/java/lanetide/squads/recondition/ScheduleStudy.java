package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.fairness.UnchangingLanes;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.Squad;
import lanetide.squads.play.Setup;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.SquadResult;
import lanetide.squads.study.Design;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Part;
import lanetide.squads.study.Playable;
import lanetide.squads.study.Playing;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;
import lanetide.squads.unknown.ValueSets;

/**
 * Plays an event from each of its squads on, with lanes oiled before that squad and never again, and works out from it
 * how often and before which squads oiling pays. A squad's scores hang on what was played since the last oiling alone,
 * since the lanes are cleaned before it: so these playings hold what every choice of squads would bring.
 */
public final class ScheduleStudy {
    private final PossibleEvents events;
    private final List<Event> parts;
    private final long seed;
    private final List<String> styles;

    private ScheduleStudy(PossibleEvents events, long seed) {
        this.events = events;
        this.seed = seed;
        Event event = events.event().withIncidents(Incidents.NONE).withCut(Optional.empty());
        this.parts = IntStream.range(0, event.squads().size())
                .mapToObj(first -> from(event, first))
                .toList();
        this.styles = event.squads().stream()
                .flatMap(squad -> squad.everybody().stream())
                .map(bowler -> bowler.style().id())
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Playings a study takes, for telling how far it is.
     *
     * @param event the event
     * @param replications how often it is played, with luck of its own each time
     * @return playings, each from one of the squads on or on lanes that do not change
     */
    public static int playings(Event event, int replications) {
        return replications * (event.squads().size() + 1);
    }

    /**
     * Studies an event; the result does not depend on the number of threads.
     *
     * @param events the event under its sets of values
     * @param plan how it is studied: its seed, its playings and its costs
     * @param oilings most oilings looked at, from 1 to {@link OilingSchedules#MAX_OILINGS}
     * @param execution how, as the next study of its run
     * @param onDone told the number of playings done so far
     * @return the cheapest squads by number of oilings
     */
    public static OilingSchedules run(
            PossibleEvents events, ReoilPlan plan, int oilings, Execution execution, IntConsumer onDone) {
        ScheduleStudy study = new ScheduleStudy(events, plan.seed());
        List<List<BlockPlaying>> playings = study.play(plan.replications(), execution, onDone);
        return new ScheduleChoice(events.event(), plan, study.styles.size(), events.sets()).of(playings, oilings);
    }

    /**
     * The event from a squad on, with lanes cleaned and oiled before that one alone; where the ends of lanes are
     * cleaned, they still are.
     */
    static Event from(Event event, int first) {
        List<Squad> squads = IntStream.range(first, event.squads().size())
                .mapToObj(s -> {
                    Squad squad = event.squads().get(s);
                    return s == first
                            ? squad.withConditioning(Conditioning.STRIP_AND_OIL)
                            : squad.conditioning().laysOil() ? squad.withConditioning(Conditioning.NONE) : squad;
                })
                .toList();
        return event.withSquads(
                squads, event.plans().subList(first, event.plans().size()));
    }

    /** One playing for each squad from which the event is played on, and one on lanes that do not change. */
    private final class FromEverySquad implements Design {
        private final RandomStreams streams = new RandomStreams(seed);

        @Override
        public Playing playing(int number) {
            int luck = number / (parts.size() + 1);
            return new Playing(number, luck, ValueSets.ofRound(luck, events.sets()), number % (parts.size() + 1));
        }

        @Override
        public Setup setup(Playing playing) {
            RandomStreams round = streams.forReplication(playing.luck());
            boolean stays = playing.seating() == parts.size();
            Event part = parts.get(stays ? 0 : playing.seating());
            PossibleEvents possible = events.with(part);
            Playable changing = possible.under(possible.inRound(playing.luck(), round), playing.set());
            Playable playable = stays ? changing.staying(UnchangingLanes.of(changing.event())) : changing;
            return playable.setup(LuckSource.byFrameInSquads(round));
        }
    }

    private List<List<BlockPlaying>> play(int replications, Execution execution, IntConsumer onDone) {
        int squads = parts.size();
        List<Kept> kept = new Study(new FromEverySquad())
                .play(
                        Part.first(replications * (squads + 1)),
                        execution,
                        Kept.class,
                        number -> Watch.ofPlay(summary -> Kept.of(summary.result())),
                        onDone);
        return IntStream.range(0, replications)
                .mapToObj(r -> compare(kept.subList(r * (squads + 1), r * (squads + 1) + squads + 1)))
                .toList();
    }

    /** Pins and games of a squad, by style. */
    private record StyleScores(Map<String, Integer> pins, Map<String, Integer> games) {
        static StyleScores of(SquadResult squad) {
            Map<String, Integer> pins = new TreeMap<>();
            Map<String, Integer> games = new TreeMap<>();
            squad.bowlers().forEach(bowler -> {
                String style = bowler.bowler().style().id();
                pins.merge(
                        style,
                        bowler.scores().stream().mapToInt(Integer::intValue).sum(),
                        Integer::sum);
                games.merge(style, bowler.scores().size(), Integer::sum);
            });
            return new StyleScores(pins, games);
        }
    }

    /** What is kept of a playing, by squad. */
    private record Kept(List<StyleScores> squads) {
        static Kept of(EventResult result) {
            return new Kept(result.squads().stream().map(StyleScores::of).toList());
        }
    }

    /** What became of each squad, by the number of squads on the oil before it. */
    private List<BlockPlaying> compare(List<Kept> round) {
        List<StyleScores> still = round.get(parts.size()).squads();
        List<BlockPlaying> squads = new ArrayList<>();
        for (int squad = 0; squad < parts.size(); squad++) {
            double[][] change = new double[squad + 1][styles.size()];
            int[][] games = new int[squad + 1][styles.size()];
            for (int before = 0; before <= squad; before++) {
                StyleScores played = round.get(squad - before).squads().get(before);
                for (int style = 0; style < styles.size(); style++) {
                    String id = styles.get(style);
                    change[before][style] = played.pins().getOrDefault(id, 0)
                            - still.get(squad).pins().getOrDefault(id, 0);
                    games[before][style] = played.games().getOrDefault(id, 0);
                }
            }
            squads.add(new BlockPlaying(change, games, new LaneLooks.Look[0][][]));
        }
        return squads;
    }
}
