package lanetide.cli.scenario.notice;

import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A place in a file.
 *
 * @param line line from 1
 * @param column column from 1
 */
public record Place(int line, int column) {
    /** Where a file begins. */
    public static final Place START = new Place(1, 1);

    /** Where a node begins. */
    public static Place of(Node node) {
        return node.getStartMark().map(Place::of).orElse(START);
    }

    /** Where a mark stands. */
    public static Place of(Mark mark) {
        return new Place(mark.getLine() + 1, mark.getColumn() + 1);
    }
}
