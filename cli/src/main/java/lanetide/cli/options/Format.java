package lanetide.cli.options;

import lanetide.cli.report.ConstantName;

/** Forms of an answer. */
public enum Format {
    /** Plain text, to read. */
    TEXT,
    /** One JSON object, for programs. */
    JSON,
    /** A table of comma-separated values, for spreadsheets. */
    CSV;

    /** The form as the command line writes it. */
    @Override
    public String toString() {
        return ConstantName.of(this);
    }
}
