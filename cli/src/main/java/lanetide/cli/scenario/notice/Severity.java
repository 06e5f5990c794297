package lanetide.cli.scenario.notice;

/** How much a notice matters. */
public enum Severity {
    /** The scenario cannot be played: a value is missing, wrong or impossible. It must be mended first. */
    ERROR,
    /** The scenario can be played, but it probably does not say what its author meant, or will not go as planned. */
    WARNING,
    /** Nothing is wrong; the reader may want to know. */
    INFO
}
