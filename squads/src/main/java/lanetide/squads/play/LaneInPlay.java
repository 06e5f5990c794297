package lanetide.squads.play;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lanetide.oilflow.film.LaidRatio;
import lanetide.oilflow.film.Levelling;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.unknown.TapedLane;

/** One lane through the day: its film, and what machines did to it. */
final class LaneInPlay {
    private final int number;
    private final OilFilm film;
    private double appliedMl;
    private double strippedMl;
    private int gamesOnOil;
    private Map<Hand, Double> told = Map.of();
    private OilPattern pattern;
    private final List<TapeTaken> tapes;
    private String squad = "";
    private int gamesOfSquad;
    private long leftMs;

    /** A lane of some shape without oil, and what tapes will read on it during the event. */
    LaneInPlay(int number, LaneGrid grid, Topography topography, List<TapeTaken> tapes) {
        this.number = number;
        this.tapes = tapes;
        this.film = OilFilm.bare(grid, topography);
    }

    int number() {
        return number;
    }

    OilFilm film() {
        return film;
    }

    int gamesOnOil() {
        return gamesOnOil;
    }

    void strip() {
        strippedMl += film.strip();
    }

    /** Cleans it past the end of the pattern that was laid last. */
    void cleanEnds() {
        if (pattern != null) {
            strippedMl += film.stripPast(pattern.lengthM());
        }
    }

    /** Lays what a machine lays of a pattern, given as it lies on a bare lane. */
    void oil(OilPattern laid, OilFilm fresh, LaidRatio ratio) {
        pattern = laid;
        double beforeMl = film.volumeMl();
        film.lay(fresh, ratio);
        appliedMl += ratio.isEven() ? ratio.at(0, 1) * laid.volumeMl() : film.volumeMl() - beforeMl;
        gamesOnOil = 0;
        told = Map.of();
    }

    /** The pattern that was laid last; empty before the first oiling. */
    Optional<OilPattern> pattern() {
        return Optional.ofNullable(pattern);
    }

    /** Lets the films of lanes level from when somebody played on them, or a machine oiled them, last. */
    static void rest(List<LaneInPlay> lanes, Levelling levelling, long nowMs) {
        Map<Long, List<LaneInPlay>> byRest = lanes.stream()
                .collect(Collectors.groupingBy(lane -> nowMs - lane.leftMs, TreeMap::new, Collectors.toList()));
        byRest.forEach((restMs, alike) ->
                levelling.relax(alike.stream().map(LaneInPlay::film).toList(), restMs / 1000.0));
        lanes.forEach(lane -> lane.leftAt(nowMs));
    }

    /** From now on nobody plays on it. */
    void leftAt(long timeMs) {
        leftMs = timeMs;
    }

    /** A squad finds it. */
    void foundBy(String finder) {
        squad = finder;
        gamesOfSquad = 0;
        goOnFromTapes();
    }

    void countGames(int games) {
        gamesOnOil += games;
        gamesOfSquad += games;
        goOnFromTapes();
    }

    /** What tapes read at this time is what lies there; the account counts it as laid or taken by whoever read it. */
    private void goOnFromTapes() {
        List<TapeTaken> now = tapes.stream()
                .filter(tape -> tape.when().afterGame() == gamesOfSquad
                        && tape.when().squad().equals(squad))
                .toList();
        if (!now.isEmpty()) {
            appliedMl += film.correct(new TapedLane(film, now, TapedLane.WORN_SHARE, TapedLane.WORN_FIELD).ratio(0));
        }
    }

    /** Those who leave it tell how far they stood in, by hand (boards). */
    void tell(Map<Hand, Double> movedBoards) {
        if (!movedBoards.isEmpty()) {
            told = movedBoards;
        }
    }

    /** What those of a hand told who left it last (boards); empty if nobody did since it was oiled. */
    OptionalDouble told(Hand hand) {
        Double moved = told.get(hand);
        return moved == null ? OptionalDouble.empty() : OptionalDouble.of(moved);
    }

    /** This lane's part of the oil account. */
    OilAccount account() {
        return new OilAccount(appliedMl, film.volumeMl(), 0, 0, 0, strippedMl);
    }
}
