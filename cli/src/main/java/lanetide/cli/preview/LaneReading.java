package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.cli.lines.Kind;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineAdvisor;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.PinCarry;

/** Reads lanes for one kind of bowler: what would he start with there? One object serves one thread. */
final class LaneReading {
    private final LaneReadings shared;
    private final Kind kind;
    private final Player player;
    private final LineFinder finder;

    /** A reading for one of the kinds. */
    LaneReading(LaneReadings shared, Kind kind) {
        this.shared = shared;
        this.kind = kind;
        this.player = shared.player(kind);
        this.finder = shared.finder();
    }

    /** What one playing tells, from the films of both lanes before each game. */
    PreviewStudy.PlayingMet playing(List<List<OilFilm>> films, boolean withBalls) {
        Optional<LineAdvisor> advisor = withBalls ? Optional.of(advisor()) : Optional.empty();
        List<List<PreviewStudy.Met>> games = new ArrayList<>();
        for (List<OilFilm> pair : films) {
            games.add(pair.stream().map(film -> told(film, advisor)).toList());
        }
        return new PreviewStudy.PlayingMet(games, signs(films));
    }

    /** The fresh pattern, read in full. */
    PreviewStudy.Met freshTold() {
        return told(shared.fresh(), Optional.of(advisor()));
    }

    /** The fresh pattern, read for the line and its window alone. */
    PreviewStudy.Met fresh() {
        return met(shared.fresh());
    }

    /** A lane, read for the line and its window alone. */
    PreviewStudy.Met met(OilFilm film) {
        return new PreviewStudy.Met(
                window(film).map(found -> shared.told(kind, found)), Optional.empty(), Optional.empty(), false);
    }

    /** A lane, read in full: how good the line is too, and with an advisor whether another ball would help more. */
    private PreviewStudy.Met told(OilFilm film, Optional<LineAdvisor> advisor) {
        Optional<ExitWindow> window = window(film);
        return new PreviewStudy.Met(
                window.map(found -> shared.told(kind, found)),
                window.map(found -> finder.fineQuality(player, film, found.played())),
                window.flatMap(found -> advisor.flatMap(who -> change(who, film, found.played()))),
                advisor.isPresent());
    }

    private Optional<ExitWindow> window(OilFilm film) {
        return shared.window(finder, kind, film);
    }

    private Optional<BallChange> change(LineAdvisor advisor, OilFilm film, Line played) {
        List<Contact> others = shared.balls().stream()
                .filter(cover -> !cover.id().equals(kind.cover().id()))
                .map(cover ->
                        shared.physics().contact(cover, shared.event().centre().surface()))
                .toList();
        return advisor.ballChange(player, film, played, others);
    }

    private LineAdvisor advisor() {
        return new LineAdvisor(
                finder, shared.physics().homeLines(finder, pattern()), pattern().lengthM());
    }

    private OilPattern pattern() {
        return shared.event().pattern();
    }

    private List<Preview.Sign> signs(List<List<OilFilm>> films) {
        List<Preview.Sign> signs = new ArrayList<>();
        for (int lane = 0; lane < films.get(0).size(); lane++) {
            Optional<ExitWindow> first = window(films.get(0).get(lane));
            if (first.isPresent()) {
                Line start = first.get().played();
                signs.add(sign(0, shared.fresh(), start));
                for (int game = 1; game < films.size(); game++) {
                    signs.add(sign(game + 1, films.get(game).get(lane), start));
                }
            }
        }
        return signs;
    }

    private Preview.Sign sign(int asGame, OilFilm film, Line start) {
        return new Preview.Sign(asGame, finder.arrivalBoard(player, film, start) - PinCarry.POCKET_BOARD);
    }
}
