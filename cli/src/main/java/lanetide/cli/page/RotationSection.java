package lanetide.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.words.DesignWords;
import lanetide.cli.words.FindingWords;
import lanetide.squads.rotation.RotationFinding;
import lanetide.squads.rotation.RotationReport;

/** Who bowls where, plan by plan. */
final class RotationSection {
    private static final int MAX_FINDINGS = 4;

    private RotationSection() {}

    static PageModel.Rotations of(Scenario scenario) {
        List<RotationPlan> plans = RotationPlan.of(scenario.event());
        List<PageModel.SquadRotation> squads = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            squads.add(plan(plans.get(i), "rotation-" + (i + 1)));
        }
        return new PageModel.Rotations(DesignWords.describe(scenario.designs(), scenario.event()), squads);
    }

    private static PageModel.SquadRotation plan(RotationPlan plan, String id) {
        List<Integer> games =
                IntStream.range(0, plan.rotation().games()).boxed().toList();
        List<List<String>> rows = Table.rows(
                Table.row("Group", games, game -> "Game " + (game + 1)),
                IntStream.range(0, plan.groups().size()).boxed().toList(),
                group -> Table.row(plan.groups().get(group), games, game -> plan.pairOf(game, group)));
        String caption = plan.heading() + ": pair of lanes of each group, game by game";
        return new PageModel.SquadRotation(plan.heading(), Table.of(id, caption, rows, 1), findings(plan));
    }

    private static List<String> findings(RotationPlan plan) {
        FindingWords words = new FindingWords(
                group -> "group " + plan.groups().get(group),
                pair -> "pair " + plan.pairs().get(pair));
        List<RotationFinding> all = RotationReport.of(plan.rotation()).findings();
        List<String> sentences = new ArrayList<>(
                all.stream().limit(MAX_FINDINGS).map(words::sentence).toList());
        if (all.size() > MAX_FINDINGS) {
            sentences.add("And " + (all.size() - MAX_FINDINGS) + " more of this kind.");
        }
        return sentences;
    }
}
