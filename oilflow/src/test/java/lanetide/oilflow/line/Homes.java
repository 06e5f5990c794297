package lanetide.oilflow.line;

import java.util.List;
import java.util.function.Function;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.motion.Contact;

/** Home lines as they would be without the preference for the length rule's board. */
public final class Homes {
    private Homes() {}

    public static HomeLines withoutTheLengthRule(
            LineFinder finder, OilPattern pattern, Function<Coverstock, List<Contact>> knownBalls) {
        return new HomeLines(finder, pattern, knownBalls, Double.POSITIVE_INFINITY);
    }
}
