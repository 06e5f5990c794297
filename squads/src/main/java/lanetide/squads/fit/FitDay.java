package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.GameEnded;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;
import lanetide.squads.model.Laws;
import lanetide.squads.model.Squad;
import lanetide.squads.result.EventResult;
import lanetide.squads.study.Playable;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.TapedLane;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/** A day in a centre with what was measured in it. Immutable. */
public final class FitDay {
    private final Event event;
    private final List<Reading> readings;
    private final Suspicions suspicions;

    /**
     * A day.
     *
     * @param event what was played
     * @param measured what was measured, on lanes, in squads and of bowlers of the event
     */
    public FitDay(Event event, Measurements measured) {
        List<TapeTaken> fresh = event.onFreshOil(measured.tapes());
        Event known = event.in(event.centre().with(new Findings(List.of(), fresh, List.of())));
        this.readings = Stream.of(
                        fresh.stream().map(Reading.Fresh::new),
                        measured.tapes().stream()
                                .filter(tape -> !fresh.contains(tape))
                                .map(Reading.Worn::new),
                        measured.balls().stream().flatMap(FitDay::seen),
                        played(event, measured.balls()).stream(),
                        ScoresByGame.of(event, measured.scores()).stream(),
                        ended(event, measured.ends()).stream())
                .flatMap(each -> each)
                .map(Reading.class::cast)
                .toList();
        this.event = upTo(known, lastSquad(known, measured));
        this.suspicions = new Suspicions(readings, Hypothesis.all(this.event, readings));
    }

    private static Stream<Reading> seen(BallThrown ball) {
        return Stream.concat(
                ball.seen().passed().map(at -> new Reading.Passed(ball)).stream(),
                ball.seen().pinsBoard().stream().mapToObj(board -> new Reading.Met(ball)));
    }

    /** Where each bowler plays in practice on fresh oil, all his balls together: his habit counts once. */
    private static List<Reading.Played> played(Event event, List<BallThrown> balls) {
        Map<String, Map<String, List<BallThrown>>> byBowler = balls.stream()
                .filter(ball -> event.isFresh(ball.when()) && ball.tellsWhereHePlays())
                .collect(Collectors.groupingBy(
                        ball -> ball.when().squad(),
                        TreeMap::new,
                        Collectors.groupingBy(ball -> ball.bowler().orElseThrow(), TreeMap::new, Collectors.toList())));
        List<Reading.Played> all = new ArrayList<>();
        byBowler.forEach((squad, bowlers) -> bowlers.forEach((bowler, thrown) -> all.add(new Reading.Played(
                squad,
                bowler,
                thrown.stream()
                        .flatMapToDouble(ball -> ball.seen().arrowsBoard().stream())
                        .average()
                        .orElseThrow()))));
        return all;
    }

    private static List<Reading.Ended> ended(Event event, List<GameEnded> ends) {
        Map<String, Long> starts = event.squads().stream().collect(Collectors.toMap(Squad::id, Squad::startMs));
        return ends.stream()
                .map(end -> new Reading.Ended(end, starts.get(end.squad())))
                .toList();
    }

    private static int lastSquad(Event event, Measurements measured) {
        List<String> names = Stream.of(
                        measured.tapes().stream().map(tape -> tape.when().squad()),
                        measured.balls().stream().map(ball -> ball.when().squad()),
                        measured.scores().stream().map(score -> score.squad()),
                        measured.ends().stream().map(end -> end.squad()))
                .flatMap(each -> each)
                .toList();
        return IntStream.range(0, event.squads().size())
                .filter(s -> names.contains(event.squads().get(s).id()))
                .max()
                .orElse(0);
    }

    /** What comes after the last reading tells nothing of it. */
    private static Event upTo(Event event, int last) {
        return event.withSquads(
                event.squads().subList(0, last + 1), event.plans().subList(0, last + 1));
    }

    /**
     * What was measured, as playings can say it.
     *
     * @return the readings: tapes on fresh oil, other tapes, balls, games, ends of games
     */
    public List<Reading> readings() {
        return readings;
    }

    /** What may have happened to its readings. */
    Suspicions suspicions() {
        return suspicions;
    }

    /** What was read. */
    double[] observed() {
        return readings.stream().mapToDouble(Reading::observed).toArray();
    }

    /**
     * Covariance of what is not luck of play in the readings: their own errors, and on fresh oil how a lane differs
     * from others.
     */
    RealMatrix ownError() {
        RealMatrix covariance = new Array2DRowRealMatrix(readings.size(), readings.size());
        for (int i = 0; i < readings.size(); i++) {
            covariance.setEntry(i, i, readings.get(i).errorVariance());
        }
        freshByLane().forEach((lane, at) -> {
            Map<OilPattern, OilFilm> sheets = new HashMap<>();
            RealMatrix ofLane = new TapedLane(
                            tape -> said(event, sheets, tape), tapes(at), TapedLane.FRESH_SHARE, TapedLane.FRESH_FIELD)
                    .covariance();
            for (int i = 0; i < at.size(); i++) {
                for (int j = 0; j < at.size(); j++) {
                    covariance.setEntry(at.get(i), at.get(j), ofLane.getEntry(i, j));
                }
            }
        });
        return covariance;
    }

    private List<TapeTaken> tapes(List<Integer> at) {
        return at.stream().map(i -> ((Reading.Fresh) readings.get(i)).tape()).toList();
    }

    private Map<Integer, List<Integer>> freshByLane() {
        return IntStream.range(0, readings.size())
                .filter(i -> readings.get(i) instanceof Reading.Fresh)
                .boxed()
                .collect(Collectors.groupingBy(
                        i -> ((Reading.Fresh) readings.get(i)).tape().lane(), TreeMap::new, Collectors.toList()));
    }

    private static OilFilm sheet(OilPattern pattern) {
        return OilFilm.fresh(pattern, LaneGrid.DEFAULT);
    }

    /** What was read on each lane's fresh oil beside what the sheet says. */
    List<FreshLane> freshLanes() {
        return freshByLane().entrySet().stream()
                .map(entry -> freshLane(entry.getKey(), tapes(entry.getValue())))
                .toList();
    }

    private FreshLane freshLane(int lane, List<TapeTaken> tapes) {
        Map<OilPattern, OilFilm> sheets = new HashMap<>();
        ToDoubleFunction<TapeTaken> sheet = tape -> said(event, sheets, tape);
        double squares = 0;
        for (TapeTaken tape : tapes) {
            double said = sheet.applyAsDouble(tape) / tape.errorUnits();
            squares += said * said;
        }
        return new FreshLane(
                lane,
                tapes.size(),
                ratio(sheet, tapes),
                1 / Math.sqrt(squares),
                ratio(
                        sheet,
                        tapes.stream()
                                .filter(tape ->
                                        tape.distanceM() < laid(event, tape).lengthM() / 3)
                                .toList()),
                ratio(
                        sheet,
                        tapes.stream()
                                .filter(tape ->
                                        tape.distanceM() > 2 * laid(event, tape).lengthM() / 3)
                                .toList()));
    }

    /** What was laid where a tape was taken: the pattern of its squad and lane. */
    private static OilPattern laid(Event event, TapeTaken tape) {
        return event.pattern(event.squad(tape.when().squad()), tape.lane());
    }

    private static double said(Event event, Map<OilPattern, OilFilm> sheets, TapeTaken tape) {
        OilFilm sheet = sheets.computeIfAbsent(laid(event, tape), FitDay::sheet);
        return FilmTapes.units(sheet, tape.board(), tape.distanceM());
    }

    private static double ratio(ToDoubleFunction<TapeTaken> sheet, List<TapeTaken> tapes) {
        double products = 0;
        double squares = 0;
        for (TapeTaken tape : tapes) {
            double weight = 1 / (tape.errorUnits() * tape.errorUnits());
            double said = sheet.applyAsDouble(tape);
            products += weight * said * tape.units();
            squares += weight * said * said;
        }
        return squares > 0 ? products / squares : Double.NaN;
    }

    /** The day under a set, ready to be played. */
    Playable under(ValueSet set) {
        return Playable.of(PlayModel.under(event, set));
    }

    /** The laws by which it was played, but for values of what is not known. */
    Laws laws() {
        return event.laws();
    }

    /**
     * The day under a set with those who come in one playing.
     *
     * @param ready this day, or another under the same laws, under a set with these values, from {@link #under}
     * @param set the set, whose lanes may be drawn otherwise
     * @param streams luck of the playing
     */
    Playable comes(Playable ready, ValueSet set, RandomStreams streams) {
        Event come = event.isDrawn() ? event.asTheyCome(streams) : event;
        return ready.with(PlayModel.under(come, set));
    }

    /**
     * What there is at the places of readings.
     *
     * @param asked the readings, or all that the suspicions ask
     * @param seen who saw the playing, asked for the same
     * @param played the day as it was played
     * @param result what came of it
     */
    static double[] there(List<Reading> asked, ReadingEye seen, Event played, EventResult result) {
        double[] there = seen.said(result);
        Map<OilPattern, OilFilm> sheets = new HashMap<>();
        for (int i = 0; i < there.length; i++) {
            if (asked.get(i) instanceof Reading.Fresh fresh) {
                there[i] = said(played, sheets, fresh.tape());
            }
        }
        return there;
    }
}
