package lanetide.cli.report;

import java.util.Locale;

/** Names of constants as answers write them. */
public final class ConstantName {
    private ConstantName() {}

    /**
     * The name of a constant.
     *
     * @param constant the constant
     * @return its name in small letters
     */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
