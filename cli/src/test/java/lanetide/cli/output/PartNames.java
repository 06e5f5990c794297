package lanetide.cli.output;

import java.nio.file.Path;

/** How parts are called, for tests. */
public final class PartNames {
    private PartNames() {}

    /** The name under which another run would write a file. */
    public static String of(Path file, long pid) {
        return PartName.of(file).mark() + pid + ".part";
    }
}
