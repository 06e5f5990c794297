package lanetide.cli.fairness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.cli.simulate.SquadLanes;
import lanetide.cli.words.WearWords;
import lanetide.oilflow.film.ByStretch;
import lanetide.squads.study.WearStudy.Wear;

/** Which squads and styles gain or lose by heads, mid-lane and what is carried past the end, in tables and words. */
public final class WearTable {
    /** Over it. */
    public static final String HEADING = "Why: what the worn lanes do to each style";

    /** What the table says. */
    public static final String CAPTION =
            "Strikes more (+) or fewer (-) in 100 first balls than on the lanes as laid, after moving two and one";

    /** What the second table says. */
    public static final String BOARDS_CAPTION =
            "Boards by which a good shot on the line of the fresh pattern meets the pins higher (+) or lighter (-)";

    /** How to read both. */
    public static final String NOTE =
            "Heads: how much of it goes if the first 15 ft alone are made fresh; mid-lane: the same from there to the end of"
                    + " the pattern; past end: without the oil carried there. Together is the rest, which no stretch does"
                    + " alone. Means over a left and a right lane before the squad's first and last game.";

    private WearTable() {}

    /** Strikes, a row for each squad and style. */
    public static List<List<String>> strikes(List<Wear> wear) {
        List<String> head = head();
        head.add("90 % interval");
        return Table.rows(head, wear, one -> {
            List<String> row = row(one, one.strikes());
            row.add(one.allStrikesCi90()
                    .map(interval -> Figures.signedInterval(interval, 1))
                    .orElse("-"));
            return row;
        });
    }

    /** Boards, a row for each squad and style. */
    public static List<List<String>> boards(List<Wear> wear) {
        return Table.rows(head(), wear, one -> row(one, one.boards()));
    }

    private static List<String> head() {
        List<String> head = new ArrayList<>(List.of("Squad", "Style"));
        head.addAll(WearWords.COLUMNS.keySet());
        return head;
    }

    private static List<String> row(Wear wear, ByStretch parts) {
        ByStretch told = parts.inTenths();
        List<String> row = new ArrayList<>(List.of(wear.squad(), kind(wear)));
        WearWords.COLUMNS.values().forEach(part -> row.add(Figures.signed(part.applyAsDouble(told), 1)));
        return row;
    }

    private static String kind(Wear wear) {
        return new SquadLanes.StyleHand(wear.style(), wear.hand()).words();
    }

    /** Of every squad whom wear costs most, whom least, and through what; a sentence each. */
    public static List<String> sentences(List<Wear> wear) {
        Map<String, List<Wear>> bySquad =
                wear.stream().collect(Collectors.groupingBy(Wear::squad, LinkedHashMap::new, Collectors.toList()));
        Comparator<Wear> byStrikes =
                Comparator.comparingDouble(one -> one.strikes().all());
        List<String> sentences = new ArrayList<>();
        bySquad.forEach((squad, all) -> {
            Wear worst = all.stream().min(byStrikes).orElseThrow();
            Wear best = all.stream().max(byStrikes).orElseThrow();
            sentences.add("Squad " + squad + ": " + sentence(worst)
                    + (worst.equals(best) ? "." : "; " + sentence(best) + "."));
        });
        return sentences;
    }

    private static String sentence(Wear wear) {
        ByStretch told = wear.strikes().inTenths();
        String strikes = Figures.signed(told.all(), 1) + " strikes in 100 for " + kind(wear);
        return told.heads() == 0 && told.midLane() == 0 && told.pastEnd() == 0
                ? strikes
                : strikes + " (heads " + Figures.signed(told.heads(), 1) + ", mid-lane "
                        + Figures.signed(told.midLane(), 1) + ", past the end " + Figures.signed(told.pastEnd(), 1)
                        + ", together " + Figures.signed(told.together(), 1) + ")";
    }
}
