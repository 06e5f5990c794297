package lanetide.cli.output;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Standard output. A reader at the other end of a pipe who has seen enough, such as {@code head}, is no fault: what it
 * does not read is dropped. Every other failure stays one.
 */
public final class StandardOutput extends FilterOutputStream {
    private boolean open = true;

    StandardOutput(OutputStream out) {
        super(out);
    }

    /**
     * The output of this program.
     *
     * @return a writer that keeps what is written until it is flushed
     */
    public static PrintWriter writer() {
        return new PrintWriter(
                new StandardOutput(new FileOutputStream(FileDescriptor.out)), false, StandardCharsets.UTF_8);
    }

    @Override
    public void write(int value) throws IOException {
        write(new byte[] {(byte) value}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        if (!open) {
            return;
        }
        try {
            out.write(bytes, offset, length);
        } catch (IOException e) {
            open = false;
            if (!isClosedPipe(e)) {
                throw e;
            }
        }
    }

    /** The system says it in words only; in all languages looked at they name the pipe. */
    private static boolean isClosedPipe(IOException e) {
        return e.getMessage() != null && e.getMessage().toLowerCase(Locale.ROOT).contains("pipe");
    }
}
