package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import lanetide.cli.report.Figures;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.PlayedLine;

/** What a coach would say of starting lines, in sentences. */
final class LinesWords {
    /** A move smaller than this is none, as far as a bowler could notice (boards). */
    private static final double NOTICED_BOARDS = 0.5;

    private final KindLabels labels;

    LinesWords(KindLabels labels) {
        this.labels = labels;
    }

    /** Where the feet go on each surface, against the first. */
    List<String> surfaces() {
        List<String> surfaces = labels.surfaces();
        return surfaces.stream()
                .skip(1)
                .map(surface -> against(surface, surfaces.get(0)))
                .toList();
    }

    private String against(String surface, String first) {
        List<String> moves = labels.shown(surface, LineBasis.NATURAL).stream()
                .map(line -> labels.of(line.kind()) + " " + move(line.line(), labels.natural(first, line.kind())))
                .toList();
        return "On " + surface + " against " + first + ", with the feet: " + String.join(", ", moves) + ".";
    }

    /** Where the feet go with each ball, against the first, on each surface. */
    List<String> comparedBalls() {
        List<String> sentences = new ArrayList<>();
        labels.balls().stream()
                .skip(1)
                .forEach(ball -> labels.surfaces()
                        .forEach(surface ->
                                sentences.add(against(ball, labels.balls().get(0), surface))));
        return sentences;
    }

    private String against(String ball, String first, String surface) {
        List<StartLine> shown = labels.shown(surface, LineBasis.NATURAL);
        List<String> moves = shown.stream()
                .filter(line -> line.kind().cover().id().equals(ball))
                .flatMap(line -> shown.stream()
                        .filter(other -> other.kind().cover().id().equals(first)
                                && labels.ofBowler(other.kind()).equals(labels.ofBowler(line.kind())))
                        .map(other -> labels.ofBowler(line.kind()) + " " + move(line.line(), other.line())))
                .toList();
        return "With " + ball + " against " + first + " on " + surface + ", with the feet: " + String.join(", ", moves)
                + ".";
    }

    private static String move(Optional<PlayedLine> here, Optional<PlayedLine> there) {
        if (here.isEmpty() || there.isEmpty()) {
            return "cannot be compared, as a line is missing";
        }
        double boards = here.get().line().laydownBoard() - there.get().line().laydownBoard();
        if (Math.abs(boards) < NOTICED_BOARDS) {
            return "the same";
        }
        return Figures.fixed(Math.abs(boards), 1) + (boards > 0 ? " deeper" : " nearer the gutter");
    }

    /** Lines that are missing, and how much room there is. */
    List<String> remarks() {
        List<StartLine> natural = labels.surfaces().stream()
                .flatMap(surface -> labels.shown(surface, LineBasis.NATURAL).stream())
                .toList();
        List<String> remarks = new ArrayList<>();
        byStyle(natural, line -> line.line().isEmpty())
                .forEach((style, surfaces) -> remarks.add("Moving two and one brings"
                        + " no average shot of " + style + " to the pocket on " + surfaces
                        + ": change the angle, the speed or the ball."));
        room(natural).ifPresent(remarks::add);
        return remarks;
    }

    /** The surfaces on which something holds, by style. */
    private Map<String, String> byStyle(List<StartLine> natural, Predicate<StartLine> holds) {
        Map<String, String> surfaces = new LinkedHashMap<>();
        natural.stream()
                .filter(holds)
                .forEach(line -> surfaces.merge(
                        labels.of(line.kind()), line.surface().id(), (before, next) -> before + ", " + next));
        return surfaces;
    }

    /** Who has the most room and who the least. */
    private Optional<String> room(List<StartLine> natural) {
        List<StartLine> known = natural.stream()
                .filter(line -> line.line().isPresent())
                .sorted(Comparator.comparingDouble(LinesWords::roomBoards))
                .toList();
        if (known.size() < 2) {
            return Optional.empty();
        }
        return Optional.of("Room to miss at the arrows, from edge to edge: from " + room(known.get(0)) + " to "
                + room(known.get(known.size() - 1)) + ".");
    }

    private String room(StartLine start) {
        return Figures.fixed(roomBoards(start), 1) + " boards (" + labels.of(start.kind()) + " on "
                + start.surface().id() + ")";
    }

    private static double roomBoards(StartLine start) {
        return start.line().orElseThrow().missRoom().totalBoards();
    }

    /** Advice on another ball for the natural lines. */
    List<String> balls() {
        List<String> advice = new ArrayList<>();
        for (String surface : labels.surfaces()) {
            for (StartLine line : labels.shown(surface, LineBasis.NATURAL)) {
                line.change().ifPresent(change -> advice.add(advice(line, change)));
            }
        }
        advice.add(
                advice.isEmpty()
                        ? "No other ball that flares alike strikes clearly more often than moves with the present one do."
                        : "Otherwise no ball that flares alike strikes clearly more often than moves with the present one do.");
        advice.add(
                "Balls that flare otherwise (reactive against urethane or plastic) are not compared: the pins of this model"
                        + " do not know which cover hits them.");
        return advice;
    }

    private String advice(StartLine start, BallChange change) {
        return "On " + start.surface().id() + " " + labels.of(start.kind()) + " would gain "
                + LinesText.inHundred(change.gain()) + " strikes in 100 first balls with "
                + (change.stronger() ? "a stronger" : "a weaker") + " ball, "
                + change.cover().id()
                + ", laid down at " + Figures.fixed(change.line().laydownBoard(), 1) + " over "
                + Figures.fixed(change.line().arrowsBoard(), 1) + " at the arrows.";
    }
}
