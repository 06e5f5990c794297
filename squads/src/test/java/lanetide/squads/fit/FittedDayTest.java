package lanetide.squads.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.EventResult;
import lanetide.squads.study.Playable;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FittedDayTest {
    private static final List<ValueSet> SETS = ValueSets.shipped().subList(0, 40);
    private static final FitPlan PLAN = FitPlan.quick(3, 2);
    private static final Measurements MEASURED = TwoPairs.measured(
            Playable.of(PlayModel.under(TwoPairs.EVENT, ValueSets.shipped(60))), new RandomStreams(2));

    private static FitResult fit(List<TapeTaken> tapes, FitPlan plan) {
        Measurements measured = new Measurements(tapes, List.of(), List.of(), List.of());
        return Fit.run(List.of(new FitDay(TwoPairs.EVENT, measured)), SETS, plan, done -> {});
    }

    private static List<TapeTaken> ofLane(int lane) {
        return MEASURED.tapes().stream().filter(tape -> tape.lane() == lane).toList();
    }

    @Test
    void aFitIsTheSameOnAnyNumberOfThreadsAndLeavesEveryValueInItsRange() {
        FitResult one = fit(ofLane(1), FitPlan.quick(3, 1));
        assertThat(fit(ofLane(1), PLAN)).isEqualTo(one);
        assertThat(one.sets()).hasSameSizeAs(SETS);
        NormalScores.MOVED.forEach(unknown -> assertThat(one.sets())
                .allSatisfy(set -> assertThat(set.of(unknown)).isBetween(unknown.low(), unknown.high())));
        assertThat(one.learnt().get(0).unknown().id()).isIn("end-floor", "head-decay");
        assertThat(one.suspicions()).noneMatch(suspicion -> suspicion.verdict() == Suspicion.Verdict.NAMED);
    }

    @Test
    void aFitIsTheSameWhereSetsAreReadyAndTheirLinesHaveBeenFound() {
        FitDay day = new FitDay(TwoPairs.EVENT, new Measurements(ofLane(1), List.of(), List.of(), List.of()));
        Map<ValueSet, Playable> known = new HashMap<>();
        SETS.forEach(set -> known.put(set, Playable.of(PlayModel.under(TwoPairs.EVENT, set))));
        FitResult one = Fit.run(List.of(day), SETS, known, PLAN, done -> {});
        assertThat(Fit.run(List.of(day), SETS, known, PLAN, done -> {})).isEqualTo(one);
        assertThat(fit(ofLane(1), PLAN)).isEqualTo(one);
    }

    /** What is foretold of a ball is the less sure, and what it teaches the less, the less was noted of it. */
    @Test
    void ballsOfWhichLittleWasNotedAreFittedAndAreLessSurelyForetold() {
        List<BallThrown> balls = MEASURED.balls().subList(0, 4);
        double all = foretold(balls);
        double withoutWho =
                foretold(balls.stream().map(FittedDayTest::ofSomebody).toList());
        assertThat(withoutWho).isGreaterThan(all);
    }

    private static double foretold(List<BallThrown> balls) {
        FitResult result = Fit.run(
                List.of(new FitDay(TwoPairs.EVENT, new Measurements(List.of(), balls, List.of(), List.of()))),
                SETS,
                new FitPlan(3, 2),
                done -> {});
        return result.checks().stream()
                .filter(check -> check.reading() instanceof Reading.Met)
                .mapToDouble(check -> check.before().deviation())
                .average()
                .orElseThrow();
    }

    private static BallThrown ofSomebody(BallThrown ball) {
        return new BallThrown(
                OptionalInt.empty(),
                ball.when(),
                Optional.empty(),
                new BallSeen(
                        OptionalDouble.empty(),
                        ball.seen().arrowsBoard(),
                        Optional.empty(),
                        ball.seen().pinsBoard(),
                        ball.seen().errorBoards()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                ball.place());
    }

    @Test
    void aBallIsReadAtEachBoardOnWhichItWasSeen() {
        BallThrown ball = MEASURED.balls().get(0);
        BallThrown seen = new BallThrown(
                ball.lane(),
                ball.when(),
                ball.bowler(),
                new BallSeen(
                        ball.seen().laydownBoard(),
                        ball.seen().arrowsBoard(),
                        Optional.of(new BallSeen.Passed(12, 9.5)),
                        ball.seen().pinsBoard(),
                        0.25),
                ball.speedMps(),
                ball.spinRadps(),
                ball.place());
        Measurements measured = new Measurements(List.of(), List.of(seen), List.of(), List.of());
        assertThat(new FitDay(TwoPairs.EVENT, measured).readings())
                .containsExactly(
                        new Reading.Passed(seen),
                        new Reading.Met(seen),
                        new Reading.Played(
                                "A",
                                ball.bowler().orElseThrow(),
                                ball.seen().arrowsBoard().orElseThrow()));
        assertThat(new Reading.Passed(seen).observed()).isEqualTo(9.5);
        assertThat(new Reading.Passed(seen).errorVariance()).isEqualTo(0.0625);
    }

    @Test
    void tapesInMicrometresAreFoundOut() {
        List<TapeTaken> wrong = new ArrayList<>();
        for (TapeTaken tape : MEASURED.tapes()) {
            boolean worn = tape.when().afterGame() > 0;
            wrong.add(new TapeTaken(
                    tape.lane(),
                    tape.when(),
                    tape.distanceM(),
                    tape.board(),
                    worn ? tape.units() * OilFilm.UNIT_UM : tape.units(),
                    tape.errorUnits(),
                    tape.place()));
        }
        Suspicion first = fit(wrong, PLAN).suspicions().get(0);
        assertThat(first.verdict()).isEqualTo(Suspicion.Verdict.NAMED);
        assertThat(first.what()).isEqualTo(new Explanation.OtherUnit(new When("A", TwoPairs.GAMES), OilFilm.UNIT_UM));
    }

    @ParameterizedTest
    @ValueSource(ints = {-4, 2, 4})
    void freshTapesOfAPatternOfAnotherLengthAreFoundOut(int longerFt) {
        double longerM = longerFt * LaneGeometry.FOOT_M;
        OilPattern other = OilPattern.of("other", TwoPairs.EVENT.pattern().lengthM() + longerM, 25, 4);
        Event event = Fixtures.withPattern(TwoPairs.EVENT, other);
        List<TapeTaken> fresh = TwoPairs.measured(
                        Playable.of(PlayModel.under(event, ValueSets.shipped(60))), new RandomStreams(2))
                .tapes()
                .stream()
                .filter(tape -> tape.when().afterGame() == 0)
                .toList();
        Suspicion first = fit(fresh, PLAN).suspicions().get(0);
        assertThat(first.verdict()).isEqualTo(Suspicion.Verdict.NAMED);
        assertThat(first.what()).isEqualTo(new Explanation.OtherPattern(new When("A", 0), longerM));
    }

    @Test
    void aLaneGoesOnFromWhatTapesReadOnItAndTheOilAccountStillCloses() {
        double distanceM = 10 * LaneGeometry.FOOT_M;
        When when = new When("A", 2);
        TapeTaken tape = new TapeTaken(1, when, distanceM, 15, 5, 0.01, "test");
        Event event =
                TwoPairs.EVENT.in(TwoPairs.EVENT.centre().with(new Findings(List.of(), List.of(), List.of(tape))));
        assertThat(seen(TwoPairs.EVENT, distanceM)).isGreaterThan(7);
        // Between the rows of the grid the field has fallen a little.
        assertThat(seen(event, distanceM)).isCloseTo(5, within(0.7));
    }

    /** What lies on board 15 of lane 1 after two games. */
    private static double seen(Event event, double distanceM) {
        List<Double> seen = new ArrayList<>();
        Playable playable = Playable.of(event);
        EventResult result = new TournamentSimulation(playable.setup(LuckSource.byBall(new RandomStreams(4)))
                        .recording(LaneRecords.NONE)
                        .watchedBy(Observers.of((moment, film, lines) -> {
                            if (moment.lane() == 1 && moment.squad().equals("A") && moment.afterGame() == 2) {
                                seen.add(FilmTapes.units(film, 15, distanceM));
                            }
                        })))
                .play();
        assertThat(result.oil().relativeError()).isCloseTo(0, within(1e-9));
        return seen.get(0);
    }

    @Test
    void ofManyReadingsOnlySoManyExplanationsAreLookedAtAsTakeSeconds() {
        List<Reading> few =
                MEASURED.tapes().stream().<Reading>map(Reading.Worn::new).toList();
        assertThat(Hypothesis.all(TwoPairs.EVENT, few))
                .extracting(each -> each.what().getClass().getSimpleName())
                .contains("OtherUnit", "OtherTime", "SidesSwapped", "LanesSwapped");
        List<Reading> many = new ArrayList<>();
        for (int round = 0; round < 10; round++) {
            many.addAll(few);
        }
        assertThat(Hypothesis.all(TwoPairs.EVENT, many)).hasSize(10);
    }

    @Test
    void stepsMustCountTheReadingsOnce() {
        assertThatIllegalArgumentException().isThrownBy(() -> new FitPlan(1, 1, List.of(4.0, 4.0), true));
        assertThatIllegalArgumentException().isThrownBy(() -> new FitPlan(1, 0));
    }
}
