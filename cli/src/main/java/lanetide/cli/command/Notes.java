package lanetide.cli.command;

import java.util.List;
import lanetide.cli.report.CheckReport;
import lanetide.cli.report.Page;
import lanetide.cli.scenario.Notice;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Severity;

/** Tells the notices of a scenario beside an answer. */
final class Notes {
    private Notes() {}

    /** Writes errors, and unless it is to be quiet everything else, to standard error. */
    static void tell(Reading reading, CommonOptions options) {
        List<Notice> told = reading.notices().stream()
                .filter(notice -> notice.severity() == Severity.ERROR || !options.quiet())
                .toList();
        if (!told.isEmpty()) {
            Page page =
                    new Page().line(options.scenario() + (reading.scenario().isEmpty() ? " cannot be played." : ""));
            CheckReport.notices(page, options.scenario().toString(), told);
            options.err().print(page.text());
            options.err().flush();
        }
    }
}
