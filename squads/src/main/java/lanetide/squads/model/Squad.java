package lanetide.squads.model;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.oilflow.Require;

/**
 * Bowlers who play at one time.
 *
 * @param id name, alone in the event
 * @param startMs planned start of practice (ms from midnight before the first day), at least 0
 * @param conditioning what is done to the lanes before; it is timed to end at the start
 * @param practiceMs length of practice on the starting pair (ms), at least 0
 * @param groups in rotation order, at least one
 * @param arrangements breaks, changes of the line-up, machines
 */
public record Squad(
        String id,
        long startMs,
        Conditioning conditioning,
        long practiceMs,
        List<Group> groups,
        Arrangements arrangements) {
    /**
     * Copies the list and checks the values.
     *
     * @throws IllegalArgumentException if a time is negative, there is no group, {@code id} is blank, or the line-up of a
     *     bowler changes who is in no group
     */
    public Squad {
        Require.named(id, "squad");
        groups = List.copyOf(groups);
        if (startMs < 0 || practiceMs < 0 || groups.isEmpty()) {
            throw new IllegalArgumentException("squad " + id + ": start " + startMs + " ms and practice " + practiceMs
                    + " ms must be at least 0, groups " + groups.size() + " at least 1");
        }
        for (LineUpChange change : arrangements.changes()) {
            if (groups.stream()
                    .flatMap(group -> group.bowlers().stream())
                    .noneMatch(bowler -> bowler.id().equals(change.bowler()))) {
                throw new IllegalArgumentException("squad " + id + " has no bowler " + change.bowler()
                        + ", whose place is to change; correct the name");
            }
        }
    }

    /**
     * The squad with other groups; what is arranged for it stays, but for changes of bowlers who are in it no more.
     *
     * @param others the groups, at least one
     * @return the squad
     */
    public Squad with(List<Group> others) {
        Set<String> there = others.stream()
                .flatMap(group -> group.bowlers().stream())
                .map(Bowler::id)
                .collect(Collectors.toSet());
        List<LineUpChange> changes = arrangements.changes().stream()
                .filter(change -> there.contains(change.bowler()))
                .toList();
        return new Squad(
                id,
                startMs,
                conditioning,
                practiceMs,
                others,
                new Arrangements(arrangements.breaks(), changes, arrangements.machines()));
    }

    /**
     * The squad at another time.
     *
     * @param newStartMs start of practice (ms from midnight before the first day), at least 0
     * @return the squad
     */
    public Squad startingAt(long newStartMs) {
        return new Squad(id, newStartMs, conditioning, practiceMs, groups, arrangements);
    }

    /**
     * A squad for which nothing is arranged beside its games.
     *
     * @param id name, alone in the event
     * @param startMs planned start of practice (ms from midnight before the first day), at least 0
     * @param conditioning what is done to the lanes before; it is timed to end at the start
     * @param practiceMs length of practice on the starting pair (ms), at least 0
     * @param groups in rotation order, at least one
     */
    public Squad(String id, long startMs, Conditioning conditioning, long practiceMs, List<Group> groups) {
        this(id, startMs, conditioning, practiceMs, groups, Arrangements.NONE);
    }

    /**
     * Everybody who may bowl: the groups' bowlers in their order, then substitutes.
     *
     * @return the bowlers
     */
    public List<Bowler> everybody() {
        return Stream.concat(
                        groups.stream().flatMap(group -> group.bowlers().stream()),
                        arrangements.changes().stream()
                                .filter(LineUpChange.Substitution.class::isInstance)
                                .map(change -> ((LineUpChange.Substitution) change).substitute()))
                .toList();
    }
}
