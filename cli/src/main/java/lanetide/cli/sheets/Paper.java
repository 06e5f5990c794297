package lanetide.cli.sheets;

import lanetide.cli.report.ConstantName;

/** Sizes of paper. */
public enum Paper {
    /** 210 by 297 mm (ISO 216). */
    A4,
    /** 8.5 by 11 in. */
    LETTER;

    /** The size as style sheets and the command line write it. */
    @Override
    public String toString() {
        return this == A4 ? "A4" : ConstantName.of(this);
    }
}
