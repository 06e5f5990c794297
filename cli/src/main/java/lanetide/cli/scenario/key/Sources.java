package lanetide.cli.scenario.key;

/**
 * Where default values come from that no other place gives a source for, and the units of time they are reckoned in.
 */
final class Sources {
    static final String TRADE = "common practice, no source";
    static final String ASSUMPTION = "assumption";
    static final String CHOSEN = "fitted to published films of the heads and their wear, not measured";

    static final long MINUTE_MS = 60_000;
    static final long HOUR_MS = 60 * MINUTE_MS;

    private Sources() {}
}
