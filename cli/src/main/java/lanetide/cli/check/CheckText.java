package lanetide.cli.check;

import java.util.List;
import java.util.Locale;
import lanetide.cli.report.Page;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.Severity;

/** What {@code check} answers, for people. */
public final class CheckText {
    /** So many causes of one severity are told; whoever mends them sees the others next time. */
    private static final int TOLD = 50;

    private CheckText() {}

    /**
     * Writes the answer for people.
     *
     * @param file the scenario's name
     * @param reading what came of reading it
     * @param all whether everything is told, however long it gets
     * @param metric whether lengths are written in metres instead of feet
     * @return the page
     */
    public static String write(String file, Reading reading, boolean all, boolean metric) {
        Page page = new Page();
        page.line(file + ": " + verdict(reading));
        notices(page, file, reading.notices(), all ? Integer.MAX_VALUE : TOLD);
        reading.scenario().ifPresent(scenario -> ScenarioSummary.add(page, scenario, metric));
        return page.text();
    }

    /**
     * Adds notices, grouped by severity, the most severe first; what is said of many lines is said once, and of a flood
     * of other things only so much as a person may read.
     *
     * @param page where to add them
     * @param file the scenario's name; notices of other files name theirs
     * @param notices the notices
     */
    public static void notices(Page page, String file, List<Notice> notices) {
        notices(page, file, notices, TOLD);
    }

    private static void notices(Page page, String file, List<Notice> notices, int most) {
        for (Severity severity : Severity.values()) {
            List<Notice> group = notices.stream()
                    .filter(notice -> notice.severity() == severity)
                    .toList();
            if (!group.isEmpty()) {
                page.heading(counted(severity, group.size(), true));
                List<SameCause> causes = SameCause.of(group);
                causes.stream().limit(most).forEach(cause -> page.item(sentence(file, cause.first()) + cause.others()));
                more(page, causes.stream().skip(most).toList());
            }
        }
    }

    private static void more(Page page, List<SameCause> untold) {
        int more = untold.stream().mapToInt(cause -> cause.notices().size()).sum();
        if (more > 0) {
            page.item("And " + grouped(more) + " more; `lanetide check --all` tells them.");
        }
    }

    /** A count with its thousands apart (ISO 80000-1). */
    private static String grouped(int count) {
        return String.format(Locale.ROOT, "%,d", count).replace(',', ' ');
    }

    private static String verdict(Reading reading) {
        int errors = (int) reading.count(Severity.ERROR);
        int warnings = (int) reading.count(Severity.WARNING);
        String counts =
                counted(Severity.ERROR, errors, false) + ", " + counted(Severity.WARNING, warnings, false) + ".";
        return counts + (errors == 0 ? " It can be played." : " It cannot be played.");
    }

    private static String counted(Severity severity, int count, boolean asHeading) {
        String noun = switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case INFO -> "remark";
        };
        String plural = noun + (count == 1 ? "" : "s");
        return asHeading
                ? plural.substring(0, 1).toUpperCase(Locale.ROOT) + plural.substring(1)
                : (count == 0 ? "no" : String.valueOf(count)) + " " + plural;
    }

    private static String sentence(String file, Notice notice) {
        String where = notice.file().equals(file) ? "Line " : notice.file() + " line ";
        return where + notice.line() + ": " + notice.message() + " ["
                + notice.code().code() + "]";
    }
}
