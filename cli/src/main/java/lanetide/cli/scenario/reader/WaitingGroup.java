package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.squads.change.WaitingList.Waiting;
import lanetide.squads.model.Group;

/** Those who wait as a group of their own, so that they get their handicaps like all others. */
final class WaitingGroup {
    private WaitingGroup() {}

    static Optional<List<Group>> of(List<Waiting> waiting) {
        return waiting.isEmpty()
                ? Optional.empty()
                : Optional.of(List.of(new Group(
                        "waiting", waiting.stream().map(Waiting::bowler).toList())));
    }

    /** The same who wait, as their group has them now. */
    static List<Waiting> again(List<Waiting> waiting, Optional<List<Group>> groups) {
        return groups.map(group -> IntStream.range(0, waiting.size())
                        .mapToObj(one -> new Waiting(
                                waiting.get(one).squad(), group.get(0).bowlers().get(one)))
                        .toList())
                .orElse(List.of());
    }
}
