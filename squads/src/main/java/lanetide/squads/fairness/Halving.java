package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.List;

/**
 * How rounds are shared among candidates of which the best are looked for: in each stage those that are left get about
 * as many rounds together, then the better half goes on (sequential halving: Z. Karnin, T. Koren and O. Somekh, "Almost
 * optimal exploration in multi-armed bandits", ICML 2013). Here it ends with four, or in a large event with two, so
 * that there is something to choose between, and they get rounds enough to meet every set of values.
 *
 * @param stages one after another, the number of candidates falling, that of rounds rising
 */
record Halving(List<Stage> stages) {
    /** Candidates that are usually left at the end. */
    static final int LEFT = 4;

    /** Fewest that are left, so that there is still something to choose between. */
    static final int FEWEST_LEFT = 2;

    /** Rounds of the first stage at least: with fewer nothing is known of their luck. */
    static final int FEWEST = 3;

    /** Rounds of the last stage at least: a difference has no interval with fewer. */
    private static final int FEWEST_AT_LAST = 2;

    /**
     * Part of the way.
     *
     * @param candidates so many are played
     * @param rounds each for so many rounds, those of the stages before among them
     */
    record Stage(int candidates, int rounds) {}

    Halving {
        stages = List.copyOf(stages);
    }

    /**
     * Shares rounds out.
     *
     * @param candidates how many there are, at least 1
     * @param each rounds that each would get if all got the same, at least 1
     * @param last rounds of those that are left at the end, at least
     * @param most rounds that anybody can get
     */
    static Halving of(int candidates, int each, int last, int most) {
        return of(candidates, each, last, most, LEFT);
    }

    /** The same with another number that is left at the end, at least 1. */
    static Halving of(int candidates, int each, int last, int most, int atTheEnd) {
        List<Integer> left = new ArrayList<>(List.of(candidates));
        while (left.get(left.size() - 1) > atTheEnd) {
            left.add(Math.max(atTheEnd, (left.get(left.size() - 1) + 1) / 2));
        }
        int together = Math.max(1, candidates * each / left.size());
        List<Stage> stages = new ArrayList<>();
        int rounds = 0;
        for (int stage = 0; stage < left.size(); stage++) {
            boolean isLast = stage == left.size() - 1;
            int share = rounds + Math.max(1, together / left.get(stage));
            rounds = Math.min(most, Math.max(isLast ? Math.max(FEWEST_AT_LAST, last) : FEWEST, share));
            stages.add(new Stage(left.get(stage), rounds));
        }
        return new Halving(stages);
    }

    /** Rounds in all. */
    int rounds() {
        int sum = 0;
        int before = 0;
        for (Stage stage : stages) {
            sum += stage.candidates() * (stage.rounds() - before);
            before = stage.rounds();
        }
        return sum;
    }
}
