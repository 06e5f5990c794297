package lanetide.cli.report;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.scenario.Assumption;
import lanetide.cli.scenario.PlayEstimate;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.TimeOfDay;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;

/** A scenario in words, so that its author sees what was understood. */
public final class ScenarioSummary {
    private ScenarioSummary() {}

    static void add(Page page, Scenario scenario, boolean metric) {
        Event event = scenario.event();
        page.heading("What the scenario says");
        page.item(event.name() + ", seed " + scenario.seed() + ".");
        page.item(centre(event.centre()));
        page.item(PatternWords.named(event.pattern(), metric));
        page.item("Rotation: " + scenario.design().describe());
        page.heading("Squads (ends are estimates from the pace of play)");
        page.table(squads(event), 3);
        assumptions(page, scenario.assumptions());
    }

    static void assumptions(Page page, List<Assumption> assumptions) {
        if (!assumptions.isEmpty()) {
            page.heading("What the answer rests on, and where it comes from");
            assumptions.forEach(taken -> page.item(taken.name() + ": " + taken.value() + " (" + taken.source() + ")."));
        }
    }

    /** What is done to the lanes, in words. */
    public static String oil(Conditioning conditioning) {
        return switch (conditioning) {
            case STRIP_AND_OIL -> "cleaned and oiled";
            case OIL_OVER -> "oiled over";
            case NONE -> "left as they are";
        };
    }

    private static String centre(Centre centre) {
        int pairs = centre.pairs().size();
        String machines = centre.machines().count() == 1
                ? "1 lane machine"
                : centre.machines().count() + " lane machines";
        return "Lanes " + centre.pairs().get(0).left() + " to "
                + centre.pairs().get(pairs - 1).right() + ": " + pairs + (pairs == 1 ? " pair, " : " pairs, ")
                + centre.surface().id() + ", " + machines + ".";
    }

    private static List<List<String>> squads(Event event) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Squad", "Start", "Lanes before", "Bowlers", "Groups", "Games", "Ends about"));
        for (int i = 0; i < event.squads().size(); i++) {
            Squad squad = event.squads().get(i);
            int games = event.rotations().get(i).games();
            int bowlers = squad.groups().stream()
                    .mapToInt(group -> group.bowlers().size())
                    .sum();
            long endMs = squad.startMs() + new PlayEstimate(event.pace()).usualMs(squad, games);
            rows.add(List.of(
                    squad.id(),
                    TimeOfDay.write(squad.startMs()),
                    oil(squad.conditioning()),
                    String.valueOf(bowlers),
                    String.valueOf(squad.groups().size()),
                    String.valueOf(games),
                    TimeOfDay.write(endMs)));
        }
        return rows;
    }
}
