package lanetide.squads.play;

import java.util.List;
import lanetide.squads.result.BowlerResult;

/**
 * What score sheets tell, over the first nine frames of each game, in which every ball of a full rack is the first of
 * its frame.
 *
 * @param frames frames counted
 * @param strikes strikes among them
 * @param spares spares among them
 */
record Sheets(int frames, int strikes, int spares) {
    static Sheets of(List<BowlerResult> bowlers) {
        int frames = 0;
        int strikes = 0;
        int spares = 0;
        for (BowlerResult bowler : bowlers) {
            for (String sheet : bowler.sheets()) {
                String[] signs = sheet.split(" ", -1);
                for (int frame = 0; frame < 9; frame++) {
                    frames++;
                    strikes += signs[frame].equals("X") ? 1 : 0;
                    spares += signs[frame].endsWith("/") ? 1 : 0;
                }
            }
        }
        return new Sheets(frames, strikes, spares);
    }

    double strikePercent() {
        return 100.0 * strikes / frames;
    }

    /** Of the frames that were no strike. */
    double sparePercent() {
        return 100.0 * spares / (frames - strikes);
    }
}
