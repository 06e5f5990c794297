package lanetide.cli.scenario.value;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.regex.Pattern;
import lanetide.cli.scenario.notice.NoticeCode;

/**
 * Files that a scenario names. They must lie beside it, and no more of one is read than a scenario itself may have.
 * Whatever kind of file a scenario may name, it is opened here and nowhere else.
 */
public final class NamedFiles {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_ -]{0,58}\\.[A-Za-z0-9]{1,5}");

    private final Path scenario;
    private final Map<String, String> sha256 = new TreeMap<>();
    private final Set<Path> looked = new LinkedHashSet<>();

    /** Files beside a scenario, given by its own path. */
    public NamedFiles(String scenario) {
        this.scenario = Path.of(scenario);
    }

    /** What was read: SHA-256 by name. */
    public Map<String, String> sha256() {
        return sha256;
    }

    /** Every file that was looked for, whether or not it could be read. */
    public Set<Path> looked() {
        return looked;
    }

    /** The path of a named file, as notices show it. */
    public String path(String name) {
        return scenario.resolveSibling(name).toString();
    }

    /** The file's bytes, one more than allowed if it has more; empty, with a notice, if there is no such file. */
    public Optional<byte[]> read(Value value) {
        Optional<String> name = value.text();
        if (name.isEmpty()) {
            return Optional.empty();
        }
        if (!isName(name.get(), value)) {
            return Optional.empty();
        }
        Path file = scenario.resolveSibling(name.get());
        looked.add(file);
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            value.refuse(
                    NoticeCode.NAMED_FILE_MISSING,
                    ", which is a folder, a pipe or a device; it must be a plain file beside the scenario. Name another.");
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(SourceText.MAX_BYTES + 1);
            sha256.put(name.get(), SourceText.sha256(bytes));
            return Optional.of(bytes);
        } catch (ClosedByInterruptException e) {
            throw new CancellationException("interrupted while " + name.get() + " was read");
        } catch (IOException e) {
            value.refuse(
                    NoticeCode.NAMED_FILE_MISSING,
                    ", and no such file can be read beside the scenario. Check the name, and put the file into the same"
                            + " folder.");
            return Optional.empty();
        }
    }

    private static boolean isName(String name, Value value) {
        if (!NAME.matcher(name).matches()) {
            value.refuse(
                    NoticeCode.BAD_TEXT,
                    "; it must be the name of a file in the scenario's own folder: letters, digits, spaces, - and _, with"
                            + " its ending." + value.advice());
            return false;
        }
        if (ReservedNames.isReserved(name)) {
            value.refuse(
                    NoticeCode.BAD_TEXT,
                    ", which is the name of a device on Windows; a scenario must be readable everywhere. Rename the"
                            + " file.");
            return false;
        }
        return true;
    }
}
