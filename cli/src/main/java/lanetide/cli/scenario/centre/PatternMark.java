package lanetide.cli.scenario.centre;

import java.nio.charset.StandardCharsets;
import lanetide.cli.scenario.value.SourceText;
import lanetide.oilflow.film.OilPattern;

/** What a pattern is known by, whatever it is called. */
public final class PatternMark {
    private PatternMark() {}

    /**
     * A pattern's mark.
     *
     * @param pattern the pattern
     * @return SHA-256 of what its sheet or its tapes say
     */
    public static String of(OilPattern pattern) {
        return SourceText.sha256(
                pattern.toString().replace("id=" + pattern.id() + ", ", "").getBytes(StandardCharsets.UTF_8));
    }
}
