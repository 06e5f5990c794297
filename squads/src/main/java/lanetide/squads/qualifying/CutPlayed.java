package lanetide.squads.qualifying;

import java.util.List;
import lanetide.squads.model.Cut;
import lanetide.squads.result.EventResult;

/**
 * What one playing says of the cut.
 *
 * @param chance the chance of the person whose entry a bowler is, by bowler
 * @param alone the same if this entry were his only one, while everybody else bowls what he bowls
 * @param goingOn people who go on
 * @param scorePins total of the last one who goes on (pins)
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record CutPlayed(double[] chance, double[] alone, int goingOn, int scorePins) {
    /**
     * Applies a cut to a playing with bowlers in any seats, each under the name of his entry.
     *
     * @param cut the rule
     * @param people who is entered
     * @param result what came of the playing
     * @param bowlers number of entries
     * @return what it says of the cut
     */
    public static CutPlayed of(Cut cut, People people, EventResult result, int bowlers) {
        People.Bowled bowled = people.seated(result.squads(), cut);
        Qualifying all = Qualifying.of(cut, bowled.people());
        Qualified qualified = all.qualified();
        double[] chance = new double[bowlers];
        double[] alone = new double[bowlers];
        for (int person = 0; person < people.count(); person++) {
            List<Integer> entries = bowled.entries().get(person);
            Entrant he = bowled.people().get(person);
            for (int block = 0; block < entries.size(); block++) {
                int entry = entries.get(block);
                chance[entry] = qualified.chances().get(person);
                alone[entry] = entries.size() == 1
                        ? chance[entry]
                        : all.with(person, he.only(block)).qualified().chances().get(person);
            }
        }
        return new CutPlayed(chance, alone, qualified.goingOn(), qualified.scorePins());
    }
}
