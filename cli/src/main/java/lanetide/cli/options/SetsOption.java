package lanetide.cli.options;

import lanetide.cli.report.ConstantName;
import lanetide.squads.unknown.ValueSets;
import picocli.CommandLine.Option;

/** Whether an answer goes through the sets of values that published facts leave, or keeps to the usual ones. */
public final class SetsOption {
    /** What the option may say. */
    public enum Sets {
        /** Those that published facts do not rule out. */
        POSSIBLE,
        /** The usual values alone. */
        USUAL;

        /** The word as the command line writes it. */
        @Override
        public String toString() {
            return ConstantName.of(this);
        }
    }

    @Option(
            names = "--sets",
            paramLabel = "WHICH",
            defaultValue = "possible",
            description =
                    "Values of what nobody has measured: possible goes in turn through sets that published facts do not rule out, so that intervals hold what is not known; usual keeps to the usual ones, and intervals hold luck alone (default: possible).")
    private Sets sets;

    /**
     * How many sets a study goes through.
     *
     * @param rounds its independent rounds of luck
     * @return 1 for the usual values alone
     */
    public int of(int rounds) {
        return sets == Sets.USUAL ? 1 : ValueSets.inStudy(rounds);
    }
}
