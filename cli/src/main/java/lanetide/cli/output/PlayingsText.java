package lanetide.cli.output;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32C;

/**
 * Finished playings as a file holds them, in UTF-8: a head that tells what was played, a line for each thing that what
 * a playing gives hangs on, then an empty line, then a line for each playing in the order in which they ended. That
 * line has the study, the number of the playing in it, what it gave in Base64 (RFC 4648), and the CRC-32C (RFC 3720) of
 * all before it in hexadecimal. A line that its sum does not fit, such as the last one of a run that was killed, counts
 * as not there.
 *
 * @param head what was played, line by line
 * @param playings what each playing gave, by study and number
 * @param damaged whole lines that their sum does not fit
 * @param whole bytes up to the end of the last whole line
 */
record PlayingsText(List<String> head, SortedMap<Key, byte[]> playings, int damaged, int whole) {
    /** First line of every such file. */
    static final String FORM = "lanetide-playings 1";

    /** One playing of one study. */
    record Key(String study, int number) implements Comparable<Key> {
        private static final Comparator<Key> ORDER =
                Comparator.comparing(Key::study).thenComparingInt(Key::number);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }
    }

    /** Reads a file; empty if it is none of these, or ends before its head does. */
    static Optional<PlayingsText> read(byte[] bytes) {
        List<String> head = new ArrayList<>();
        int at = 0;
        while (true) {
            int end = endOfLine(bytes, at);
            if (end < 0) {
                return Optional.empty();
            }
            String line = text(bytes, at, end);
            if (head.isEmpty() && !line.equals(FORM)) {
                return Optional.empty();
            }
            at = end + 1;
            if (line.isEmpty()) {
                return Optional.of(withPlayings(head, bytes, at));
            }
            head.add(line);
        }
    }

    private static PlayingsText withPlayings(List<String> head, byte[] bytes, int from) {
        SortedMap<Key, byte[]> playings = new TreeMap<>();
        int damaged = 0;
        int at = from;
        for (int end = endOfLine(bytes, at); end >= 0; end = endOfLine(bytes, at)) {
            Optional<Map.Entry<Key, byte[]>> playing = playing(text(bytes, at, end));
            playing.ifPresent(one -> playings.put(one.getKey(), one.getValue()));
            damaged += playing.isPresent() ? 0 : 1;
            at = end + 1;
        }
        return new PlayingsText(head, playings, damaged, at);
    }

    private static int endOfLine(byte[] bytes, int from) {
        int at = from;
        while (at < bytes.length && bytes[at] != '\n') {
            at++;
        }
        return at < bytes.length ? at : -1;
    }

    private static String text(byte[] bytes, int from, int to) {
        return new String(bytes, from, to - from, StandardCharsets.UTF_8);
    }

    private static Optional<Map.Entry<Key, byte[]>> playing(String line) {
        String[] words = line.split(" ", -1);
        if (words.length != 4 || !sum(line.substring(0, line.lastIndexOf(' '))).equals(words[3])) {
            return Optional.empty();
        }
        Key key = new Key(words[0], Integer.parseInt(words[1]));
        return Optional.of(Map.entry(key, Base64.getDecoder().decode(words[2])));
    }

    /** The head as it stands in the file. */
    static byte[] head(List<String> lines) {
        return (String.join("\n", lines) + "\n\n").getBytes(StandardCharsets.UTF_8);
    }

    /** A playing as it stands in the file. */
    static byte[] line(Key key, byte[] gave) {
        String words =
                key.study() + " " + key.number() + " " + Base64.getEncoder().encodeToString(gave);
        return (words + " " + sum(words) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static String sum(String words) {
        CRC32C sum = new CRC32C();
        sum.update(words.getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().toHexDigits((int) sum.getValue());
    }

    /** All of it in the order of the studies and numbers, whatever order it was played in. */
    String text() {
        StringBuilder text = new StringBuilder(new String(head(head), StandardCharsets.UTF_8));
        playings.forEach((key, gave) -> text.append(new String(line(key, gave), StandardCharsets.UTF_8)));
        return text.toString();
    }
}
