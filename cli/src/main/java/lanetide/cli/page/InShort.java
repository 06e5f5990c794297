package lanetide.cli.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanetide.cli.fairness.EffectWords;
import lanetide.cli.reoil.ReoilWords;
import lanetide.cli.report.Figures;
import lanetide.cli.simulate.SquadLanes;
import lanetide.cli.words.English;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.result.StyleWindow;
import lanetide.squads.study.WindowStudy.Move;

/**
 * The three answers that open the director's page, each in a line: is it fair, when to oil again, what to expect late.
 */
final class InShort {
    private final PageAnswers answers;
    private final List<SquadLanes> squads;

    InShort(PageAnswers answers, List<SquadLanes> squads) {
        this.answers = answers;
        this.squads = squads;
    }

    List<PageModel.InShort> lines() {
        return List.of(
                new PageModel.InShort("Is it fair?", fair()),
                new PageModel.InShort("Oil again?", oil()),
                new PageModel.InShort("Late?", late()));
    }

    private String fair() {
        return answers.fairness()
                .map(fairness -> {
                    FairnessResult result = fairness.result();
                    int unfair = EffectWords.unfair(result).size();
                    return English.capital(EffectWords.verdict(result.verdict())) + ", if up to "
                            + Figures.plain(result.plan().marginPins(), 2) + " pins a game count as fair"
                            + (unfair == 0
                                    ? "."
                                    : ": " + unfair + " of " + result.effects().size()
                                            + " advantages looked at are larger.");
                })
                .orElse("Not looked at: nobody changes seats here, or it was left out.");
    }

    private String oil() {
        return answers.reoil().map(ReoilWords::recommendation).orElse("Not looked at.");
    }

    /** How far lines have gone when the last squad leaves. */
    private String late() {
        String squad = squads.get(squads.size() - 1).squad();
        List<Move> moves = answers.study().moves().stream()
                .filter(move -> move.moment().squad().equals(squad)
                        && move.moment().afterGame() > 0
                        && move.boards().isPresent())
                .toList();
        return "When squad " + squad + " leaves, " + (moves.isEmpty() ? inExample() : over(moves));
    }

    private static String over(List<Move> moves) {
        Move least =
                moves.stream().min(Comparator.comparingDouble(InShort::boards)).orElseThrow();
        Move most =
                moves.stream().max(Comparator.comparingDouble(InShort::boards)).orElseThrow();
        return lines(kind(least.style(), least.hand()), boards(least), kind(most.style(), most.hand()), boards(most));
    }

    private static double boards(Move move) {
        return move.boards().orElseThrow();
    }

    private static String kind(String style, Hand hand) {
        return new SquadLanes.StyleHand(style, hand).words();
    }

    /** The same on the lanes of one playing. */
    private String inExample() {
        SquadLanes last = squads.get(squads.size() - 1);
        List<SquadLanes.StyleHand> kinds = new ArrayList<>();
        List<Double> boards = new ArrayList<>();
        for (SquadLanes.StyleHand kind : last.kinds()) {
            Optional<StyleWindow.Boards> then = last.window(last.lastGame(), kind);
            Optional<StyleWindow.Boards> first = squads.get(0).window(0, kind);
            if (then.isPresent() && first.isPresent()) {
                kinds.add(kind);
                boards.add(then.get().best() - first.get().best());
            }
        }
        if (kinds.isEmpty()) {
            return "no style finds a line to the pocket.";
        }
        int least =
                boards.indexOf(boards.stream().min(Comparator.naturalOrder()).orElseThrow());
        int most = boards.indexOf(boards.stream().max(Comparator.naturalOrder()).orElseThrow());
        return lines(
                kinds.get(least).words(), boards.get(least), kinds.get(most).words(), boards.get(most));
    }

    private static String lines(String leastKind, double least, String mostKind, double most) {
        return leastKind.equals(mostKind)
                ? "the line of " + leastKind + " leaves the oil " + further(least) + " than on the fresh pattern."
                : "lines leave the oil from " + further(least) + " than on the fresh pattern (" + leastKind + ") to "
                        + further(most) + " (" + mostKind + ").";
    }

    private static String further(double boards) {
        String size = Figures.fixed(Math.abs(boards), 1);
        return size + (size.equals("1.0") ? " board" : " boards") + " further " + (boards < 0 ? "out" : "in");
    }
}
