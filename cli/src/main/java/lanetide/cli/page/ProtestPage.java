package lanetide.cli.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import lanetide.cli.fairness.BoundsWords;
import lanetide.cli.fairness.FairnessAnswer;
import lanetide.cli.report.Cautions;
import lanetide.cli.report.MadeFrom;
import lanetide.cli.report.ProgramFiles;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;

/**
 * What to hand out where somebody protests: the verdict, why, how sure it is, and which rule decides instead, since a
 * model is no ruling.
 */
public final class ProtestPage {
    /** Common practice, no source: rules differ, and the event's own come first. */
    private static final List<String> DECIDES = List.of(
            "This page decides nothing. It estimates what the plan of the event does, and did not see the lanes of the day.",
            "First the event's own published rules: what they say of oiling, squads, lane moves and re-entries, and how and"
                    + " until when a protest is made. A protest goes to whom they name.",
            "Where they are silent, the rules of the governing body that sanctions the event.",
            "What the lanes were like is for whoever may inspect them under these rules, by tape readings and the machine's"
                    + " record of that squad, not by a model.",
            "The ruling is made by the event's director, manager or committee as these rules say, and so is an appeal.");

    private ProtestPage() {}

    /**
     * Writes the page.
     *
     * @param reading the scenario as it was read, without errors
     * @param answer what was found
     * @return HTML
     */
    public static String write(Reading reading, FairnessAnswer answer) {
        Scenario scenario = reading.scenario().orElseThrow();
        PageModel.Fairness found = new FairnessSection(scenario, answer).section();
        List<String> sureness = new ArrayList<>(scenario.doubts());
        sureness.addAll(found.sureness());
        answer.bounds().ifPresent(bounds -> sureness.addAll(BoundsWords.sentences(answer.result(), bounds)));
        sureness.addAll(Cautions.ALL.subList(0, 2));
        StringOutput html = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render(
                        "protest.jte",
                        new ProtestModel(
                                scenario.event().name(),
                                found.verdict(),
                                found.unfair(),
                                found.reasons(),
                                sureness,
                                DECIDES,
                                MadeFrom.of(scenario, answer.result().playings()),
                                ProgramFiles.text("/lanetide/cli/page/page.css")
                                        + ProgramFiles.text("/lanetide/cli/page/protest.css")),
                        html);
        return html.toString();
    }
}
