package lanetide.cli.scenario.write;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Source;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.key.CutKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Presence;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A scenario written back as it has changed on the day: starts, rotations squad by squad, who bowls in which group,
 * spare pairs. All else stands as it stood, but for comments. It is read again before anybody has it: what is not the
 * changed event to the last value is not written.
 */
public final class ChangedScenario {
    private final Scenario planned;
    private final Scenario changed;
    private final Source source;

    private ChangedScenario(Scenario planned, Scenario changed, Source source) {
        this.planned = planned;
        this.changed = changed;
        this.source = source;
    }

    /**
     * Writes a changed scenario.
     *
     * @param reading the scenario as it was read
     * @param changed the same as it is to be played now
     * @param file the name of the file that will have it, beside which named files are looked for
     * @return the file's text; empty if a scenario cannot say it
     */
    public static Optional<String> write(Reading reading, Scenario changed, String file) {
        Scenario planned = reading.scenario().orElseThrow();
        boolean hasSameSquads = ids(planned.event()).equals(ids(changed.event()));
        return reading.source()
                .filter(source -> hasSameSquads)
                .map(source -> new ChangedScenario(planned, changed, source).text())
                .filter(text -> new ScenarioReader(OptionalLong.empty())
                        .read(file, text.getBytes(StandardCharsets.UTF_8))
                        .scenario()
                        .filter(again -> again.event().equals(changed.event())
                                && again.policy().equals(changed.policy())
                                && again.waiting().equals(changed.waiting())
                                && again.seed() == changed.seed())
                        .isPresent());
    }

    private static List<String> ids(Event event) {
        return event.squads().stream().map(Squad::id).toList();
    }

    private String text() {
        MappingNode root = source.root();
        root = Yaml.with(root, EventKeys.NAME, Yaml.text(changed.event().name()));
        root = Yaml.with(root, EventKeys.SEED, Yaml.number(changed.seed()));
        root = Yaml.with(root, EventKeys.SQUADS, squads());
        if (!planned.event().centre().spare().equals(changed.event().centre().spare())) {
            root = Yaml.changed(root, EventKeys.CENTRE, this::centre);
        }
        if (!planned.policy().finals().equals(changed.policy().finals())) {
            root = Yaml.changed(root, EventKeys.CUT, cut -> Yaml.changed(cut, CutKeys.FINALS, this::finals));
        }
        if (!source.entries().isEmpty() && hasOtherGroups()) {
            root = Yaml.with(Yaml.without(root, Set.of(EventKeys.DRAW)), EventKeys.ENTRIES, entries());
        }
        return comment() + Yaml.file(changes(root));
    }

    private String comment() {
        return "# " + planned.fileName() + " as changed on the day, without its comments.\n"
                + changed.changes().stream().map(words -> "# " + words + "\n").collect(Collectors.joining());
    }

    private boolean hasOtherGroups() {
        return !planned.event().squads().stream()
                .map(Squad::groups)
                .toList()
                .equals(changed.event().squads().stream().map(Squad::groups).toList());
    }

    private MappingNode centre(MappingNode centre) {
        List<LanePair> spare = changed.event().centre().spare();
        return spare.isEmpty()
                ? Yaml.without(centre, Set.of(CentreKeys.SPARE))
                : Yaml.with(centre, CentreKeys.SPARE, pairs(spare));
    }

    private MappingNode finals(MappingNode finals) {
        return Yaml.with(
                finals,
                CutKeys.FINALS_PAIRS,
                pairs(changed.policy().finals().orElseThrow().onPairs()));
    }

    private static SequenceNode pairs(List<LanePair> pairs) {
        return Yaml.line(pairs.stream().map(pair -> Yaml.text(pair.id())).toList());
    }

    private SequenceNode squads() {
        List<Node> written =
                ((SequenceNode) Yaml.find(source.root(), EventKeys.SQUADS).orElseThrow()).getValue();
        return Yaml.list(IntStream.range(0, written.size())
                .mapToObj(squad -> squad((MappingNode) written.get(squad), squad))
                .toList());
    }

    private MappingNode squad(MappingNode written, int at) {
        Squad before = planned.event().squads().get(at);
        Squad now = changed.event().squads().get(at);
        MappingNode squad = written;
        if (before.startMs() != now.startMs()) {
            squad = Yaml.with(squad, EventKeys.START, Yaml.text(TimeOfDay.write(now.startMs())));
        }
        if (!planned.event()
                .rotations()
                .get(at)
                .equals(changed.event().rotations().get(at))) {
            squad = Yaml.with(
                    squad,
                    EventKeys.SQUAD_MOVES,
                    rotation(changed.event().rotations().get(at)));
        }
        List<String> names = now.groups().stream().map(Group::id).toList();
        List<String> numbers =
                IntStream.rangeClosed(1, names.size()).mapToObj(String::valueOf).toList();
        return names.equals(numbers)
                ? Yaml.without(squad, Set.of(EventKeys.GROUP_NAMES))
                : Yaml.with(
                        squad,
                        EventKeys.GROUP_NAMES,
                        Yaml.line(names.stream().map(Yaml::text).toList()));
    }

    private MappingNode rotation(Rotation rotation) {
        List<LanePair> pairs = changed.event().centre().pairs();
        List<SequenceNode> rows = IntStream.range(0, rotation.games())
                .mapToObj(game -> pairs(IntStream.range(0, rotation.groups())
                        .mapToObj(group -> pairs.get(rotation.pairOf(game, group)))
                        .toList()))
                .toList();
        return Yaml.block(List.of(
                new NodeTuple(Yaml.text(EventKeys.DESIGN.name()), Yaml.text(RotationDesigns.LISTED)),
                new NodeTuple(Yaml.text(EventKeys.TABLE.name()), Yaml.list(rows))));
    }

    /** Everybody squad by squad and group by group, as he was written; last in a squad those who do not. */
    private SequenceNode entries() {
        List<Node> entries = new ArrayList<>();
        for (Squad squad : changed.event().squads()) {
            Map<String, MappingNode> away = new LinkedHashMap<>(source.entries().getOrDefault(squad.id(), Map.of()));
            for (int group = 0; group < squad.groups().size(); group++) {
                for (Bowler bowler : squad.groups().get(group).bowlers()) {
                    MappingNode written = away.remove(bowler.id());
                    if (written != null) {
                        entries.add(Yaml.with(
                                Yaml.without(in(squad, written), Set.of(BowlerKeys.COMES)),
                                BowlerKeys.GROUP,
                                Yaml.number(group + 1L)));
                    }
                }
            }
            away.forEach((bowler, written) -> entries.add(Yaml.with(
                    Yaml.without(in(squad, written), Set.of(BowlerKeys.GROUP)),
                    BowlerKeys.COMES,
                    Yaml.text(BowlerKeys.COMES.form().write(waits(squad, bowler) ? Presence.WAITING : Presence.NO)))));
        }
        return Yaml.list(entries);
    }

    private boolean waits(Squad squad, String bowler) {
        return changed.waiting().stream()
                .anyMatch(one ->
                        one.squad().equals(squad.id()) && one.bowler().id().equals(bowler));
    }

    private static MappingNode in(Squad squad, MappingNode written) {
        return Yaml.with(written, BowlerKeys.SQUAD, Yaml.text(squad.id()));
    }

    /** Changes of the line-up of those alone who are still there. */
    private MappingNode changes(MappingNode root) {
        Set<String> there = changed.event().squads().stream()
                .flatMap(squad -> squad.groups().stream())
                .flatMap(group -> group.bowlers().stream())
                .map(Bowler::id)
                .collect(Collectors.toSet());
        Optional<Node> written = Yaml.find(root, EventKeys.CHANGES);
        List<Node> kept = written.filter(SequenceNode.class::isInstance).stream()
                .flatMap(list -> ((SequenceNode) list).getValue().stream())
                .filter(item -> Yaml.find((MappingNode) item, BowlerKeys.BOWLER)
                        .filter(bowler -> there.contains(((ScalarNode) bowler).getValue()))
                        .isPresent())
                .toList();
        return written.isEmpty()
                ? root
                : kept.isEmpty()
                        ? Yaml.without(root, Set.of(EventKeys.CHANGES))
                        : Yaml.with(root, EventKeys.CHANGES, Yaml.list(kept));
    }
}
