package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanetide.cli.report.Figures;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.NearestLine;
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
        natural.forEach(line -> line.nearest().ifPresent(nearest -> remarks.add(missing(line, nearest))));
        room(natural).ifPresent(remarks::add);
        return remarks;
    }

    private String missing(StartLine start, NearestLine nearest) {
        return "Moving two and one brings no average shot of " + labels.of(start.kind()) + " to the pocket on "
                + start.surface().id() + ". Nearest is "
                + Figures.fixed(nearest.line().laydownBoard(), 1) + " over "
                + Figures.fixed(nearest.line().arrowsBoard(), 1) + " at the arrows, "
                + Figures.fixed(Math.abs(nearest.missBoards()), 1) + " boards "
                + (nearest.missBoards() > 0 ? "high. " : "light. ") + why(nearest.reason());
    }

    private static String why(NearestLine.Reason reason) {
        return switch (reason) {
            case TOO_LITTLE_HOOK ->
                "From everywhere it hooks too little: a stronger ball, less speed, or a straighter line with a smaller"
                        + " angle.";
            case TOO_MUCH_HOOK ->
                "From everywhere it hooks too much: a weaker ball, more speed, or a larger angle to the gutter.";
            case NO_ROOM ->
                "From one board to the next it jumps from light to high: another angle, another ball or another speed"
                        + " has to make room.";
        };
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
