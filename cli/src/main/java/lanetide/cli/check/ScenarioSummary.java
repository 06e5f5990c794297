package lanetide.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.report.PatternWords;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.words.DesignWords;
import lanetide.cli.words.English;
import lanetide.cli.words.LaidWords;
import lanetide.cli.words.WaitingWords;
import lanetide.squads.measured.Measurements;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.Squad;
import lanetide.squads.model.Stops;
import lanetide.squads.score.TenpinScore;
import lanetide.squads.study.DayClock;

/** A scenario in words, so that its author sees what was understood. */
public final class ScenarioSummary {
    private ScenarioSummary() {}

    public static void add(Page page, Scenario scenario, boolean metric) {
        Event event = scenario.event();
        page.heading("What the scenario says");
        page.item(event.name() + ", seed " + scenario.seed() + ".");
        scenario.changes().forEach(page::item);
        page.item(centre(event.centre()));
        event.patterns().forEach(pattern -> page.item(PatternWords.named(pattern, metric)));
        LaidWords.laid(event).forEach(page::item);
        LaidWords.lanes(event).forEach(page::item);
        LaidWords.oiling(event, TimeOfDay::write).forEach(page::item);
        page.item("Rotation: " + DesignWords.describe(scenario.designs(), event));
        BowlingWords.listed(scenario.drawn()).ifPresent(page::item);
        BowlingWords.bowlers(event.bowling()).ifPresent(page::item);
        BowlingWords.scoring(event).ifPresent(page::item);
        BowlingWords.teams(event).ifPresent(page::item);
        BowlingWords.cut(event).ifPresent(page::item);
        BowlingWords.finals(scenario.policy()).ifPresent(page::item);
        changes(event).ifPresent(page::item);
        WaitingWords.of(scenario.waiting()).forEach(page::item);
        incidents(event.incidents()).ifPresent(page::item);
        measured(scenario.measurements()).ifPresent(page::item);
        page.heading("Squads (ends are means over playings without oil)");
        page.table(squads(event, scenario.clock()), 3);
        Ending.assumptions(page, scenario.assumptions());
    }

    private static String centre(Centre centre) {
        int pairs = centre.pairs().size();
        return "Lanes " + centre.pairs().get(0).left() + " to "
                + centre.pairs().get(pairs - 1).right() + ": " + pairs + (pairs == 1 ? " pair, " : " pairs, ")
                + centre.surface().id() + ", " + machines(centre.machines()) + ".";
    }

    private static Optional<String> changes(Event event) {
        String words = event.squads().stream()
                .flatMap(squad -> squad.arrangements().changes().stream())
                .map(ScenarioSummary::change)
                .collect(Collectors.joining("; "));
        return words.isEmpty() ? Optional.empty() : Optional.of("Line-up: " + words + ".");
    }

    private static String change(LineUpChange change) {
        if (change instanceof LineUpChange.LateArrival late) {
            return late.bowler() + " comes at " + TimeOfDay.write(late.arrivesMs());
        }
        if (change instanceof LineUpChange.Substitution substitution) {
            return substitution.substitute().id() + " for " + substitution.bowler() + " from game "
                    + substitution.fromGame();
        }
        LineUpChange.Absence absence = (LineUpChange.Absence) change;
        return absence.bowler()
                + (absence.fromGame() == 1 ? " is absent" : " leaves before game " + absence.fromGame());
    }

    private static Optional<String> incidents(Incidents incidents) {
        List<String> parts = new ArrayList<>();
        stops(parts, "jams", incidents.jams());
        stops(parts, "faults", incidents.faults());
        incidents
                .planned()
                .forEach(fault -> parts.add("lane " + fault.lane() + " fails at " + TimeOfDay.write(fault.atMs())));
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        String remedy = switch (incidents.remedy()) {
            case WAIT -> "groups wait";
            case SPARE -> "groups move to a spare pair";
            case SPLIT -> "groups are split over others";
        };
        return Optional.of("Incidents: " + String.join(", ", parts) + "; for long work " + remedy + ".");
    }

    private static Optional<String> measured(Measurements known) {
        List<String> parts = Stream.of(
                        English.count(known.tapes().size(), "tape reading"),
                        English.count(known.balls().size(), "ball"),
                        English.count(known.scores().size(), "score"),
                        English.count(known.ends().size(), "game's end"))
                .filter(part -> !part.startsWith("0 "))
                .toList();
        return parts.isEmpty() ? Optional.empty() : Optional.of("Measured: " + String.join(", ", parts) + ".");
    }

    private static void stops(List<String> parts, String what, Stops stops) {
        if (!Double.isInfinite(stops.everyFrames())) {
            parts.add(
                    what + " every " + Figures.plain(stops.everyFrames() / TenpinScore.FRAMES, 1) + " games on a lane");
        }
    }

    private static String machines(LaneMachines machines) {
        return machines.combined() > 0
                ? English.count(machines.combined(), "lane machine")
                : English.count(machines.cleaners(), "cleaner") + " and " + English.count(machines.oilers(), "oiler");
    }

    private static List<List<String>> squads(Event event, DayClock clock) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Squad", "Start", "Lanes before", "Bowlers", "Groups", "Games", "Ends about"));
        for (int i = 0; i < event.squads().size(); i++) {
            Squad squad = event.squads().get(i);
            int games = event.rotations().get(i).games();
            int bowlers =
                    squad.groups().stream().mapToInt(group -> group.size()).sum();
            rows.add(List.of(
                    squad.id(),
                    TimeOfDay.write(squad.startMs()),
                    PatternWords.conditioning(squad.conditioning()),
                    String.valueOf(bowlers),
                    String.valueOf(squad.groups().size()),
                    String.valueOf(games),
                    TimeOfDay.write(clock.squads().get(i).end().meanMs())));
        }
        return rows;
    }
}
