package lanetide.squads.play;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.oilflow.film.LaidRatio;
import lanetide.oilflow.film.Levelling;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.Topography;

/** One lane through the day: its film, and what machines did to it. */
final class LaneInPlay {
    private final int number;
    private final OilFilm film;
    private double appliedMl;
    private double strippedMl;
    private int gamesOnOil;
    private Map<Hand, Double> told = Map.of();
    private OilPattern pattern;

    /** A lane of some shape without oil. */
    LaneInPlay(int number, LaneGrid grid, Topography topography) {
        this.number = number;
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

    /** Lets the films of lanes level while nobody plays on them. */
    static void rest(List<LaneInPlay> lanes, Levelling levelling, long restMs) {
        levelling.relax(lanes.stream().map(LaneInPlay::film).toList(), restMs / 1000.0);
    }

    void countGames(int games) {
        gamesOnOil += games;
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
