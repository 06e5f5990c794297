package lanetide.squads.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
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
 * @param field how its bowlers were drawn; empty if they are listed
 */
public record Squad(
        String id,
        long startMs,
        Conditioning conditioning,
        long practiceMs,
        List<Group> groups,
        Arrangements arrangements,
        Optional<DrawnField> field) {
    /**
     * Copies the list and checks the values.
     *
     * @throws IllegalArgumentException if a time is negative, there is no group, {@code id} is blank, or the line-up of
     *     a bowler changes who is in no group
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
     * A squad whose bowlers are listed.
     *
     * @param id name, alone in the event
     * @param startMs planned start of practice (ms from midnight before the first day), at least 0
     * @param conditioning what is done to the lanes before
     * @param practiceMs length of practice on the starting pair (ms), at least 0
     * @param groups in rotation order, at least one
     * @param arrangements breaks, changes of the line-up, machines
     * @throws IllegalArgumentException as above
     */
    public Squad(
            String id,
            long startMs,
            Conditioning conditioning,
            long practiceMs,
            List<Group> groups,
            Arrangements arrangements) {
        this(id, startMs, conditioning, practiceMs, groups, arrangements, Optional.empty());
    }

    /**
     * The squad with bowlers who were drawn.
     *
     * @param drawn how they were drawn
     * @return the squad
     */
    public Squad drawnFrom(DrawnField drawn) {
        return new Squad(id, startMs, conditioning, practiceMs, groups, arrangements, Optional.of(drawn));
    }

    /**
     * The squad with others who might come as well; itself if its bowlers are listed.
     *
     * @param streams family of the round
     * @return the squad
     */
    Squad asTheyCome(RandomStreams streams) {
        return field.map(drawn -> new Squad(
                        id, startMs, conditioning, practiceMs, drawn.drawnAgain(groups, streams), arrangements, field))
                .orElse(this);
    }

    /**
     * The squad under another name.
     *
     * @param other a name that is alone in the event
     * @return the squad
     */
    public Squad withId(String other) {
        return new Squad(other, startMs, conditioning, practiceMs, groups, arrangements, field);
    }

    /**
     * The squad at another time.
     *
     * @param newStartMs start of practice (ms from midnight before the first day), at least 0
     * @return the squad
     */
    public Squad startingAt(long newStartMs) {
        return new Squad(id, newStartMs, conditioning, practiceMs, groups, arrangements, field);
    }

    /**
     * The squad on lanes that are made ready in another way.
     *
     * @param other what is done to the lanes before
     * @return the squad
     */
    public Squad withConditioning(Conditioning other) {
        return new Squad(id, startMs, other, practiceMs, groups, arrangements, field);
    }

    /**
     * The squad with another practice.
     *
     * @param otherMs length of practice on the starting pair (ms), at least 0
     * @return the squad
     */
    public Squad withPractice(long otherMs) {
        return new Squad(id, startMs, conditioning, otherMs, groups, arrangements, field);
    }

    /**
     * The squad with other groups; what is arranged for it stays, but for changes of bowlers who are in it no more.
     *
     * @param others the groups, at least one
     * @return the squad
     */
    public Squad withGroups(List<Group> others) {
        Set<String> there = others.stream()
                .flatMap(group -> group.bowlers().stream())
                .map(Bowler::id)
                .collect(Collectors.toSet());
        return new Squad(id, startMs, conditioning, practiceMs, others, arrangements.among(there), field);
    }

    /**
     * The squad with other things arranged for it.
     *
     * @param others breaks, changes of the line-up, machines
     * @return the squad
     */
    public Squad withArrangements(Arrangements others) {
        return new Squad(id, startMs, conditioning, practiceMs, groups, others, field);
    }

    /**
     * The squad with nothing arranged beside its games.
     *
     * @return the squad
     */
    public Squad withoutArrangements() {
        return withArrangements(Arrangements.NONE);
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

    /**
     * Somebody who may bowl.
     *
     * @param name his name
     * @return the bowler or substitute; empty if there is none of that name
     */
    public Optional<Bowler> bowler(String name) {
        return everybody().stream().filter(one -> one.id().equals(name)).findFirst();
    }
}
