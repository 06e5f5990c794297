package lanetide.squads.fairness;

import java.util.Locale;
import java.util.function.LongPredicate;
import java.util.stream.LongStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;

/** How often events that are played ball by ball are judged as construction says they must be. */
final class PlayedVerdictStudy {
    /** The seeds of the study are 1 to this. */
    static final int SEEDS = 50;

    private static final int PLAYINGS = 150;
    private static final double MARGIN_PINS = 1;

    /**
     * The second squad finds lanes with twice the oil that everybody brings his line for. All are strokers, whom that
     * harms most; what players of more revs lose by it is too little to be shown in so few playings.
     */
    private static final Event UNFAIR = SmallEvents.twoSquads(
            SmallEvents.groups(2, 4, id -> SmallEvents.bowler(id, Hand.RIGHT, "stroker", "scratch", "medium-reactive")),
            4,
            Conditioning.OIL_OVER);

    /** Equal bowlers, equal lanes. */
    private static final Event EVEN = SmallEvents.twoSquads(SmallEvents.alike(2, 4), 4, Conditioning.STRIP_AND_OIL);

    private PlayedVerdictStudy() {}

    /** Whether the unfair event is found unfair with the luck of a seed, and the right squad is named. */
    static boolean findsTheUnfairOut(long seed) {
        FairnessResult result = judged(UNFAIR, seed);
        return result.verdict() == Verdict.UNFAIR
                && result.effects().stream()
                        .anyMatch(effect -> effect.kind() == EffectKind.SQUAD
                                && effect.id().equals("B")
                                && effect.verdict() == Verdict.UNFAIR
                                && effect.advantagePins() < 0);
    }

    /** Whether the even event is called unfair with the luck of a seed. */
    static boolean accusesTheEven(long seed) {
        return judged(EVEN, seed).verdict() == Verdict.UNFAIR;
    }

    /** What is said of an event that is played so often, on two threads. */
    static FairnessResult judged(Event event, long seed) {
        return FairnessStudy.run(event, new FairnessPlan(seed, PLAYINGS, MARGIN_PINS, true), 2, done -> {});
    }

    static long count(LongPredicate said, int seeds) {
        return LongStream.rangeClosed(1, seeds).filter(said).count();
    }

    /**
     * Runs the study and prints what it counts.
     *
     * @param args nothing
     */
    public static void main(String[] args) {
        System.out.printf(
                Locale.ROOT,
                "unfair, found out: %d of %d; even, accused: %d%n",
                count(PlayedVerdictStudy::findsTheUnfairOut, SEEDS),
                SEEDS,
                count(PlayedVerdictStudy::accusesTheEven, SEEDS));
    }
}
