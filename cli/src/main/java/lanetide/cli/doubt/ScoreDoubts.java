package lanetide.cli.doubt;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanetide.cli.report.Figures;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;

/** Looks at mean scores: whether they are such as bowlers bowl. */
public final class ScoreDoubts {
    /**
     * The lowest and the highest mean of many bowlers that is believed (pins a game). Averages are published for 160 to
     * 240 on house patterns (O'Keefe, US Bowler, July 2012); how far below hard lanes and beginners go is an
     * assumption.
     */
    static final double LOWEST_PINS = 100;

    static final double HIGHEST_PINS = 250;

    private static final int NAMED = 5;

    private ScoreDoubts() {}

    /**
     * The reading of a scenario that was played, with a warning if a squad scores what nobody does.
     *
     * @param reading the scenario as it was read, without errors
     * @param study what came of playing it
     * @return the same, with the warning; itself if there is none
     */
    public static Reading told(Reading reading, StudyResult study) {
        Map<String, Double> means = new LinkedHashMap<>();
        for (SquadStatistics squad : study.squads()) {
            means.put("squad " + squad.squad(), squad.meanScore());
        }
        return told(reading, means);
    }

    /**
     * The same for any means.
     *
     * @param reading the scenario as it was read, without errors
     * @param means what they are of, each with its mean (pins a game)
     * @return the same, with the warning; itself if there is none
     */
    public static Reading told(Reading reading, Map<String, Double> means) {
        List<String> unheardOf = means.entrySet().stream()
                .filter(mean -> !(mean.getValue() >= LOWEST_PINS && mean.getValue() <= HIGHEST_PINS))
                .map(mean -> mean.getKey() + " " + Figures.fixed(mean.getValue(), 0))
                .toList();
        return unheardOf.isEmpty() ? reading : reading.with(List.of(notice(reading, unheardOf)));
    }

    private static Notice notice(Reading reading, List<String> means) {
        String named = means.stream().limit(NAMED).collect(Collectors.joining(", "))
                + (means.size() > NAMED ? " and " + (means.size() - NAMED) + " more" : "");
        String message = "Mean scores are such as nobody bowls: " + named + " pins a game, where "
                + Figures.fixed(LOWEST_PINS, 0) + " to " + Figures.fixed(HIGHEST_PINS, 0)
                + " is believed. The lanes are not as lanes are, or the bowlers not as bowlers are: check pattern, oil before"
                + " each squad, styles and levels.";
        return Notice.atStart(
                NoticeCode.MEANS_UNHEARD_OF, reading.scenario().orElseThrow().file(), "squads", "", message);
    }
}
