package lanetide.cli.options;

import java.util.Optional;
import lanetide.cli.report.ConstantName;

/** What {@code --format} may say: the form of an answer, or a page in its place. */
enum Form {
    /** Plain text, to read. */
    TEXT(Format.TEXT),
    /** One JSON object, for programs. */
    JSON(Format.JSON),
    /** A table of comma-separated values, for spreadsheets. */
    CSV(Format.CSV),
    /** A page for a browser. */
    HTML(null);

    private final Optional<Format> format;

    Form(Format format) {
        this.format = Optional.ofNullable(format);
    }

    Optional<Format> format() {
        return format;
    }

    /** The form as the command line writes it. */
    @Override
    public String toString() {
        return ConstantName.of(this);
    }
}
