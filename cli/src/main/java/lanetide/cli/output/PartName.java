package lanetide.cli.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.scenario.value.SourceText;

/**
 * What a file is called while it grows: a name that hangs on its own one and on the run that writes it. It is short
 * whatever the file is called, since a name may be as long as the system allows.
 *
 * @param target the file
 * @param mark what parts of this file have in common
 */
record PartName(Path target, String mark) {
    private static final Pattern RUN = Pattern.compile("\\.lanetide-[0-9a-f]{8}-(\\d{1,10})\\.part");

    /** Younger ones may belong to a run on another machine that shares the folder (ms). */
    private static final long SURELY_OLD_MS = 3_600_000;

    static PartName of(Path target) {
        byte[] name = target.getFileName().toString().getBytes(StandardCharsets.UTF_8);
        return new PartName(target, ".lanetide-" + SourceText.sha256(name).substring(0, 8) + "-");
    }

    /** The part of this run. */
    Path path() {
        return target.resolveSibling(mark + ProcessHandle.current().pid() + ".part");
    }

    /**
     * Removes what runs left that were killed while they wrote the same file: older than the part of this run by an
     * hour, so that no clock but the folder's own matters, and their process gone.
     */
    void removeAbandoned() throws IOException {
        long nowMs = Files.getLastModifiedTime(path()).toMillis();
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(target.getParent(), mark + "*.part")) {
            for (Path part : parts) {
                Matcher run = RUN.matcher(part.getFileName().toString());
                if (run.matches()
                        && ProcessHandle.of(Long.parseLong(run.group(1))).isEmpty()
                        && nowMs - Files.getLastModifiedTime(part).toMillis() > SURELY_OLD_MS) {
                    Files.deleteIfExists(part);
                }
            }
        }
    }
}
