package lanetide.cli.output;

import java.io.Console;
import java.io.Reader;
import java.util.Optional;

/** The terminal that a person sits at, if there is one. */
public final class Terminal {
    private Terminal() {}

    /**
     * What the person types.
     *
     * @return a reader of lines; empty where nobody could answer
     */
    public static Optional<Reader> input() {
        return console().map(Console::reader);
    }

    static boolean isThere() {
        return console().isPresent();
    }

    /** From Java 22 on there is a console without a terminal too, which then says so. */
    @SuppressWarnings("SystemConsoleNull") // what it warns of is looked at below
    private static Optional<Console> console() {
        Console console = System.console();
        if (console == null) {
            return Optional.empty();
        }
        try {
            boolean isTerminal = (boolean) Console.class.getMethod("isTerminal").invoke(console);
            return isTerminal ? Optional.of(console) : Optional.empty();
        } catch (NoSuchMethodException e) {
            return Optional.of(console);
        } catch (ReflectiveOperationException e) {
            return Optional.empty();
        }
    }
}
