package lanetide.cli.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanetide.cli.fairness.CutTables;
import lanetide.cli.fairness.EffectWords;
import lanetide.cli.fairness.FairnessAnswer;
import lanetide.cli.fairness.MeasureWords;
import lanetide.cli.fairness.ReasonWords;
import lanetide.cli.fairness.RemedyTable;
import lanetide.cli.fairness.RemedyWords;
import lanetide.cli.fairness.WearTable;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.words.English;
import lanetide.cli.words.UnknownWords;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.fairness.Verdict;
import lanetide.squads.measure.WhatToMeasure;
import lanetide.squads.qualifying.CutChances;
import lanetide.squads.study.WearStudy;

/** Whether the event is fair, and to whom not. */
final class FairnessSection {
    /** More than these are counted in short, and named below. */
    private static final int MAX_NAMED = 3;

    private final Scenario scenario;
    private final FairnessResult result;
    private final List<Remedy> remedies;
    private final Optional<WhatToMeasure> measure;
    private final List<WearStudy.Wear> wear;
    private final String currency;

    FairnessSection(Scenario scenario, FairnessAnswer answer) {
        this.scenario = scenario;
        this.result = answer.result();
        this.remedies = answer.remedies();
        this.measure = answer.measure();
        this.wear = answer.wear();
        this.currency = scenario.policy().costs().currency();
    }

    PageModel.Fairness section() {
        List<Table> tables = new ArrayList<>();
        for (EffectKind kind : EffectKind.values()) {
            List<List<String>> rows = rows(kind);
            if (rows.size() > 1) {
                tables.add(Table.of("effects-" + EffectWords.kind(kind), EffectWords.heading(kind), rows, 1));
            }
        }
        result.cut().ifPresent(cut -> addCut(cut, tables));
        return new PageModel.Fairness(
                verdict(),
                EffectWords.unfair(result).stream().map(EffectWords::sentence).toList(),
                sureness(),
                hangsOn(),
                settles(),
                evenness(),
                reasons(),
                wearTables(),
                tables,
                remedies.isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                Table.of("remedies", RemedyTable.CAPTION, RemedyTable.rows(remedies, currency), 2)));
    }

    private static void addCut(CutChances cut, List<Table> tables) {
        tables.add(Table.of("cut-levels", CutTables.HEADING, CutTables.levels(cut), 1));
        List<List<String>> squads = CutTables.squads(cut);
        if (squads.size() > 1) {
            tables.add(Table.of("cut-squads", CutTables.CAPTION, squads, 2));
        }
    }

    /** How evenly advantages are spread, and what the cut does if there is one. */
    private List<String> evenness() {
        List<String> sentences =
                new ArrayList<>(result.evenness().map(EffectWords::evenness).orElse(List.of()));
        result.cut().ifPresent(cut -> sentences.addAll(CutTables.sentences(cut, scenario.event())));
        return sentences;
    }

    private List<Table> wearTables() {
        return wear.isEmpty()
                ? List.of()
                : List.of(
                        Table.of("wear-strikes", WearTable.CAPTION, WearTable.strikes(wear), 2),
                        Table.of("wear-boards", WearTable.BOARDS_CAPTION, WearTable.boards(wear), 2));
    }

    private List<String> reasons() {
        List<String> reasons = new ArrayList<>(WearTable.sentences(wear));
        result.reasons().stream().map(ReasonWords::of).forEach(reasons::add);
        return reasons;
    }

    private List<String> sureness() {
        List<String> sentences = new ArrayList<>();
        EffectWords.acrossFields(scenario.event()).ifPresent(sentences::add);
        sentences.add(UnknownWords.intervals(result.sets(), scenario.event()));
        if (result.beyondPlaying()) {
            sentences.add(UnknownWords.settles(result.playingsToDecide(), true));
        }
        RemedyTable.leastRegret(remedies).ifPresent(sentences::add);
        return sentences;
    }

    private List<String> hangsOn() {
        List<String> sentences = new ArrayList<>();
        measure.ifPresent(found -> {
            sentences.add(MeasureWords.least(found));
            sentences.addAll(MeasureWords.hangsOn(found));
        });
        return sentences;
    }

    private List<String> settles() {
        return measure.map(MeasureWords::worth).orElse(List.of());
    }

    /** The answer in a few sentences: the verdict, who is worst and best off, and what would help most. */
    List<String> inShort() {
        List<String> sentences = new ArrayList<>(List.of(verdict()));
        List<Effect> unfair = EffectWords.unfair(result);
        if (unfair.size() <= MAX_NAMED) {
            unfair.forEach(effect -> sentences.add(EffectWords.sentence(effect)));
        } else {
            sentences.add("That is shown for " + unfair.size() + " of "
                    + result.effects().size()
                    + " advantages looked at. Worst and best off: "
                    + EffectWords.inWords(unfair.get(0)) + "; " + EffectWords.inWords(unfair.get(unfair.size() - 1))
                    + ".");
        }
        if (result.verdict() != Verdict.FAIR && !remedies.isEmpty()) {
            sentences.add(mended(remedies, currency));
        }
        return sentences;
    }

    private String verdict() {
        return "The event is " + EffectWords.verdict(result.verdict()) + ", if up to "
                + Figures.plain(result.plan().marginPins(), 2) + " pins a game count as fair (from " + result.playings()
                + " playings).";
    }

    /**
     * The cheapest and then quickest of the changes that are shown to gain, and gain as much as the best of them within
     * its standard error.
     */
    static String mended(List<Remedy> remedies, String currency) {
        List<Remedy> shown = remedies.stream().filter(Remedy::isShown).toList();
        if (shown.isEmpty()) {
            return "No change that was tried is shown to make it more even.";
        }
        Remedy most = Collections.max(shown, Comparator.comparingDouble(Remedy::gainPins));
        Remedy least = shown.stream()
                .filter(remedy -> remedy.gainPins()
                        >= most.gainPins() - most.gain().orElseThrow().errorPins())
                .min(Comparator.comparingDouble(Remedy::extraCost).thenComparingDouble(Remedy::extraMinutes))
                .orElse(most);
        return "What would mend it, of what was tried: " + RemedyWords.of(least.change())
                + ". From the worst to the best placed group it is then "
                + Figures.fixed(least.gainPins(), 1) + " pins a game less (90 % interval "
                + Figures.signedInterval(least.gain().orElseThrow().ci90(), 1) + "), for "
                + Figures.signed(least.extraMinutes(), 0)
                + " min in the squad it delays most and " + Figures.signed(least.extraCost(), 0) + " " + currency
                + " of oiling. Nothing tried is shown to do better.";
    }

    private List<List<String>> rows(EffectKind kind) {
        return EffectWords.rows(
                result,
                kind,
                EffectWords.head(EffectWords.kind(kind), result).stream()
                        .map(English::capital)
                        .toList());
    }
}
