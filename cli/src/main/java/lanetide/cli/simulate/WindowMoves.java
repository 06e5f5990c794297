package lanetide.cli.simulate;

import java.util.List;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.WindowStudy.Move;

/** How far lines go, over what is not known. */
public final class WindowMoves {
    /** Over the table. */
    public static final String HEADING = "How far lines go, whatever of what is not known is true";

    /** How to read it. */
    public static final String NOTE =
            "Boards by which the exit board lies further in than on the fresh pattern (below 0 further out), mean over a left"
                    + " and a right lane, with a 90 % interval, when the squad comes and when it leaves. Where a line starts on"
                    + " fresh oil a bowler finds in practice; how far it goes is what can be told. - where no line meets the"
                    + " pocket, or not under nine sets of values in ten.";

    private WindowMoves() {}

    /**
     * A table: a row for each squad and kind of bowler.
     *
     * @param study what came of playing
     * @return the rows, the head first; empty where it was not looked at
     */
    public static List<List<String>> rows(StudyResult study) {
        List<Move> moves = study.moves();
        return moves.isEmpty()
                ? List.of()
                : Table.rows(
                        List.of("Squad", "Style", "comes", "90 % interval", "leaves", "90 % interval"),
                        moves.stream()
                                .filter(move -> move.moment().afterGame() == 0)
                                .toList(),
                        comes -> {
                            Move leaves = leaving(moves, comes);
                            return List.of(
                                    comes.moment().squad(),
                                    new SquadLanes.StyleHand(comes.style(), comes.hand()).words(),
                                    boards(comes),
                                    interval(comes),
                                    boards(leaves),
                                    interval(leaves));
                        });
    }

    private static Move leaving(List<Move> moves, Move comes) {
        return moves.stream()
                .filter(move -> move.moment().squad().equals(comes.moment().squad())
                        && move.moment().afterGame() > 0
                        && move.style().equals(comes.style())
                        && move.hand() == comes.hand())
                .findFirst()
                .orElseThrow();
    }

    private static String boards(Move move) {
        return move.boards().isEmpty() ? "-" : Figures.signed(move.boards().getAsDouble(), 1);
    }

    private static String interval(Move move) {
        return move.ci90().map(interval -> Figures.signedInterval(interval, 1)).orElse("-");
    }
}
