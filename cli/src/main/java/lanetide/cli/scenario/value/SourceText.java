package lanetide.cli.scenario.value;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;

/** Turns a file's bytes into text, or says why they are not a text. */
public final class SourceText {
    /** The largest scenario (bytes). Ten thousand bowlers in an entry list take less. */
    public static final int MAX_BYTES = 1 << 20;

    /** What spreadsheets write where they do not write UTF-8: the letters of ISO 8859-1 and some signs. */
    private static final Charset WESTERN = Charset.forName("windows-1252");

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final Notices notices;

    /** A reader of bytes; what is wrong with them goes to the notices. */
    public SourceText(Notices notices) {
        this.notices = notices;
    }

    /** The text without a byte order mark; empty, with a notice, if the bytes are none. */
    public Optional<String> read(byte[] bytes) {
        return read(bytes, StandardCharsets.UTF_8);
    }

    /** The same for a table, which need not be UTF-8: many spreadsheets save western letters as one byte each. */
    public Optional<String> readTable(byte[] bytes) {
        CoderResult utf8 =
                decoder(StandardCharsets.UTF_8).decode(ByteBuffer.wrap(bytes), CharBuffer.allocate(bytes.length), true);
        return read(bytes, utf8.isError() ? WESTERN : StandardCharsets.UTF_8);
    }

    private Optional<String> read(byte[] bytes, Charset charset) {
        if (bytes.length > MAX_BYTES) {
            return refuse(
                    NoticeCode.FILE_TOO_LARGE,
                    Place.START,
                    "over 1 MB",
                    "The file is larger than 1 MB, the most a scenario may be. Check that it is the right file.");
        }
        return decode(bytes, charset).flatMap(this::withoutControls);
    }

    /** SHA-256 of bytes (FIPS 180-4), in lower-case hexadecimal. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256, which every Java platform must provide, is missing", e);
        }
    }

    private static CharsetDecoder decoder(Charset charset) {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    private Optional<String> decode(byte[] bytes, Charset charset) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder(charset).decode(in, out, true);
        String text = out.flip().toString();
        return result.isError()
                ? notText(endOf(text), String.format(Locale.ROOT, "byte %02X", bytes[in.position()]))
                : Optional.of(text);
    }

    private Optional<String> withoutControls(String text) {
        String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (Character.isISOControl(c) && "\t\n\r".indexOf(c) < 0) {
                return notText(endOf(plain.substring(0, i)), String.format(Locale.ROOT, "character U+%04X", (int) c));
            }
        }
        return Optional.of(plain);
    }

    private Optional<String> notText(Place place, String what) {
        return refuse(
                NoticeCode.FILE_NOT_TEXT,
                place,
                what,
                "The file is not plain text: it holds the " + what
                        + ", and a scenario must be UTF-8 text. Check that it is the right file, and save it as UTF-8.");
    }

    private Optional<String> refuse(NoticeCode code, Place place, String value, String message) {
        notices.add(code, place, "", value, message);
        return Optional.empty();
    }

    private static Place endOf(String text) {
        int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
        return new Place(line, text.length() - text.lastIndexOf('\n'));
    }
}
