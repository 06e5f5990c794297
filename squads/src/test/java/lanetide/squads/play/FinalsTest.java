package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Finals;
import lanetide.squads.model.Finals.From;
import lanetide.squads.model.Finals.Match;
import lanetide.squads.model.Finals.Side;
import lanetide.squads.model.Group;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.TieRule;
import lanetide.squads.qualifying.People;
import lanetide.squads.qualifying.Qualifying;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.FinalsResult;
import lanetide.squads.result.FinalsResult.Finalist;
import lanetide.squads.study.Playable;
import org.junit.jupiter.api.Test;

class FinalsTest {
    private static final int PAIRS = 2;
    private static final Event QUALIFYING = Events.event(
            Events.centre(PAIRS),
            Events.stay(PAIRS, PAIRS, 2),
            Events.squad(
                    "A",
                    Events.START_MS,
                    Conditioning.STRIP_AND_OIL,
                    List.of(group("1", "a", "b", "c"), group("2", "d", "e", "f"))));

    private static Group group(String id, String... bowlers) {
        return new Group(id, List.of(bowlers).stream().map(Events::bowler).toList());
    }

    private static Cut cut(int places, Optional<Finals> finals) {
        return new Cut(OptionalInt.of(places), OptionalDouble.empty(), TieRule.LAST_GAME, true, Counting.BEST, finals);
    }

    private static EventResult played(Event event) {
        return new TournamentSimulation(Playable.of(event).setup(LuckSource.byBall(new RandomStreams(5)))).play();
    }

    private static Finals finals(boolean roundRobin, int games, List<List<Match>> rounds) {
        return new Finals(0, Conditioning.NONE, 0, games, 30, rounds, roundRobin, List.of());
    }

    private static EventResult with(Finals finals, int places) {
        return played(QUALIFYING.withCut(Optional.of(cut(places, Optional.of(finals)))));
    }

    private static Side seed(int number) {
        return new Side(From.SEED, number);
    }

    private static Side winner(int match) {
        return new Side(From.WINNER, match);
    }

    @Test
    void qualifyingIsAsItWouldBeWithoutFinals() {
        EventResult without = played(QUALIFYING);
        EventResult with = with(finals(true, 1, Finals.roundRobin(4)), 4);

        assertThat(with.squads()).isEqualTo(without.squads());
        assertThat(with.timetable()).isEqualTo(without.timetable());
        assertThat(without.finals()).isEmpty();
        assertThat(with.shots()).isGreaterThan(without.shots());
    }

    /** The lanes have worn apart, so that a match comes out otherwise on another pair. */
    @Test
    void matchesAreBowledOnThePairsThatTheFinalsName() {
        Finals one = finals(true, 1, Finals.roundRobin(2));
        List<LanePair> pairs = QUALIFYING.centre().pairs();

        EventResult usual = with(one, 2);

        assertThat(one.pairs(QUALIFYING.centre())).isEqualTo(pairs);
        assertThat(with(one.on(pairs), 2)).isEqualTo(usual);
        assertThat(with(one.on(List.of(pairs.get(1))), 2).finals()).isNotEqualTo(usual.finals());
    }

    @Test
    void theBestOfQualifyingAreTheSeeds() {
        EventResult result = with(finals(true, 1, Finals.roundRobin(4)), 4);

        Cut rule = cut(4, Optional.empty());
        People people = new People(QUALIFYING);
        List<String> best = Qualifying.of(
                        rule, people.asDrawn(result.squads(), rule).people())
                .order(IntStream.range(0, 6).boxed().toList())
                .stream()
                .limit(4)
                .map(person -> people.bowlers().get(person).id())
                .toList();
        assertThat(result.finals().orElseThrow().finalists())
                .extracting(Finalist::name)
                .isEqualTo(best);
    }

    @Test
    void inARoundRobinEverybodyBowlsEveryRoundAndTheWinsAddUpToTheMatches() {
        FinalsResult found =
                with(finals(true, 1, Finals.roundRobin(4)), 4).finals().orElseThrow();

        assertThat(found.finalists()).allSatisfy(one -> assertThat(one.games()).hasSize(3));
        assertThat(found.finalists().stream().mapToDouble(Finalist::wins).sum()).isEqualTo(6);
        assertThat(found.finalists()).extracting(Finalist::place).containsExactlyInAnyOrder(1, 2, 3, 4);
        Finalist first = place(found, 1);
        Finalist second = place(found, 2);
        assertThat(points(first)).isGreaterThanOrEqualTo(points(second));
        assertThat(found.endMs()).isGreaterThan(Events.START_MS);
    }

    private static Finalist place(FinalsResult found, int place) {
        return found.finalists().stream()
                .filter(one -> one.place() == place)
                .findFirst()
                .orElseThrow();
    }

    private static double points(Finalist one) {
        return one.games().stream().mapToInt(game -> game).sum() + 30 * one.wins();
    }

    @Test
    void whoWinsAMatchGoesOnInThePlanAndTheLastMatchIsTheFinal() {
        List<List<Match>> plan = List.of(
                List.of(new Match(seed(1), seed(4)), new Match(seed(2), seed(3))),
                List.of(new Match(winner(1), winner(2))));
        FinalsResult found = with(finals(false, 2, plan), 4).finals().orElseThrow();

        List<Finalist> all = found.finalists();
        int winsOfFirst = sum(all.get(0), 0) >= sum(all.get(3), 0) ? 1 : 4;
        int winsOfSecond = sum(all.get(1), 0) >= sum(all.get(2), 0) ? 2 : 3;
        assertThat(all)
                .filteredOn(one -> one.games().size() == 4)
                .extracting(Finalist::seed)
                .containsExactly(Math.min(winsOfFirst, winsOfSecond), Math.max(winsOfFirst, winsOfSecond));
        Finalist a = all.get(winsOfFirst - 1);
        Finalist b = all.get(winsOfSecond - 1);
        int champion = sum(a, 2) > sum(b, 2) || (sum(a, 2) == sum(b, 2) && a.seed() < b.seed()) ? a.seed() : b.seed();
        assertThat(place(found, 1).seed()).isEqualTo(champion);
        assertThat(place(found, 2).seed()).isEqualTo(a.seed() + b.seed() - champion);
        assertThat(all.stream().mapToDouble(Finalist::wins).sum()).isEqualTo(3);
    }

    private static int sum(Finalist one, int from) {
        return one.games().get(from) + one.games().get(from + 1);
    }

    @Test
    void theSameSeedGivesTheSameFinals() {
        Finals plan = finals(true, 1, Finals.roundRobin(3));
        assertThat(with(plan, 3).finals()).isEqualTo(with(plan, 3).finals());
        assertThat(with(plan, 3).finals().orElseThrow().finalists())
                .allSatisfy(one -> assertThat(one.games()).hasSize(2));
    }

    @Test
    void aPlanThatNamesALaterMatchOrSomebodyTwiceIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> finals(false, 1, List.of(List.of(new Match(seed(1), winner(1))))))
                .withMessageContaining("the winner of match 1 cannot bowl in round 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        finals(false, 1, List.of(List.of(new Match(seed(1), seed(2)), new Match(seed(1), seed(3))))))
                .withMessageContaining("seed 1 cannot bowl in round 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> finals(
                        false,
                        1,
                        List.of(
                                List.of(new Match(seed(1), seed(2))),
                                List.of(new Match(winner(1), seed(3))),
                                List.of(new Match(winner(1), seed(4))))))
                .withMessageContaining("the winner of match 1 cannot bowl in round 3");
        assertThatIllegalArgumentException().isThrownBy(() -> finals(false, 1, List.of()));
    }
}
