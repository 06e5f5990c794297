package lanetide.squads.fairness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.DrawnField;
import lanetide.squads.model.Event;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.FieldMix.Share;
import lanetide.squads.model.Group;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.Squad;
import lanetide.squads.play.Events;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;
import org.junit.jupiter.api.Test;

/** A field given by shares: others might come as well. */
class WhoComesTest {
    private static final int PAIRS = 2;
    private static final int ROUNDS = 40;
    private static final RandomStreams STREAMS = new RandomStreams(3);
    private static final FieldMix MIX = new FieldMix(
            8,
            List.of(new Share<>(Hand.RIGHT, 0.75), new Share<>(Hand.LEFT, 0.25)),
            List.of(
                    new Share<>(Events.CATALOGUE.styles().get("straight"), 0.5),
                    new Share<>(Events.CATALOGUE.styles().get("power"), 0.5)),
            List.of(new Share<>(Events.level("league"), 0.5), new Share<>(Events.level("elite"), 0.5)),
            List.of(new Share<>(Events.CATALOGUE.covers().get("medium-reactive"), 1)),
            Events.CATALOGUE.covers().get("plastic"),
            List.of(new Share<>(1.0, 1)),
            Optional.empty());

    private static Event event() {
        return Events.event(
                Events.centre(PAIRS),
                Events.stay(PAIRS, PAIRS, 2),
                squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL),
                squad("B", 2 * Events.START_MS, Conditioning.NONE));
    }

    private static Squad squad(String id, long startMs, Conditioning conditioning) {
        List<Group> groups = MIX.groups(id, PAIRS, STREAMS).stream()
                .map(group -> new Group(
                        group.id(),
                        group.bowlers().stream()
                                .map(bowler ->
                                        bowler.withHandicap(bowler.level().id().equals("league") ? 20 : 5))
                                .toList()))
                .toList();
        return Events.squad(id, startMs, conditioning, groups).drawnFrom(DrawnField.of(id, MIX, groups));
    }

    private static List<Bowler> bowlers(Event event) {
        return event.squads().stream()
                .flatMap(squad -> squad.everybody().stream())
                .toList();
    }

    private static Event inRound(Event event, int round) {
        return new PossibleEvents(event, 1).inRound(round, STREAMS.forReplication(round));
    }

    private static <T> Map<T, Long> counts(Event event, Function<Bowler, T> kind) {
        return bowlers(event).stream().collect(Collectors.groupingBy(kind, Collectors.counting()));
    }

    @Test
    void theFirstRoundHasThoseOfTheScenarioAndEveryOtherTheSameSharesOfOthers() {
        Event event = event();
        assertThat(inRound(event, 0)).isSameAs(event);
        for (int round = 1; round <= ROUNDS; round++) {
            Event other = inRound(event, round);
            assertThat(bowlers(other)).isNotEqualTo(bowlers(event));
            assertThat(bowlers(other))
                    .extracting(Bowler::id)
                    .isEqualTo(bowlers(event).stream().map(Bowler::id).toList());
            assertThat(counts(other, Bowler::hand)).isEqualTo(counts(event, Bowler::hand));
            assertThat(counts(other, Bowler::style)).isEqualTo(counts(event, Bowler::style));
            assertThat(counts(other, Bowler::level)).isEqualTo(counts(event, Bowler::level));
            assertThat(other).isEqualTo(inRound(event, round));
        }
    }

    @Test
    void whateverSitsInAPlaceComesThereAsOftenAsItsShareSays() {
        Event event = event();
        Map<String, Integer> power = new HashMap<>();
        for (int round = 1; round <= 400; round++) {
            bowlers(inRound(event, round)).stream()
                    .filter(bowler -> bowler.style().id().equals("power"))
                    .forEach(bowler -> power.merge(bowler.id(), 1, Integer::sum));
        }
        // Binomial with 400 tries at a half: 200 and a deviation of 10; sixteen places, so four of them.
        assertThat(power).hasSize(16);
        assertThat(power.values()).allSatisfy(count -> assertThat(count).isBetween(160, 240));
    }

    @Test
    void aHandicapGoesWithTheLevelThatIsDrawn() {
        assertThat(bowlers(inRound(event(), 7)))
                .allSatisfy(bowler -> assertThat(bowler.handicapPins())
                        .isEqualTo(bowler.level().id().equals("league") ? 20 : 5));
    }

    @Test
    void whoIsListedOrComesAsASubstituteStays() {
        Event listed = Events.onePair(2, Events.bowler("a"), Events.bowler("b"));
        assertThat(inRound(listed, 5)).isSameAs(listed);

        Event event = event();
        Squad first = event.squads().get(0);
        LineUpChange change = new LineUpChange.Substitution("A-01", 2, Events.bowler("guest"));
        Event changed = event.withSquads(List.of(
                first.withArrangements(first.arrangements().withChanges(List.of(change))),
                event.squads().get(1)));
        assertThat(inRound(changed, 5).squads().get(0).arrangements().changes()).containsExactly(change);
    }

    @Test
    void groupsThatAreDealtByHandAreDealtAnewForThoseWhoCome() {
        PossibleEvents events = new PossibleEvents(event(), 1);
        PossibleEvents dealt = new Changes(events.event(), Set.of())
                .list().stream()
                        .filter(change -> change.what().kind() == RemedyChange.Kind.GROUPS)
                        .findFirst()
                        .orElseThrow()
                        .under(events);
        for (int round = 1; round <= ROUNDS; round++) {
            Event other = dealt.inRound(round, STREAMS.forReplication(round));
            assertThat(other.squads().stream().flatMap(squad -> squad.groups().stream()))
                    .allSatisfy(group -> assertThat(group.bowlers())
                            .filteredOn(bowler -> bowler.hand() == Hand.LEFT)
                            .hasSize(1));
        }
    }

    @Test
    void whereLanesStayNothingIsGainedByAnySeatWhoeverComes() {
        FairnessPlan plan = new FairnessPlan(5, 6 * FairnessStudy.playingsOfRound(event()), 2, false);
        for (int sets : new int[] {1, 3}) {
            FairnessResult result =
                    FairnessStudy.run(new PossibleEvents(event(), sets), plan, Execution.on(2), done -> {});
            assertThat(result.effects()).extracting(Effect::kind).contains(EffectKind.SQUAD, EffectKind.HAND);
            assertThat(result.effects()).allSatisfy(effect -> {
                assertThat(effect.advantagePins()).as(effect.id()).isCloseTo(0, within(1e-9));
                assertThat(effect.ci90().high()).as(effect.id()).isCloseTo(0, within(1e-9));
            });
        }
    }

    /** With styles drawn anew, a style is what is thrown in that round, not who threw it in the first. */
    @Test
    void aStyleIsJudgedByThoseWhoPlayItInEachRound() {
        FairnessPlan plan = new FairnessPlan(5, 12 * FairnessStudy.playingsOfRound(event()), 2, true);
        SeatingRounds rounds = new SeatingRounds(new PossibleEvents(event(), 1), plan);
        List<double[]> scores = IntStream.range(0, rounds.playings())
                .mapToObj(number -> {
                    Seats seats = rounds.seats(rounds.playing(number).luck());
                    boolean still = rounds.isStill(rounds.playing(number));
                    return seats.bowlers().stream()
                            .mapToDouble(bowler -> still || bowler.style().id().equals("straight") ? 150 : 160)
                            .toArray();
                })
                .toList();
        FairnessResult result = FairnessStudy.judge(event(), rounds, plan, scores);
        assertThat(result.effects())
                .filteredOn(effect -> effect.kind() == EffectKind.STYLE)
                .allSatisfy(effect -> assertThat(effect.advantagePins())
                        .isCloseTo(effect.id().equals("power") ? 5 : -5, within(1e-9)));
    }
}
