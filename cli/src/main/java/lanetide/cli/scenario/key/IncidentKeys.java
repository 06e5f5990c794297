package lanetide.cli.scenario.key;

import lanetide.cli.scenario.key.Form.Choice;
import lanetide.cli.scenario.key.Form.Clock;
import lanetide.cli.scenario.key.Form.Quantity;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.Incidents;

/** Keys of what can go wrong with lanes. */
public final class IncidentKeys {
    private static final Quantity<Long> WORK_TIMES = Form.time("min or s", 24 * Sources.HOUR_MS);

    /** What can go wrong with lanes. */
    public static final Block INCIDENTS = new Block("incidents");

    public static final Key<Void> JAMS_KEY = INCIDENTS
            .key("jams", Structure.BLOCK, "short stops of pinsetters by chance")
            .optional("{every: 150 games, work: 2 min}", "none");
    public static final Key<Void> FAULTS_KEY = INCIDENTS
            .key("faults", Structure.BLOCK, "faults of lanes by chance")
            .optional("{every: 2000 games, work: 25 min}", "none");
    public static final Key<Void> PLANNED_KEY = INCIDENTS
            .key("planned", Structure.LIST, "faults at given times")
            .optional("- {lane: 7, at: \"09:15\", work: 30 min}", "none");
    public static final Key<Integer> CREWS = INCIDENTS
            .key("crews", Form.whole(1, 100), "people who put lanes in order, one lane each at a time")
            .usual(Incidents.NONE.crews());
    public static final Key<FaultResponse> REMEDY = INCIDENTS
            .key(
                    "remedy",
                    new Choice<>("remedy", Names.REMEDIES),
                    "wait, spare (move to a spare pair) or split (over other groups)")
            .usual(FaultResponse.WAIT);
    public static final Key<Long> PATIENCE = INCIDENTS
            .key("patience", Form.time("min", 24 * Sources.HOUR_MS), "longest work that is waited for in any case")
            .assumed("5 min to 15 min", Incidents.NONE.patienceMs(), Sources.ASSUMPTION);

    /** Short stops. */
    public static final Stoppages JAMS = Stoppages.of("incidents.jams", "50 games to 500 games", "1 min to 5 min");

    /** Faults. */
    public static final Stoppages FAULTS =
            Stoppages.of("incidents.faults", "500 games to 5000 games", "10 min to 60 min");

    /** A fault at a given time. */
    public static final Block PLANNED = new Block("incidents.planned");

    public static final Key<Integer> LANE =
            PLANNED.key("lane", Form.whole(1, CentreKeys.MAX_LANE), "the lane").required("7");
    public static final Key<Long> AT =
            PLANNED.key("at", new Clock(), "when it fails").required("\"09:15\"");
    public static final Key<Long> WORK =
            PLANNED.key("work", WORK_TIMES, "time of the work").required("10 min to 60 min");

    private IncidentKeys() {}

    /**
     * Keys of stops by chance.
     *
     * @param block the block they stand in
     * @param every mean bowlers' games from one to the next
     * @param work mean time of the work
     * @param spread standard deviation of the work, of its mean
     */
    public record Stoppages(Block block, Key<Double> every, Key<Long> work, Key<Double> spread) {
        private static Stoppages of(String path, String typicalGames, String typicalWork) {
            Block block = new Block(path);
            return new Stoppages(
                    block,
                    block.key(
                                    "every",
                                    Form.quantity(Measure.GAMES, "games", Range.between(0.1, 1_000_000)),
                                    "mean bowlers' games (ten frames) on a lane from one to the next")
                            .required(typicalGames),
                    block.key("work", WORK_TIMES, "mean time of the work").required(typicalWork),
                    block.key("spread", Form.share(0, 3), "standard deviation of the work, of its mean")
                            .assumed("30 % to 100 %", 0.5, Sources.ASSUMPTION));
        }
    }
}
