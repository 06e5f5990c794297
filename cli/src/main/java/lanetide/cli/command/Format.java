package lanetide.cli.command;

import java.util.Arrays;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Forms of an answer. */
enum Format {
    /** Plain text, to read. */
    TEXT,
    /** One JSON object, for programs. */
    JSON,
    /** A table of comma-separated values, for spreadsheets. */
    CSV;

    /** The form as the command line writes it. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Reads a form from the command line. */
    static final class Converter implements ITypeConverter<Format> {
        @Override
        public Format convert(String text) {
            return Arrays.stream(values())
                    .filter(value -> value.toString().equalsIgnoreCase(text))
                    .findFirst()
                    .orElseThrow(() ->
                            new TypeConversionException("`" + text + "` must be one of " + Arrays.toString(values())));
        }
    }
}
