package lanetide.cli.output;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.OptionalLong;
import java.util.concurrent.CancellationException;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.ScenarioReader;

/** Reads a scenario, or a table of an option, from the disk, no more of it than a scenario can have. */
public final class ScenarioFile {
    private ScenarioFile() {}

    /**
     * Reads a scenario.
     *
     * @param outputs what the run will write, none of which may be a file that is read
     * @throws CommandFailure if it cannot be read, or would be written over
     */
    public static Reading read(Path file, OptionalLong seed, Outputs outputs) {
        Reading reading = read(file, seed);
        outputs.keep(reading);
        return reading;
    }

    private static Reading read(Path file, OptionalLong seed) {
        return new ScenarioReader(seed).read(file.toString(), bytes("scenario", file));
    }

    /**
     * Reads a table that an option names.
     *
     * @return its bytes, one more than a scenario may have if it has more
     * @throws CommandFailure if it cannot be read
     */
    public static byte[] table(Path file) {
        return bytes("table", file);
    }

    private static byte[] bytes(String what, Path file) {
        if (Files.isDirectory(file)) {
            throw CommandFailure.fileTrouble("The " + what + " " + file + " is a folder; name a file in it.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(ScenarioReader.MAX_BYTES + 1);
        } catch (ClosedByInterruptException e) {
            throw new CancellationException("interrupted while the " + what + " was read");
        } catch (NoSuchFileException e) {
            throw CommandFailure.fileTrouble("There is no " + what + " " + file + "; check the name and the folder.");
        } catch (IOException e) {
            throw CommandFailure.fileTrouble("The " + what + " " + file + " cannot be read (" + reason(e) + ").");
        }
    }

    /** What the system says, else the kind of fault in words. */
    public static String reason(IOException e) {
        String told = e instanceof FileSystemException fault ? fault.getReason() : e.getMessage();
        String kind = e.getClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .replace(" Exception", "");
        return told == null || told.isBlank() ? kind : told;
    }
}
