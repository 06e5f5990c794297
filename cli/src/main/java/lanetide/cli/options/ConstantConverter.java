package lanetide.cli.options;

import java.util.Arrays;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one of a few constants from the command line, in capitals or not.
 *
 * @param <T> the constants, each with the word for it as its text
 */
abstract class ConstantConverter<T extends Enum<T>> implements ITypeConverter<T> {
    private final T[] constants;

    ConstantConverter(T[] constants) {
        this.constants = constants.clone();
    }

    @Override
    public final T convert(String text) {
        return Arrays.stream(constants)
                .filter(value -> value.toString().equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() ->
                        new TypeConversionException("`" + text + "` must be one of " + Arrays.toString(constants)));
    }
}
