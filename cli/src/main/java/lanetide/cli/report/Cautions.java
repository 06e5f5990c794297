package lanetide.cli.report;

import java.util.List;

/** What every reader of an answer must keep in mind. */
public final class Cautions {
    /** One sentence each. */
    public static final List<String> ALL = List.of(
            "These are estimates of a model, not a lane inspection and not a ruling.",
            "Their intervals hold what was thought possible, and nothing that nobody has thought of.",
            "The event's rules, the governing body and the centre's procedures come first.",
            "Oiled lanes and approaches are slippery, and lane machines have moving parts and chemicals: trained staff only.");

    private Cautions() {}
}
