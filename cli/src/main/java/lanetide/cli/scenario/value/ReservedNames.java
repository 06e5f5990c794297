package lanetide.cli.scenario.value;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Names that Windows gives to devices, whatever their ending and in whatever folder, and those that it changes without
 * a word (Microsoft, Naming Files, Paths, and Namespaces).
 */
public final class ReservedNames {
    private static final Pattern DEVICE = Pattern.compile(
            "(con|prn|aux|nul|com[0-9\u00b9\u00b2\u00b3]|lpt[0-9\u00b9\u00b2\u00b3]|conin\\$|conout\\$)( *\\..*)?");

    private ReservedNames() {}

    /**
     * Whether no file can be called so on Windows.
     *
     * @param name a name without a folder
     * @return true for a device, and for a name that ends with a full stop or a blank
     */
    public static boolean isReserved(String name) {
        return DEVICE.matcher(name.toLowerCase(Locale.ROOT)).matches() || name.endsWith(".") || name.endsWith(" ");
    }
}
