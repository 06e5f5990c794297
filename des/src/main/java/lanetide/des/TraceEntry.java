package lanetide.des;

import java.util.Locale;

/**
 * One thing that happened to one event.
 *
 * @param clockMs simulated time in milliseconds at which it happened
 * @param happening what happened
 * @param timeMs simulated time in milliseconds at which the event runs
 * @param phase rank among events of the same time
 * @param sequence number given at scheduling, counted from 0, unique in a run
 * @param label what the event is called
 */
public record TraceEntry(long clockMs, Happening happening, long timeMs, int phase, long sequence, String label) {

    /** What can happen to an event. */
    public enum Happening {
        SCHEDULED("scheduled"),
        EXECUTED("executed");

        private final String word;

        Happening(String word) {
            this.word = word;
        }
    }

    /** One line of text, such as {@code 40 ms: scheduled 'release' for 65 ms, phase 1, number 7}. */
    @Override
    public String toString() {
        return clockMs + " ms: " + happening.word + " '" + label + "' for " + timeMs + " ms, phase " + phase
                + ", number " + sequence;
    }

    /** One line of JSON (RFC 8259) with the same content. */
    public String toJson() {
        return "{\"clockMs\":" + clockMs + ",\"happening\":\"" + happening.word + "\",\"label\":\"" + escaped(label)
                + "\",\"timeMs\":" + timeMs + ",\"phase\":" + phase + ",\"number\":" + sequence + "}";
    }

    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                escaped.append('\\').append(c);
            } else if (c < ' ') {
                escaped.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                escaped.append(c);
            }
        }
        return escaped.toString();
    }
}
