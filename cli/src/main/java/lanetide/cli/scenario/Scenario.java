package lanetide.cli.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.cli.scenario.entries.DrawnTraits;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.reader.Policy;
import lanetide.oilflow.film.PatternBands;
import lanetide.squads.change.WaitingList;
import lanetide.squads.measured.Measurements;
import lanetide.squads.model.Event;
import lanetide.squads.model.Finals;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.study.DayClock;

/**
 * A scenario without errors.
 *
 * @param file the name it was read under
 * @param sha256 SHA-256 of the file's bytes (FIPS 180-4), in lower-case hexadecimal
 * @param seed seed of all its chance: the file's, unless another was asked for
 * @param event what is to be played
 * @param measurements what was measured at it
 * @param designs how the groups of each squad move, from which the event's rotations were planned
 * @param bands the limits by which it sorts patterns
 * @param names everything it can name: what ships with the program, and its own
 * @param policy what its director sets by judgement
 * @param drawn what of its listed bowlers the entries do not say, so that it was drawn
 * @param waiting who waits for a place, squad by squad
 * @param foreseen when its squads begin and are done, if that was played while it was read
 * @param assumptions what answers rest on and the file does not state
 * @param doubts what makes answers doubtful, a sentence or two each
 */
public record Scenario(
        String file,
        String sha256,
        long seed,
        Event event,
        Measurements measurements,
        List<RotationDesign> designs,
        PatternBands bands,
        Names names,
        Policy policy,
        DrawnTraits drawn,
        List<WaitingList.Waiting> waiting,
        Optional<DayClock> foreseen,
        List<Assumption> assumptions,
        List<String> doubts) {
    /** What answers name changes of the plan by. */
    public static final String CHANGED = "changed on the day";

    /**
     * The file without its folder, for what is sent and hung up: where somebody keeps his files is nobody else's
     * business, and the same scenario makes the same page wherever it lies.
     *
     * @return the name of the file
     */
    public String fileName() {
        return Path.of(file).getFileName().toString();
    }

    /**
     * What answers rest on because the entries do not say it.
     *
     * @return one assumption for each trait that was drawn or told by averages; none if the entries say all
     */
    public List<Assumption> ofEntries() {
        return assumptions.stream()
                .filter(taken -> taken.name().startsWith(DrawnTraits.ASSUMED))
                .toList();
    }

    /** Copies the lists. */
    public Scenario {
        designs = List.copyOf(designs);
        waiting = List.copyOf(waiting);
        assumptions = List.copyOf(assumptions);
        doubts = List.copyOf(doubts);
    }

    /**
     * The same scenario with an event that has changed on the day.
     *
     * @param changed the event now
     * @return the scenario with that event in place of its own
     */
    public Scenario with(Event changed) {
        return copied(changed, measurements, policy, waiting, assumptions, doubts);
    }

    /**
     * The same scenario with another assumption.
     *
     * @param taken what its answers rest on besides
     * @return the scenario
     */
    public Scenario with(Assumption taken) {
        List<Assumption> all =
                Stream.concat(assumptions.stream(), Stream.of(taken)).toList();
        return copied(event, measurements, policy, waiting, all, doubts);
    }

    /**
     * The same scenario with other finals.
     *
     * @param plan what those who make the cut bowl; empty if it ends with the cut
     * @return the scenario
     */
    public Scenario withFinals(Optional<Finals> plan) {
        return copied(event, measurements, policy.with(plan), waiting, assumptions, doubts);
    }

    /**
     * The same scenario with more that was measured.
     *
     * @param known all that is known now
     * @return the scenario with these measurements in place of its own
     */
    public Scenario with(Measurements known) {
        return copied(event, known, policy, waiting, assumptions, doubts);
    }

    /**
     * The same scenario with others who wait.
     *
     * @param others who waits now
     * @return the scenario
     */
    public Scenario withWaiting(List<WaitingList.Waiting> others) {
        return copied(event, measurements, policy, others, assumptions, doubts);
    }

    /** The same scenario with more that makes its answers doubtful. */
    Scenario with(List<String> more) {
        List<String> all = Stream.concat(doubts.stream(), more.stream()).toList();
        return copied(event, measurements, policy, waiting, assumptions, all);
    }

    private Scenario copied(
            Event now,
            Measurements measured,
            Policy set,
            List<WaitingList.Waiting> wait,
            List<Assumption> taken,
            List<String> doubted) {
        Optional<DayClock> still = foreseen.filter(clock -> now.equals(event));
        return new Scenario(
                file, sha256, seed, now, measured, designs, bands, names, set, drawn, wait, still, taken, doubted);
    }

    /**
     * When squads begin and are done, before anything is played with oil.
     *
     * @return the clock of the event; played here unless it has been
     */
    public DayClock clock() {
        return foreseen.orElseGet(() -> DayClock.of(event, seed));
    }

    /**
     * What has changed since the plan.
     *
     * @return sentences; none if nothing has
     */
    public List<String> changes() {
        return assumptions.stream()
                .filter(taken -> taken.name().equals(CHANGED))
                .map(Assumption::value)
                .toList();
    }

    /**
     * The event with its finals, for those who play them.
     *
     * @return the event; itself if it has none
     */
    public Event withFinals() {
        return event.withCut(event.cut().map(cut -> cut.with(policy.finals())));
    }
}
