package lanetide.cli.command;

/** Forms of an answer. */
enum Format {
    /** Plain text, to read. */
    text,
    /** One JSON object, for programs. */
    json,
    /** A table of comma-separated values, for spreadsheets. */
    csv
}
