package lanetide.cli.options;

import picocli.CommandLine.Option;

/** Whether to tell what an answer hangs on. */
public final class MeasureOption {
    @Option(
            names = "--what-to-measure",
            description =
                    "Also tell what the least sure advantage hangs on, and which measurement would narrow it most. The event is played under all sets of values for that, which takes long.")
    private boolean wanted;

    /**
     * Whether it is asked for.
     *
     * @return true if what to measure shall be told
     */
    public boolean isWanted() {
        return wanted;
    }
}
