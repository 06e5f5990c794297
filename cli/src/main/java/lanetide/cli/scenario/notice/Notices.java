package lanetide.cli.scenario.notice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;

/** Collects what is found in one scenario. */
public final class Notices {
    private static final int LONGEST_QUOTE = 60;

    private final String file;
    private final List<Notice> notices;

    public Notices(String file) {
        this(file, new ArrayList<>());
    }

    private Notices(String file, List<Notice> notices) {
        this.file = file;
        this.notices = notices;
    }

    /** The same collection, for what is found in a file that the scenario names. */
    public Notices in(String otherFile) {
        return new Notices(otherFile, notices);
    }

    public String file() {
        return file;
    }

    public void add(NoticeCode code, Place place, String field, String value, String message) {
        notices.add(new Notice(code, file, place.line(), place.column(), field, quote(value), message));
    }

    /** Number of errors so far: a reader remembers it, reads its values, and builds only if it has not grown. */
    public int errors() {
        return (int) notices.stream()
                .filter(notice -> notice.severity() == Severity.ERROR)
                .count();
    }

    /** Builds a value if no error has come since, and turns a refusal by the value itself into a notice. */
    public <T> Optional<T> build(int errorsBefore, Place place, String field, Supplier<T> value) {
        if (errors() > errorsBefore) {
            return Optional.empty();
        }
        try {
            return Optional.of(value.get());
        } catch (IllegalArgumentException e) {
            add(NoticeCode.IMPOSSIBLE_COMBINATION, place, field, "", "In " + field + ", " + e.getMessage() + ".");
            return Optional.empty();
        }
    }

    /**
     * Looks at something else that may hang on what is wrong already. Whatever escapes from it then leaves the notices found so
     * far standing; without an error before it, it is a fault of the program and escapes.
     */
    public <T> Optional<T> keepingWhatIsFound(Supplier<Optional<T>> rest) {
        try {
            return rest.get();
        } catch (CancellationException e) {
            throw e;
        } catch (RuntimeException e) {
            if (errors() == 0) {
                throw e;
            }
            add(
                    NoticeCode.NOT_ALL_CHECKED,
                    Place.START,
                    "",
                    "",
                    "Not everything could be checked beside the errors. Correct them and check again.");
            return Optional.empty();
        }
    }

    /** All notices in the order of the file, before those of files it names. */
    public List<Notice> list() {
        return notices.stream()
                .sorted(Comparator.comparing((Notice notice) -> !notice.file().equals(file))
                        .thenComparingInt(Notice::line)
                        .thenComparingInt(Notice::column))
                .toList();
    }

    /** Makes a value safe to print: one line, no control characters, not too long. */
    public static String quote(String value) {
        String printable = value.strip().replaceAll("\\s+", " ").replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}]", "?");
        return printable.length() <= LONGEST_QUOTE ? printable : printable.substring(0, LONGEST_QUOTE) + "...";
    }
}
