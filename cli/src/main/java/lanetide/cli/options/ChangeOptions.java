package lanetide.cli.options;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.rotate.LateChanges;
import lanetide.cli.rotate.RotationNote;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.reader.LanesReady;
import lanetide.squads.change.Change;
import lanetide.squads.change.LateStart;
import lanetide.squads.change.NoShows;
import lanetide.squads.change.PairLoss;
import lanetide.squads.change.RotationRepair.Priority;
import lanetide.squads.change.WaitingList;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
import lanetide.squads.model.Finals;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.ImpossibleRotationException;
import picocli.CommandLine.Option;

/** What can still change on the day: pairs that fail, bowlers who stay away, a squad that runs late. */
public final class ChangeOptions {
    private static final Pattern COUNT = Pattern.compile("(?:(.+)=)?(\\d{1,6})");
    private static final Pattern DELAY = Pattern.compile("(.+)=(?:(\\d{1,3}) ?h)? ?(?:(\\d{1,4}) ?min)?");
    private static final long MINUTE_MS = 60_000;

    @Option(
            names = "--without",
            paramLabel = "PAIRS",
            split = ",",
            description =
                    "Pairs that cannot be used, such as 9-10,11-12; the new schedule troubles as few as possible (default: none).")
    private List<String> without = List.of();

    @Option(
            names = "--from-squad",
            paramLabel = "ID",
            description = "With --without: first squad that does without them (default: the first).")
    private String fromSquad;

    @Option(
            names = "--from-game",
            paramLabel = "N",
            description = "With --without: first game of that squad without them, from 1 to its last (default: 1).")
    private Integer fromGame;

    @Option(
            names = "--avoid-repeats",
            description = "With --without: rather change more visits than let a group come back to a pair.")
    private boolean avoidRepeats;

    @Option(
            names = "--no-shows",
            paramLabel = "WHO",
            split = ",",
            description =
                    "Bowlers who stay away: names, or SQUAD=N for a number of them, drawn by lot (default: none).")
    private List<String> noShows = List.of();

    @Option(
            names = "--late",
            paramLabel = "SQUAD=TIME",
            description =
                    "A squad that starts late, by up to 24 h, such as B=60min or B=1h; later squads wait if they must (default: none).")
    private String late;

    /** The changes asked for; empty for none. */
    public Optional<LateChanges> apply(Event event, RotationNote note, long seed, List<WaitingList.Waiting> waiting) {
        if (without.isEmpty()) {
            refuseAlone("--from-squad", fromSquad);
            refuseAlone("--from-game", fromGame);
            refuseAlone("--avoid-repeats", avoidRepeats ? "set" : null);
        }
        if (without.isEmpty() && noShows.isEmpty() && late == null) {
            return Optional.empty();
        }
        try {
            Change change = Change.none(event);
            change = change.then(absent(change.event(), seed, waiting));
            Set<Integer> lost = lost(event);
            change = change.then(lost.isEmpty() ? Change.none(change.event()) : loss(change.event(), lost));
            change = change.then(late == null ? Change.none(change.event()) : delay(change.event(), seed));
            return Optional.of(LateChanges.of(event, change, note, lost, !avoidRepeats));
        } catch (ImpossibleRotationException e) {
            throw CommandFailure.wrongUse("The change cannot be made. " + e.getMessage());
        }
    }

    /**
     * A scenario as it is to be played now, which its name, and what its answers rest on, tell; itself where nothing
     * changes.
     *
     * @param planned the scenario as planned
     * @return the scenario with the changed event
     */
    public Scenario changed(Scenario planned) {
        RotationNote note = RotationNote.of(planned.designs(), planned.event());
        return apply(planned.event(), note, planned.seed(), planned.waiting())
                .map(late -> planned.with(
                                late.change().event().named(planned.event().name() + ", as changed"))
                        .with(late.assumption())
                        .withWaiting(WaitingList.still(
                                planned.waiting(), late.change().event()))
                        .withFinals(planned.policy().finals().map(finals -> elsewhere(finals, planned, late.lost()))))
                .orElse(planned);
    }

    /** The finals on the pairs that are left to them. */
    private static Finals elsewhere(Finals finals, Scenario planned, Set<Integer> lost) {
        Event event = planned.event();
        Centre centre = event.centre(event.squads().size() - 1);
        List<LanePair> left = finals.pairs(centre).stream()
                .filter(pair -> !lost.contains(centre.pairs().indexOf(pair)))
                .toList();
        if (left.size() < finals.matchesAtOnce()) {
            throw CommandFailure.wrongUse("The finals have " + finals.matchesAtOnce() + " matches at once, and only "
                    + left.size() + (left.size() == 1 ? " pair is" : " pairs are")
                    + " left to them; name others in cut.finals.pairs.");
        }
        return lost.isEmpty() ? finals : finals.on(left);
    }

    private static void refuseAlone(String option, Object value) {
        OptionCheck.refuseWithout("--without", option, value, "Name the pairs, such as `--without 9-10`.");
    }

    private Set<Integer> lost(Event event) {
        Map<String, Integer> known = NamedOption.places(event.centre().pairs(), LanePair::id);
        Set<Integer> lost = new TreeSet<>(NamedOption.all("--without", without, known));
        if (lost.size() == known.size()) {
            throw CommandFailure.wrongUse("--without names all pairs; at least one must be left. Leave one out.");
        }
        return lost;
    }

    private Change loss(Event event, Set<Integer> lost) {
        int squad = fromSquad == null ? 0 : NamedOption.of("--from-squad", fromSquad, places(event));
        int games = event.rotations().get(squad).games();
        int game = fromGame == null ? 1 : fromGame;
        OptionCheck.requireRange("--from-game", game, 1, games);
        return PairLoss.of(event, lost, squad, game - 1, avoidRepeats ? Priority.FEW_REPEATS : Priority.FEW_CHANGES);
    }

    private Change absent(Event event, long seed, List<WaitingList.Waiting> waiting) {
        Map<String, Set<String>> bySquad = new TreeMap<>();
        for (String who : noShows) {
            Optional<Squad> squadOf = event.squads().stream()
                    .filter(squad -> isBowler(squad, who))
                    .findFirst();
            if (squadOf.isPresent()) {
                bySquad.computeIfAbsent(squadOf.get().id(), squad -> new TreeSet<>())
                        .add(who);
            } else {
                Squad squad = counted(who, event);
                Matcher count = COUNT.matcher(who);
                int number = count.matches() ? Integer.parseInt(count.group(2)) : 0;
                bySquad.computeIfAbsent(squad.id(), id -> new TreeSet<>()).addAll(NoShows.drawn(squad, number, seed));
            }
        }
        Change change = Change.none(event);
        for (Map.Entry<String, Set<String>> absent : bySquad.entrySet()) {
            int squad = places(event).get(absent.getKey());
            Change filled = WaitingList.fill(change.event(), squad, absent.getValue(), waiting);
            Set<String> left = new TreeSet<>(absent.getValue());
            filled.filled().forEach(place -> left.remove(place.absent()));
            change = change.then(filled);
            change = left.isEmpty() ? change : change.then(NoShows.of(change.event(), squad, left));
        }
        return change;
    }

    /** The squad of an entry such as {@code A=12}, or {@code 12} where there is only one squad. */
    private static Squad counted(String who, Event event) {
        Matcher count = COUNT.matcher(who);
        if (!count.matches() || (count.group(1) == null && event.squads().size() > 1)) {
            throw CommandFailure.wrongUse("--no-shows has `" + who + "`, which is neither a bowler nor a number for a"
                    + " squad. Write names, or such as `"
                    + event.squads().get(0).id() + "=2`.");
        }
        return count.group(1) == null
                ? event.squads().get(0)
                : event.squads().get(NamedOption.of("--no-shows", count.group(1), places(event)));
    }

    private static boolean isBowler(Squad squad, String name) {
        return squad.groups().stream()
                .flatMap(group -> group.bowlers().stream())
                .anyMatch(bowler -> bowler.id().equals(name));
    }

    private Change delay(Event event, long seed) {
        Matcher delay = DELAY.matcher(late);
        if (!delay.matches() || (delay.group(2) == null && delay.group(3) == null)) {
            throw CommandFailure.wrongUse("--late is `" + late + "`; it must be a squad and a time. Write such as `"
                    + event.squads().get(0).id() + "=60min` or `"
                    + event.squads().get(0).id() + "=1h`.");
        }
        int squad = NamedOption.of("--late", delay.group(1), places(event));
        long minutes = 60 * whole(delay.group(2)) + whole(delay.group(3));
        OptionCheck.requireRange("--late", minutes, 1, 24 * 60);
        return LateStart.of(event, squad, minutes * MINUTE_MS, new LanesReady(seed));
    }

    private static long whole(String digits) {
        return digits == null ? 0 : Long.parseLong(digits);
    }

    private static Map<String, Integer> places(Event event) {
        return NamedOption.places(event.squads(), Squad::id);
    }
}
