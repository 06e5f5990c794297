package lanetide.cli.doubt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import lanetide.cli.report.Figures;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;

/**
 * Looks at the fresh pattern of an event: whether its film is one that the laws of friction were held to, and whether
 * every style of its bowlers finds a line to the pocket.
 */
public final class LaneDoubts {
    private final Event event;
    private final Physics physics;
    private final OilFilm fresh;

    private LaneDoubts(Event event) {
        this.event = event;
        this.physics = Physics.under(event.laws());
        this.fresh = OilFilm.fresh(event.pattern(), physics.grid());
    }

    /** What is doubtful of a bowler's line whatever his name: bowlers who share it are looked at once. */
    private record Thrower(PlayingStyle style, Hand hand, Coverstock cover) {}

    /**
     * The reading of a scenario with these doubts.
     *
     * @param reading a scenario as it was read
     * @return the same, with a warning for each doubt; itself if the scenario cannot be played
     */
    public static Reading told(Reading reading) {
        return reading.scenario()
                .map(LaneDoubts::ofPatterns)
                .filter(doubts -> !doubts.isEmpty())
                .map(reading::with)
                .orElse(reading);
    }

    /** Those of each pattern, as if it lay everywhere; where there are several, with its name. */
    private static List<Notice> ofPatterns(Scenario scenario) {
        Event event = scenario.event();
        List<OilPattern> patterns = event.patterns();
        return patterns.size() == 1
                ? new LaneDoubts(event).find(scenario.file(), "pattern", "")
                : patterns.stream()
                        .flatMap(pattern -> new LaneDoubts(event.on(pattern))
                                .find(scenario.file(), pattern.id(), "Pattern " + pattern.id() + ": ").stream())
                        .toList();
    }

    private List<Notice> find(String file, String field, String opening) {
        List<Notice> doubts = new ArrayList<>();
        thickFilm()
                .ifPresent(message -> doubts.add(
                        Notice.atStart(NoticeCode.FILM_BEYOND_FRICTION, file, field, "", opening + message)));
        withoutLine()
                .ifPresent(message ->
                        doubts.add(Notice.atStart(NoticeCode.NO_LINE_TO_POCKET, file, field, "", opening + message)));
        return doubts;
    }

    private Optional<String> thickFilm() {
        double units = Arrays.stream(fresh.cellsUm()).max().orElse(0) / OilFilm.UNIT_UM;
        return units <= FrictionModel.MOST_UNITS
                ? Optional.empty()
                : Optional.of(
                        "The film is " + Figures.fixed(units, 0) + " units thick at the most, and the laws of friction"
                                + " were held to heads of up to " + Figures.fixed(FrictionModel.MOST_UNITS, 0)
                                + " units: what balls do on more is a guess. Less oil, or a smaller ratio, would be within"
                                + " what is known.");
    }

    /** One bowler of each kind; on halves that are alike a left-hander's line is a right-hander's. */
    private Map<Thrower, Bowler> throwers() {
        boolean alike = event.pattern().isSymmetric();
        Map<Thrower, Bowler> throwers = new LinkedHashMap<>();
        for (Squad squad : event.squads()) {
            for (Bowler bowler : squad.everybody()) {
                Hand hand = alike ? Hand.RIGHT : bowler.hand();
                throwers.putIfAbsent(new Thrower(bowler.style(), hand, bowler.cover()), bowler);
            }
        }
        return throwers;
    }

    private Optional<String> withoutLine() {
        LineFinder finder = new LineFinder(new RowMarch(physics.grid()), physics.carry());
        HomeLines homes = physics.homeLines(finder, event.pattern());
        SortedSet<String> without = new TreeSet<>();
        throwers().forEach((thrower, bowler) -> {
            Player player = StartingLines.player(bowler, thrower.hand(), thrower.cover(), event, physics);
            if (homes.start(player, fresh).isEmpty()) {
                without.add(thrower.style().id() + " with a " + thrower.cover().id() + " ball");
            }
        });
        return without.isEmpty()
                ? Optional.empty()
                : Optional.of("No line meets the pocket on the fresh pattern for " + String.join(", ", without)
                        + ": scores of those who play so mean little. See `lanetide lines` for what comes nearest, and"
                        + " check pattern, ball and style.");
    }
}
