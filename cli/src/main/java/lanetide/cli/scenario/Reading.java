package lanetide.cli.scenario;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.Severity;

/**
 * What came of reading a file.
 *
 * @param sha256 SHA-256 of the file's bytes in lower-case hexadecimal; empty if the file is too large to be a scenario
 * @param namedFiles SHA-256 of every file beside it that it names and that was read, by name in alphabetical order
 * @param inputs every file that was read or looked for to be read, the scenario first: nothing a run writes may go
 *     there
 * @param scenario the scenario; empty if a notice is an error
 * @param notices everything found, in the order of the file
 * @param source the scenario as it is written; empty if there is none
 */
public record Reading(
        Optional<String> sha256,
        Map<String, String> namedFiles,
        List<Path> inputs,
        Optional<Scenario> scenario,
        List<Notice> notices,
        Optional<Source> source) {
    /** Copies the map and the lists. */
    public Reading {
        namedFiles = Collections.unmodifiableMap(new TreeMap<>(namedFiles));
        inputs = List.copyOf(inputs);
        notices = List.copyOf(notices);
    }

    /**
     * The same with another scenario.
     *
     * @param other a scenario made of this one's
     * @return the reading
     */
    public Reading with(Scenario other) {
        return new Reading(sha256, namedFiles, inputs, Optional.of(other), notices, source);
    }

    /**
     * The same with more that was found.
     *
     * @param more notices beside those of the file
     * @return the reading, whose scenario knows of what makes answers doubtful
     */
    public Reading with(List<Notice> more) {
        List<Notice> all = Stream.concat(notices.stream(), more.stream()).toList();
        return new Reading(sha256, namedFiles, inputs, scenario.map(known -> known.with(doubts(more))), all, source);
    }

    /** What of these makes answers doubtful, in words. */
    static List<String> doubts(List<Notice> notices) {
        return notices.stream()
                .filter(notice -> notice.code().isDoubt())
                .map(Notice::message)
                .toList();
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
