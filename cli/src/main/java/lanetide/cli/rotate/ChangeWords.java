package lanetide.cli.rotate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanetide.cli.report.Figures;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.change.Change;
import lanetide.squads.model.Event;
import lanetide.squads.model.Sessions;
import lanetide.squads.qualifying.Teams;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.check.WearExposure;

/** What late changes mean, for whom, in sentences. */
final class ChangeWords {
    private final LateChanges changes;
    private final PairRow pairs;
    private final List<String> sentences = new ArrayList<>();

    private ChangeWords(LateChanges changes, PairRow pairs) {
        this.changes = changes;
        this.pairs = pairs;
    }

    static List<String> of(LateChanges changes, PairRow pairs) {
        return new ChangeWords(changes, pairs).write();
    }

    private List<String> write() {
        Change change = changes.change();
        sentences.add(summary(change));
        change.starts()
                .forEach(start -> sentences.add("Squad " + start.squad() + " starts at "
                        + TimeOfDay.write(start.nowMs()) + " in place of " + TimeOfDay.write(start.plannedMs()) + "."));
        absent(change);
        change.filled()
                .forEach(place -> sentences.add(place.bowler() + ", who waited, takes the place of " + place.absent()
                        + " in squad " + place.squad() + ", group " + place.group() + "."));
        dissolved(change);
        moved(change);
        parted(change);
        visits(change);
        split(change);
        before();
        if (changes.isLeast() && repeats(change.event()) > repeats(changes.planned())) {
            sentences.add(
                    "Groups that come back to a pair are the price of changing little; `--avoid-repeats` changes more"
                            + " visits instead.");
        }
        return sentences;
    }

    private String summary(Change change) {
        long visits = visits(changes.planned());
        String moved = change.moved().isEmpty()
                ? "nobody changes groups"
                : change.moved().size() == 1
                        ? "1 bowler changes groups"
                        : change.moved().size() + " bowlers change groups";
        String all = change.visits().size() + " of " + visits + " planned visits go to another pair, and " + moved;
        boolean together = !change.moved().isEmpty()
                && !new Teams(changes.planned()).names().isEmpty();
        return together
                ? all + ", partners together where a pair has room for them."
                : all + ": the least "
                        + (changes.isLeast() ? "that will do" : "that keep groups from coming back, game by game")
                        + ".";
    }

    private static long visits(Event event) {
        return event.rotations().stream()
                .mapToLong(rotation -> (long) rotation.groups() * rotation.games())
                .sum();
    }

    private void absent(Change change) {
        bySquad(change.absent(), Change.Absent::squad, Change.Absent::bowler)
                .forEach((squad, names) ->
                        sentences.add("Squad " + squad + " bowls without " + String.join(", ", names) + "."));
    }

    private void dissolved(Change change) {
        bySquad(change.dissolved(), Change.Dissolved::squad, Change.Dissolved::group)
                .forEach((squad, groups) -> sentences.add("Squad " + squad + ": "
                        + (groups.size() == 1
                                ? "group " + groups.get(0) + " is"
                                : "groups " + String.join(", ", groups) + " are")
                        + " dissolved."));
    }

    private static <T> Map<String, List<String>> bySquad(
            List<T> all, Function<T, String> squad, Function<T, String> name) {
        return all.stream()
                .collect(Collectors.groupingBy(
                        squad, LinkedHashMap::new, Collectors.mapping(name, Collectors.toList())));
    }

    /** One sentence for each group that gives bowlers away. */
    private void moved(Change change) {
        Map<String, List<String>> byGroup = new LinkedHashMap<>();
        for (Change.Mover mover : change.moved()) {
            byGroup.computeIfAbsent(
                            "Squad " + mover.squad() + ", from group " + mover.from() + ": ", way -> new ArrayList<>())
                    .add(mover.bowler() + " to group " + mover.to());
        }
        byGroup.forEach((from, ways) -> sentences.add(from + String.join(", ", ways) + "."));
    }

    private void parted(Change change) {
        bySquad(change.parted(), Change.Parted::squad, Change.Parted::partners)
                .forEach((squad, names) -> sentences.add("Squad " + squad + ": no pair has room for all of "
                        + String.join(", ", names) + ", so that these partners are parted."));
    }

    /** One sentence a group; squads in which the same holds are told together. */
    private void visits(Change change) {
        Map<String, Map<String, List<String>>> gamesByGroupAndSquad = new LinkedHashMap<>();
        for (Change.Visit visit : change.visits()) {
            gamesByGroupAndSquad
                    .computeIfAbsent(visit.group(), group -> new LinkedHashMap<>())
                    .computeIfAbsent(visit.squad(), squad -> new ArrayList<>())
                    .add("game " + (visit.game() + 1) + " on " + pairs.name(visit.now()) + " (not "
                            + pairs.name(visit.planned()) + ")");
        }
        gamesByGroupAndSquad.forEach((group, bySquad) -> {
            Map<List<String>, List<String>> squadsByGames = new LinkedHashMap<>();
            bySquad.forEach((squad, games) -> squadsByGames
                    .computeIfAbsent(games, same -> new ArrayList<>())
                    .add(squad));
            squadsByGames.forEach((games, squads) -> sentences.add((squads.size() == 1 ? "Squad " : "Squads ")
                    + String.join(", ", squads) + ", group " + group + ": " + String.join(", ", games) + "."));
        });
    }

    private void split(Change change) {
        if (change.event().squads().size() > changes.planned().squads().size()) {
            sentences.add(
                    "A squad that regroups between two games is shown as two, the second with (2) after its name.");
        }
    }

    private void before() {
        Event event = changes.change().event();
        sentences.add("Before and after, all squads: carry-over index " + index(changes.planned()) + " and "
                + index(event) + ", repeated pairs " + repeats(changes.planned()) + " and " + repeats(event) + ", "
                + Figures.fixed(wear(changes.planned()), 1) + " and " + Figures.fixed(wear(event), 1)
                + " games since oiling between the freshest and the most worn group.");
    }

    private static int index(Event event) {
        return event.rotations().stream()
                .map(RotationReport::of)
                .mapToInt(RotationReport::carryOverIndex)
                .sum();
    }

    private static int repeats(Event event) {
        return event.rotations().stream()
                .map(RotationReport::of)
                .mapToInt(report -> report.repeatedVisits().size())
                .sum();
    }

    private static double wear(Event event) {
        var range = WearExposure.of(Sessions.of(event)).groups().stream()
                .mapToDouble(group -> group.gamesSinceOiling())
                .summaryStatistics();
        return range.getMax() - range.getMin();
    }
}
