package lanetide.cli.sheets;

import lanetide.cli.report.ConstantName;

/** Sizes of paper. */
public enum Paper {
    /** 210 by 297 mm (ISO 216). */
    A4(297),
    /** 8.5 by 11 in. */
    LETTER(279);

    private final double heightMm;

    Paper(double heightMm) {
        this.heightMm = heightMm;
    }

    /** How high it is upright (mm). */
    double heightMm() {
        return heightMm;
    }

    /** The size as style sheets and the command line write it. */
    @Override
    public String toString() {
        return this == A4 ? "A4" : ConstantName.of(this);
    }
}
