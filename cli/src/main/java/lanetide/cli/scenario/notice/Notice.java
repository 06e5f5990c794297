package lanetide.cli.scenario.notice;

/**
 * Something a reader of a scenario should know.
 *
 * @param code what kind of notice
 * @param file the scenario's name as it was given
 * @param line line from 1
 * @param column column from 1
 * @param field path of the value, such as {@code squads[2].start}; list places count from 1; empty for the whole file
 * @param value the value as written; empty if there is none
 * @param limit what the value must be, in the unit it was written in; empty where the message alone says it
 * @param message one or two sentences: what is wrong, the limit, what to try
 */
public record Notice(
        NoticeCode code, String file, int line, int column, String field, String value, String limit, String message) {
    /**
     * A notice about a whole scenario, which stands at its start.
     *
     * @param code what kind of notice
     * @param file the scenario's name as it was given
     * @param field what of it the notice is about; empty for all of it
     * @param value what it names; empty if nothing
     * @param message one or two sentences
     * @return the notice
     */
    public static Notice atStart(NoticeCode code, String file, String field, String value, String message) {
        return new Notice(code, file, Place.START.line(), Place.START.column(), field, value, "", message);
    }

    /**
     * How much it matters.
     *
     * @return the severity of its code
     */
    public Severity severity() {
        return code.severity();
    }
}
