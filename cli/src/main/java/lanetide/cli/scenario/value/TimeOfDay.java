package lanetide.cli.scenario.value;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.scenario.notice.NoticeCode;

/** Times of day on the days of an event, such as {@code 19:30} and {@code day 2 08:00}. */
public final class TimeOfDay {
    private static final Pattern FORM = Pattern.compile("(?:day (\\d{1,2}) )?(\\d{1,2}):(\\d{2})");
    private static final long MINUTE_MS = 60_000;
    /** A day (ms). */
    public static final long DAY_MS = 24 * 60 * MINUTE_MS;

    private static final int MAX_DAYS = 31;

    private TimeOfDay() {}

    /** Milliseconds from midnight before the first day. */
    public static Optional<Long> read(String text, Value value) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            return refuse(value, "; a time of day must be hours and minutes");
        }
        int day = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
        int hour = Integer.parseInt(matcher.group(2));
        int minute = Integer.parseInt(matcher.group(3));
        if (day < 1 || day > MAX_DAYS || hour > 23 || minute > 59) {
            return refuse(value, "; days must be 1 to " + MAX_DAYS + ", hours 0 to 23 and minutes 0 to 59");
        }
        return Optional.of((day - 1) * DAY_MS + (hour * 60L + minute) * MINUTE_MS);
    }

    /**
     * Writes a time as a scenario does, to the nearest minute.
     *
     * @param timeMs milliseconds from midnight before the first day, at least 0
     * @return for example {@code 19:30} or {@code day 2 08:00}
     */
    public static String write(long timeMs) {
        long minutes = Math.floorDiv(timeMs + MINUTE_MS / 2, MINUTE_MS);
        long day = minutes / (24 * 60) + 1;
        String clock = String.format(Locale.ROOT, "%02d:%02d", minutes / 60 % 24, minutes % 60);
        return day == 1 ? clock : "day " + day + " " + clock;
    }

    private static Optional<Long> refuse(Value value, String problem) {
        value.refuse(NoticeCode.BAD_TIME, problem + ". Write \"19:30\" or \"day 2 08:00\".");
        return Optional.empty();
    }
}
