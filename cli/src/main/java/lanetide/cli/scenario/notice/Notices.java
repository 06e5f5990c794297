package lanetide.cli.scenario.notice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** Collects what is told of one scenario: notices, and what it leaves to assumptions. */
public final class Notices {
    private static final int MAX_QUOTE = 60;
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Cs}]");

    private final String file;
    private final List<Notice> notices;
    private final Assumptions assumptions;
    private final Optional<Notices> around;
    private int errors;

    /**
     * An empty collection.
     *
     * @param file the scenario's name as it was given
     */
    public Notices(String file) {
        this(file, new ArrayList<>(), new Assumptions(), Optional.empty());
    }

    private Notices(String file, List<Notice> notices, Assumptions assumptions, Optional<Notices> around) {
        this.file = file;
        this.notices = notices;
        this.assumptions = assumptions;
        this.around = around;
    }

    /**
     * The same collection for a file that the scenario names.
     *
     * @param otherFile that file's name
     * @return what adds to this one
     */
    public Notices in(String otherFile) {
        return new Notices(otherFile, notices, assumptions, Optional.of(this));
    }

    /**
     * The same collection for one part of the scenario, whose errors it counts by themselves.
     *
     * @return what adds to this one
     */
    public Notices ofPart() {
        return new Notices(file, notices, assumptions, Optional.of(this));
    }

    /**
     * The same notices beside assumptions of their own, for what only some answers rest on.
     *
     * @return what adds its notices to this one
     */
    public Notices withOwnAssumptions() {
        return new Notices(file, notices, new Assumptions(), Optional.of(this));
    }

    /**
     * What the scenario leaves open.
     *
     * @return the assumptions, to be added to
     */
    public Assumptions assumptions() {
        return assumptions;
    }

    /** Adds a notice without a limit. */
    public void add(NoticeCode code, Place place, String field, String value, String message) {
        add(code, place, field, value, "", message);
    }

    /**
     * Adds a notice; see {@link Notice} for its parts.
     *
     * @throws CancellationException if the thread was interrupted: a file may give a hundred thousand notices
     */
    public void add(NoticeCode code, Place place, String field, String value, String limit, String message) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("interrupted while " + file + " was checked");
        }
        notices.add(new Notice(code, file, place.line(), place.column(), field, quote(value), limit, message));
        if (code.severity() == Severity.ERROR) {
            countError();
        }
    }

    /** Counts an error in this part of the scenario that a notice about another part tells. */
    public void countError() {
        errors++;
        around.ifPresent(Notices::countError);
    }

    /**
     * Whether something is wrong.
     *
     * @return true after an error in this part of the scenario
     */
    public boolean hasErrors() {
        return errors > 0;
    }

    /** Builds a value if there is no error, and turns a refusal by the value itself into a notice. */
    public <T> Optional<T> build(Place place, String field, Supplier<T> value) {
        if (hasErrors()) {
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
     * Looks at something else that may hang on what is wrong already. Whatever escapes from it then leaves the notices
     * found so far standing; without an error before it, it is a fault of the program and escapes.
     */
    public <T> Optional<T> keepingWhatIsFound(Supplier<Optional<T>> rest) {
        try {
            return rest.get();
        } catch (CancellationException e) {
            throw e;
        } catch (RuntimeException e) {
            if (!hasErrors()) {
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

    /** All notices in the order of the file, before those of each file it names. */
    public List<Notice> list() {
        return notices.stream()
                .sorted(Comparator.comparing((Notice notice) -> !notice.file().equals(file))
                        .thenComparing(Notice::file)
                        .thenComparingInt(Notice::line)
                        .thenComparingInt(Notice::column))
                .toList();
    }

    /** A text without characters that a terminal would obey, such as those in the name of a file. */
    public static String printable(String text) {
        return UNPRINTABLE.matcher(text).replaceAll("?");
    }

    /** Makes a value safe to print: one line, no control characters, not too long. */
    public static String quote(String value) {
        String oneLine = BLANKS.matcher(value.strip()).replaceAll(" ");
        String printable = printable(oneLine);
        return printable.length() <= MAX_QUOTE ? printable : printable.substring(0, MAX_QUOTE) + "...";
    }
}
