package lanetide.cli.scenario.reader;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Group;

/** Gives the groups of a squad the names that it has for them. */
final class GroupNames {
    private GroupNames() {}

    /** The groups under their names; as they are, perhaps with a notice, if the squad has none for them. */
    static List<Group> given(SquadDraft squad, List<Group> groups) {
        Optional<Value> names = squad.section().value(EventKeys.GROUP_NAMES);
        if (names.isEmpty()) {
            return groups;
        }
        List<String> read = names.get().list().orElse(List.of()).stream()
                .flatMap(item -> item.read(new Form.Text(true)).stream())
                .toList();
        if (read.size() != groups.size() || new HashSet<>(read).size() != read.size()) {
            names.get()
                    .refuse(
                            NoticeCode.IMPOSSIBLE_COMBINATION,
                            " with " + read.size() + " names, but squad " + squad.called() + " has " + groups.size()
                                    + " groups; each must have one name of its own. Correct the list, or leave it out.");
            return groups;
        }
        return IntStream.range(0, groups.size())
                .mapToObj(g -> new Group(read.get(g), groups.get(g).bowlers()))
                .toList();
    }
}
