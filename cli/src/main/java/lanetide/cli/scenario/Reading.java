package lanetide.cli.scenario;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a file.
 *
 * @param sha256 SHA-256 of the file's bytes in lower-case hexadecimal; empty if the file is too large to be a scenario
 * @param scenario the scenario; empty if a notice is an error
 * @param notices everything found, in the order of the file
 */
public record Reading(Optional<String> sha256, Optional<Scenario> scenario, List<Notice> notices) {
    /** Copies the list. */
    public Reading {
        notices = List.copyOf(notices);
    }

    /**
     * Counts notices.
     *
     * @param severity which to count
     * @return their number
     */
    public long count(Severity severity) {
        return notices.stream().filter(notice -> notice.severity() == severity).count();
    }
}
