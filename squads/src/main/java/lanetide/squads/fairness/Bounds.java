package lanetide.squads.fairness;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import lanetide.squads.model.Knowledge;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;

/**
 * The same advantages if bowlers followed the lanes otherwise than is reckoned with: if nobody ever moved, and if
 * everybody saw the oil. How bowlers follow the lanes is known least of all that a verdict hangs on, and the truth lies
 * between the two. And the same with the usual values, where the study goes through sets of them.
 *
 * @param rounds rounds that each was played for, with the luck, the values and the seatings of the first rounds of the
 *     study
 * @param ifNobodyMoves advantages in the order of the study's
 * @param ifAllKnow the same
 * @param asUsual the same by bowlers as they are reckoned with, all values as usual; none if the study's are
 */
public record Bounds(int rounds, List<Effect> ifNobodyMoves, List<Effect> ifAllKnow, List<Effect> asUsual) {
    /** Fewest rounds: those that give an interval. */
    public static final int MIN_ROUNDS = 2;

    /** Copies the lists. */
    public Bounds {
        ifNobodyMoves = List.copyOf(ifNobodyMoves);
        ifAllKnow = List.copyOf(ifAllKnow);
        asUsual = List.copyOf(asUsual);
    }

    /**
     * Plays an event all these ways.
     *
     * @param events the event under its sets of values
     * @param plan how it is studied; its number of playings does not matter
     * @param rounds rounds of each, at least {@link #MIN_ROUNDS}
     * @param execution how, as the next studies of its run
     * @param onDone told the number of playings done so far, of {@link #playings}
     * @return the bounds; they do not depend on the number of threads
     * @throws IllegalArgumentException if {@code rounds < 2}, or the event has a single bowler
     */
    public static Bounds of(
            PossibleEvents events, FairnessPlan plan, int rounds, Execution execution, IntConsumer onDone) {
        int each = rounds * FairnessStudy.playingsOfRound(events.event());
        FairnessPlan few = plan.playing(each);
        return new Bounds(
                rounds,
                effects(events, Knowledge.NOTHING, few, execution, onDone),
                effects(events, Knowledge.EVERYTHING, few, execution, done -> onDone.accept(each + done)),
                events.sets() == 1
                        ? List.of()
                        : effects(
                                events.amongFirst(1),
                                events.event().bowling().knowledge(),
                                few,
                                execution,
                                done -> onDone.accept(2 * each + done)));
    }

    /**
     * How often the event is played for all.
     *
     * @param events the event under its sets of values
     * @param rounds rounds of each
     * @return playings in all
     */
    public static int playings(PossibleEvents events, int rounds) {
        return (events.sets() == 1 ? 2 : 3) * rounds * FairnessStudy.playingsOfRound(events.event());
    }

    private static List<Effect> effects(
            PossibleEvents events, Knowledge knowledge, FairnessPlan plan, Execution execution, IntConsumer onDone) {
        return FairnessStudy.play(events.with(events.event().withKnowledge(knowledge)), plan, execution, onDone)
                .result()
                .effects();
    }

    /**
     * An advantage if nobody ever moved.
     *
     * @param effect one of the study's
     * @return the same one there
     * @throws IllegalArgumentException if these bounds do not have it
     */
    public Effect ifNobodyMoves(Effect effect) {
        return like(effect, ifNobodyMoves);
    }

    /**
     * An advantage if everybody saw the oil.
     *
     * @param effect one of the study's
     * @return the same one there
     * @throws IllegalArgumentException if these bounds do not have it
     */
    public Effect ifAllKnow(Effect effect) {
        return like(effect, ifAllKnow);
    }

    /**
     * An advantage with the usual values.
     *
     * @param effect one of the study's
     * @return the same one there; empty if the study's own values are the usual ones
     */
    public Optional<Effect> asUsual(Effect effect) {
        return asUsual.isEmpty() ? Optional.empty() : Optional.of(like(effect, asUsual));
    }

    private static Effect like(Effect effect, List<Effect> effects) {
        return effects.stream()
                .filter(other -> other.kind() == effect.kind() && other.id().equals(effect.id()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no bounds for " + effect.kind() + " " + effect.id()));
    }

    /**
     * Whether it hangs on how bowlers follow the lanes who is better off.
     *
     * @param effect one of the study's
     * @return true if in one of the bounds the whole 90 % interval lies on the other side of nought
     */
    public boolean mayTurnRound(Effect effect) {
        return Stream.of(ifNobodyMoves(effect), ifAllKnow(effect))
                .anyMatch(bound -> effect.advantagePins() > 0
                        ? bound.ci90().high() < 0
                        : bound.ci90().low() > 0);
    }
}
