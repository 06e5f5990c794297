package lanetide.cli.output;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
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
        return new Lines(new StandardOutput(new FileOutputStream(FileDescriptor.out)), charsetOf("stdout"));
    }

    /**
     * Where this program tells how it gets on and what is wrong.
     *
     * @return a writer that keeps what is written until it is flushed
     */
    public static PrintWriter errors() {
        return new Lines(new FileOutputStream(FileDescriptor.err), charsetOf("stderr"));
    }

    /** A line ends the same on every system. */
    private static final class Lines extends PrintWriter {
        Lines(OutputStream out, Charset charset) {
            super(out, false, charset);
        }

        @Override
        public void println() {
            print('\n');
        }
    }

    private static Charset charsetOf(String stream) {
        String since19 = System.getProperty(stream + ".encoding");
        String before = System.getProperty("sun." + stream + ".encoding");
        return charset(Terminal.isThere(), since19 == null ? before : since19);
    }

    /**
     * In which letters to write. A file or a pipe gets the same bytes everywhere; a person at a terminal sees letters,
     * which on Windows are of a code page of their own.
     *
     * @param terminal whether a person reads it
     * @param name what the JVM calls the letters of the terminal; null if it does not know them
     * @return UTF-8, unless a terminal has others; UTF-8 too where it claims to know none but those of ASCII
     */
    static Charset charset(boolean terminal, String name) {
        if (!terminal || name == null || !Charset.isSupported(name)) {
            return StandardCharsets.UTF_8;
        }
        Charset charset = Charset.forName(name);
        return charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset;
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
