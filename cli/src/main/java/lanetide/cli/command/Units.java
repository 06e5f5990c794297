package lanetide.cli.command;

import java.util.Arrays;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Systems of units of text answers. */
enum Units {
    /** Feet and units of oil. */
    TRADE,
    /** Metres and micrometres. */
    METRIC;

    /** The system as the command line writes it. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Reads a system from the command line. */
    static final class Converter implements ITypeConverter<Units> {
        @Override
        public Units convert(String text) {
            return Arrays.stream(values())
                    .filter(value -> value.toString().equalsIgnoreCase(text))
                    .findFirst()
                    .orElseThrow(() ->
                            new TypeConversionException("`" + text + "` must be one of " + Arrays.toString(values())));
        }
    }
}
