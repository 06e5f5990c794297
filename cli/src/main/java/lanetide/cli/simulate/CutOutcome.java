package lanetide.cli.simulate;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.words.CutWords;
import lanetide.squads.model.Event;
import lanetide.squads.study.CutStatistics;

/** What came of the cut and the finals, in words and tables. */
final class CutOutcome {
    private CutOutcome() {}

    static List<String> sentences(CutStatistics cut, Event event) {
        List<String> sentences = new ArrayList<>();
        sentences.add(CutWords.rule(event.cut().orElseThrow(), event) + ".");
        sentences.add("The last who goes on has " + Figures.fixed(cut.scorePins(), 0) + " pins"
                + cut.scoreCi95()
                        .map(interval ->
                                " on the mean over the playings, 95 % interval " + Figures.interval(interval, 0))
                        .orElse("")
                + ".");
        event.cut().flatMap(rule -> rule.finals()).ifPresent(finals -> sentences.add(CutWords.finals(finals) + "."));
        cut.end()
                .ifPresent(end -> sentences.add("The finals end at " + TimeOfDay.write(end.meanMs())
                        + (end.lowMs() == end.highMs()
                                ? ""
                                : " on the mean, in nine playings of ten between " + TimeOfDay.write(end.lowMs())
                                        + " and " + TimeOfDay.write(end.highMs()))
                        + "."));
        return sentences;
    }

    /** How often each seed is first, with a head. */
    static List<List<String>> seeds(CutStatistics cut) {
        return Table.rows(
                List.of("seed", "first in 100", "95 % interval", "pins a game"),
                cut.seeds(),
                seed -> List.of(
                        String.valueOf(seed.seed()),
                        Figures.fixed(100 * seed.firstShare(), 1),
                        seed.firstCi95()
                                .map(interval -> Figures.fixed(100 * interval.low(), 1) + " to "
                                        + Figures.fixed(100 * interval.high(), 1))
                                .orElse("-"),
                        Figures.fixed(seed.meanGame(), 1)));
    }
}
