package lanetide.cli.fairness;

import java.util.List;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.words.English;
import lanetide.cli.words.UnknownWords;
import lanetide.squads.fairness.Bounds;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.fairness.Evenness;
import lanetide.squads.fairness.FairnessComparison;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.fairness.Verdict;
import lanetide.squads.measure.WhatToMeasure;
import lanetide.squads.qualifying.CutChances;

/**
 * What {@code fairness} answers, for people: the verdict first, then to whom not, by how many pins, how sure, and why.
 */
public final class FairnessText {
    private final Scenario scenario;
    private final FairnessAnswer answer;
    private final FairnessResult result;
    private final boolean ownMargin;
    private final Page page = new Page();

    private FairnessText(Scenario scenario, FairnessAnswer answer, boolean ownMargin) {
        this.scenario = scenario;
        this.answer = answer;
        this.result = answer.result();
        this.ownMargin = ownMargin;
    }

    /**
     * Writes the answer.
     *
     * @param scenario what was studied
     * @param answer what came of it
     * @param ownMargin whether the director has set the margin
     * @return the page
     */
    public static String write(Scenario scenario, FairnessAnswer answer, boolean ownMargin) {
        return new FairnessText(scenario, answer, ownMargin).write();
    }

    private String write() {
        page.line(scenario.event().name());
        verdict();
        answer.late().ifPresent(this::lateChanges);
        toWhomNot();
        answer.bounds().ifPresentOrElse(this::notKnown, this::leftOut);
        answer.measure().ifPresent(this::measure);
        for (EffectKind kind : EffectKind.values()) {
            table(kind);
        }
        result.cut().ifPresent(this::cut);
        if (answer.withoutCut()) {
            page.heading(CutTables.HEADING);
            page.item(CutTables.IN_PARTS);
        }
        result.evenness().ifPresent(this::evenness);
        if (!result.reasons().isEmpty()) {
            page.heading("What goes with it");
            result.reasons().forEach(reason -> page.item(ReasonWords.of(reason)));
        }
        if (!answer.wear().isEmpty()) {
            page.heading(WearTable.HEADING);
            page.item(WearTable.CAPTION + ":");
            page.table(WearTable.strikes(answer.wear()), 2);
            page.item(WearTable.BOARDS_CAPTION + ":");
            page.table(WearTable.boards(answer.wear()), 2);
            page.paragraph(WearTable.NOTE);
        }
        if (!answer.remedies().isEmpty()) {
            remedies();
        }
        method();
        Ending.entriesAndCautions(page, scenario);
        return page.text();
    }

    private void verdict() {
        String margin = Figures.plain(result.plan().marginPins(), 2);
        page.line("Verdict: " + EffectWords.verdict(result.verdict()) + ", if up to " + margin
                + " pins a game count as fair.");
        page.paragraph(
                switch (result.verdict()) {
                    case FAIR ->
                        "Every advantage of a squad, starting pair, group, hand or style is shown to be smaller than that.";
                    case UNFAIR ->
                        counted(Verdict.UNFAIR) + " of " + result.effects().size()
                                + " advantages are shown to be larger, " + counted(Verdict.FAIR)
                                + " to be smaller, and "
                                + counted(Verdict.UNDECIDED) + " are open.";
                    case UNDECIDED ->
                        counted(Verdict.UNDECIDED) + " of " + result.effects().size()
                                + " advantages are neither shown to be smaller than that nor to be larger. "
                                + UnknownWords.settles(result.playingsToDecide(), result.beyondPlaying());
                });
        if (answer.bounds().filter(bounds -> BoundsWords.turns(result, bounds)).isPresent()) {
            page.paragraph("That holds for bowlers who follow the lanes as is reckoned here. With others somebody would"
                    + " change sides: see what is not known.");
        }
        EffectWords.acrossFields(scenario.event()).ifPresent(page::paragraph);
        if (!result.plan().lanesChange()) {
            page.paragraph("Played on lanes that stay as they are laid: every ball and every squad finds them fresh.");
        }
        OwnLanesWords.of(scenario.event(), result.plan().lanesChange()).forEach(page::paragraph);
    }

    /** In a large event bowlers who see the oil take longer than all else together. */
    private void leftOut() {
        if (result.plan().lanesChange() && FairnessStudy.isLarge(scenario.event())) {
            page.paragraph(
                    "What it would be with bowlers who never move or who see the oil is left out here, as it would"
                            + " take longer than all else in so large an event; `--bounds 2` adds it.");
        }
    }

    private long counted(Verdict verdict) {
        return result.effects().stream()
                .filter(effect -> effect.verdict() == verdict)
                .count();
    }

    private void toWhomNot() {
        List<Effect> unfair = EffectWords.unfair(result);
        if (!unfair.isEmpty()) {
            page.heading("To whom it is not fair");
            unfair.forEach(effect -> page.item(EffectWords.sentence(effect)));
        }
    }

    /** How bowlers follow the lanes decides most, and is known least. */
    private void notKnown(Bounds bounds) {
        page.heading("What is not known: how bowlers follow the lanes");
        page.item(BoundsWords.explanation(bounds, result.sets()));
        BoundsWords.sentences(result, bounds).forEach(page::item);
    }

    private void measure(WhatToMeasure found) {
        page.heading(MeasureWords.HANGS_ON);
        page.item(MeasureWords.least(found));
        MeasureWords.hangsOn(found).forEach(page::item);
        page.heading(MeasureWords.SETTLES);
        MeasureWords.worth(found).forEach(page::item);
    }

    private void table(EffectKind kind) {
        List<List<String>> rows = EffectWords.rows(result, kind, EffectWords.head(EffectWords.kind(kind), result));
        if (answer.bounds().isPresent()) {
            rows = BoundsWords.beside(rows, result, kind, answer.bounds().get());
        }
        if (rows.size() > 1) {
            page.heading(EffectWords.heading(kind));
            page.table(rows, 1);
        }
    }

    private void cut(CutChances cut) {
        page.heading(CutTables.HEADING);
        CutTables.sentences(cut, scenario.event()).forEach(page::item);
        page.table(CutTables.levels(cut), 1);
        List<List<String>> squads = CutTables.squads(cut);
        if (squads.size() > 1) {
            page.paragraph(CutTables.CAPTION + ":");
            page.table(squads, 2);
        }
    }

    private void evenness(Evenness evenness) {
        page.heading("How evenly it is spread over the groups (chance taken out)");
        EffectWords.evenness(evenness).forEach(page::item);
    }

    private void lateChanges(FairnessComparison change) {
        page.heading("What the late changes do");
        page.item("All of this answer is for the event with the changes. From the worst to the best placed group it is "
                + Figures.fixed(change.spreadAfterPins(), 1) + " pins a game; as planned it is "
                + Figures.fixed(change.spreadBeforePins(), 1) + "."
                + change.gain()
                        .map(gain ->
                                " It is less by " + Figures.signedInterval(gain.ci90(), 1) + " pins (90 % interval).")
                        .orElse(""));
        if (!change.bowledBefore().isEmpty()) {
            page.item((change.bowledBefore().size() == 1 ? "Squad " : "Squads ")
                    + English.joined(change.bowledBefore())
                    + (change.bowledBefore().size() == 1 ? " bowls" : " bowl")
                    + " before anything changes, and the scores there stay what they are.");
        }
        List<FairnessComparison.GroupChange> moved = change.groups().stream()
                .filter(group ->
                        group.changeCi90().low() > 0 || group.changeCi90().high() < 0)
                .toList();
        if (moved.isEmpty()) {
            page.item("For no single group is a change shown: every 90 % interval holds nought.");
        }
        for (FairnessComparison.GroupChange group : moved) {
            page.item("Group " + group.id() + ": " + Figures.signed(group.afterPins(), 1) + " pins a game in place of "
                    + Figures.signed(group.beforePins(), 1) + " (90 % interval of the change "
                    + Figures.signedInterval(group.changeCi90(), 1) + ").");
        }
    }

    private void remedies() {
        page.heading(RemedyTable.QUESTION + "? " + RemedyTable.CAPTION);
        page.table(RemedyTable.rows(answer.remedies(), scenario.policy().costs().currency()), 2);
        page.paragraph(RemedyTable.NOTE);
        RemedyTable.leastRegret(answer.remedies()).ifPresent(page::paragraph);
    }

    private void method() {
        page.heading("How it was found, and how sure it is");
        page.item("The event was played " + result.playings() + " times with seed " + scenario.seed() + ", in "
                + result.rounds()
                + " rounds. In a round all bowlers change seats and keep their luck, so that skill and"
                + " luck cancel and what the seats do remains. The rounds are independent; the intervals come from their"
                + " scatter (Student's t).");
        page.item(UnknownWords.intervals(result.sets(), scenario.event()));
        page.item(EffectWords.LEFT_OUT);
        page.item(
                "Fair means that the 90 % interval lies within the margin (two one-sided tests at 5 % each). Unfair means"
                        + " shown to lie beyond it at 5 %, corrected for all "
                        + result.effects().size()
                        + " advantages looked at (Holm): a fair event is called unfair in at most one study of twenty.");
        page.item("Margin: " + Figures.plain(result.plan().marginPins(), 2) + " pins a game, "
                + (ownMargin
                        ? "set by the director."
                        : "as nobody has set another: two pins move the chance of a median bowler to pass a cut by at most"
                                + " five in a hundred, where means spread by 16 pins."));
    }
}
