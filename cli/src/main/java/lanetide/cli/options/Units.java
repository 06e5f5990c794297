package lanetide.cli.options;

import lanetide.cli.report.ConstantName;

/** Systems of units of text answers. */
public enum Units {
    /** Feet and units of oil. */
    TRADE,
    /** Metres and micrometres. */
    METRIC;

    /** The system as the command line writes it. */
    @Override
    public String toString() {
        return ConstantName.of(this);
    }
}
