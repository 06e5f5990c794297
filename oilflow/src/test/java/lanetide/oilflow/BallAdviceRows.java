package lanetide.oilflow;

import java.util.List;
import java.util.Optional;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.LineAdvisor;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;

/** Which way a medium ball is changed, where a change is advised at all. */
final class BallAdviceRows {
    private static final String TRADE = "common practice, no source";
    private static final List<Double> RATIOS = List.of(2.0, 4.0, 8.0);
    private static final List<String> SURFACES = List.of("hard-synthetic", "wood");

    private final LineFinder finder = Lanes.finder();
    private int weaker;
    private int stronger;

    private BallAdviceRows() {}

    static List<ValidationRow> rows() {
        return List.of(
                new BallAdviceRows().onDry(), new BallAdviceRows().onWornHeads(), new BallAdviceRows().onLongAndWet());
    }

    private ValidationRow onDry() {
        RATIOS.forEach(ratio -> ask(Lanes.pattern(36, 20, ratio), 0));
        return row("fresh 36 ft, 20 mL", "a weaker one", weaker);
    }

    private ValidationRow onWornHeads() {
        RATIOS.forEach(ratio -> ask(Lanes.pattern(40, 23, ratio), 8));
        return row("40 ft, 23 mL, worn by 8 games", "a weaker one", weaker);
    }

    private ValidationRow onLongAndWet() {
        RATIOS.forEach(ratio -> ask(Lanes.pattern(46, 30, ratio), 0));
        return row("fresh 46 ft, 30 mL", "a stronger one", stronger);
    }

    private void ask(OilPattern pattern, int games) {
        OilFilm film = games == 0
                ? Lanes.fresh(pattern)
                : new Block(Lanes.field(Lanes.DEFAULT_COVER), pattern, 1).play(games).film;
        LineAdvisor advisor = new LineAdvisor(finder, Lanes.homes(finder, pattern), pattern.lengthM());
        for (String style : Lanes.STYLES) {
            for (String surface : SURFACES) {
                Player player = Lanes.player(style, Lanes.DEFAULT_COVER, surface);
                List<Contact> others = List.of(
                        Lanes.player(style, "weak-reactive", surface).contact(),
                        Lanes.player(style, "strong-reactive", surface).contact());
                count(advisor.natural(player, film)
                        .flatMap(line -> advisor.ballChange(player, film, line.line(), others)));
            }
        }
    }

    private void count(Optional<BallChange> change) {
        weaker += change.isPresent() && !change.get().stronger() ? 1 : 0;
        stronger += change.isPresent() && change.get().stronger() ? 1 : 0;
    }

    private ValidationRow row(String where, String wanted, int right) {
        int all = weaker + stronger;
        return new ValidationRow(
                "Another ball in place of a medium one where one is advised, " + where
                        + ", three ratios, two surfaces, four styles",
                TRADE,
                wanted + ", at least 80 %",
                ValidationRow.format("%d of %d", right, all),
                all > 0 && right >= 0.8 * all,
                Use.CHECK);
    }
}
