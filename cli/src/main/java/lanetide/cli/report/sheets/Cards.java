package lanetide.cli.report.sheets;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.preview.Seat;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.Figures;
import lanetide.cli.report.page.Table;
import lanetide.cli.scenario.TimeOfDay;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.play.TypicalLine;

/** A card for every bowler: where he bowls, where players of his style and hand start there, and what to expect. */
final class Cards {
    private final Event event;
    private final StartReel reel;

    Cards(Event event, StartReel reel) {
        this.event = event;
        this.reel = reel;
    }

    List<SheetModel.Part> parts() {
        List<SheetModel.Part> cards = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            List<Group> groups = event.squads().get(s).groups();
            for (int g = 0; g < groups.size(); g++) {
                for (Bowler bowler : groups.get(g).bowlers()) {
                    cards.add(card(new Seat(s, g, java.util.Optional.of(bowler.id())), bowler, cards.size() + 1));
                }
            }
        }
        return cards;
    }

    private SheetModel.Part card(Seat seat, Bowler bowler, int number) {
        Squad squad = event.squads().get(seat.squad());
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Game", "Lanes", "Lay down", "Arrows", "Leave the oil"));
        List<Start> starts = new ArrayList<>();
        for (int game = 0; game < seat.rotation(event).games(); game++) {
            Start start = start(seat, bowler, game);
            starts.add(start);
            rows.add(List.of(
                    String.valueOf(game + 1),
                    seat.pair(event, game).id(),
                    Figures.fixed(start.laydown(), 0),
                    Figures.fixed(start.arrows(), 0),
                    Double.isNaN(start.low())
                            ? "-"
                            : Figures.fixed(start.low(), 0) + " to " + Figures.fixed(start.high(), 0)));
        }
        return new SheetModel.Part(
                bowler.id(),
                List.of(
                        "Squad " + squad.id() + ", group "
                                + squad.groups().get(seat.group()).id() + ", practice from "
                                + TimeOfDay.write(squad.startMs()) + " on "
                                + seat.pair(event, 0).id() + ".",
                        expect(bowler, starts)),
                List.of(Table.of("card-" + number, "Boards from your own gutter", rows, 2)));
    }

    /** Where a style starts on a pair, means over its two lanes; NaN where it meets no pocket. */
    private record Start(double laydown, double arrows, double low, double high) {}

    private Start start(Seat seat, Bowler bowler, int game) {
        LanePair pair = seat.pair(event, game);
        String squad = event.squads().get(seat.squad()).id();
        int before = seat.lastPlayed(event, game);
        List<TypicalLine> lines = new ArrayList<>();
        for (int lane : List.of(pair.left(), pair.right())) {
            reel.on(lane, squad, before).stream()
                    .filter(line -> line.window().style().equals(bowler.style().id())
                            && line.window().hand() == bowler.hand()
                            && line.best().isPresent())
                    .forEach(lines::add);
        }
        return new Start(
                mean(lines, line -> line.best().orElseThrow().laydownBoard()),
                mean(lines, line -> line.best().orElseThrow().arrowsBoard()),
                mean(lines, line -> line.window().low()),
                mean(lines, line -> line.window().high()));
    }

    private static double mean(List<TypicalLine> lines, java.util.function.ToDoubleFunction<TypicalLine> value) {
        return lines.stream().mapToDouble(value).average().orElse(Double.NaN);
    }

    private static String expect(Bowler bowler, List<Start> starts) {
        String kind = bowler.style().id() + ", " + ConstantName.of(bowler.hand()) + " hand: ";
        double move = starts.get(starts.size() - 1).laydown() - starts.get(0).laydown();
        if (Double.isNaN(move)) {
            return kind + "where no board stands, no line of this style meets the pocket; change speed, angle or ball.";
        }
        return kind
                + (Math.abs(move) < 1
                        ? "expect to stay within a board of where you start."
                        : "expect to have moved the feet about " + Figures.fixed(Math.abs(move), 0)
                                + (move > 0 ? " deeper" : " nearer the gutter") + " by the last game.");
    }
}
