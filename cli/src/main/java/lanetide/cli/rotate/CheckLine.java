package lanetide.cli.rotate;

import java.util.Locale;
import lanetide.squads.rotation.check.Outcome;

/**
 * A structural check as an answer tells it.
 *
 * @param code what is looked at; never changes between versions
 * @param outcome how it stands
 * @param text the same in words, with the reason
 */
public record CheckLine(String code, Outcome outcome, String text) {
    static CheckLine of(Enum<?> code, Outcome outcome, String text) {
        return new CheckLine(code.name().toLowerCase(Locale.ROOT).replace('_', '-'), outcome, text);
    }
}
