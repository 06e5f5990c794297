package lanetide.cli.lines;

import java.util.List;
import java.util.Optional;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.squads.model.Level;

/**
 * Whose lines are asked for. What is left out is taken from the scenario.
 *
 * @param surfaces surfaces to look at; none for the scenario's and the shipped ones
 * @param styles styles to look at; none for the scenario's
 * @param hands delivery sides to look at; none for those on which the scenario's bowlers play
 * @param covers covers of everybody's ball, one after the other; none for the commonest of the style
 * @param grits abrasives with which the ball is sanded, one after the other; none for its own finish
 * @param level everybody's level; empty for the commonest of the style
 */
public record Question(
        List<LaneSurface> surfaces,
        List<PlayingStyle> styles,
        List<Hand> hands,
        List<Coverstock> covers,
        List<Integer> grits,
        Optional<Level> level) {
    /** Copies the lists. */
    public Question {
        surfaces = List.copyOf(surfaces);
        styles = List.copyOf(styles);
        hands = List.copyOf(hands);
        covers = List.copyOf(covers);
        grits = List.copyOf(grits);
    }
}
