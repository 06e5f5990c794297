package lanetide.cli.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import lanetide.cli.report.PatternWords;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.words.LaidWords;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.OilTime;
import lanetide.squads.model.Squad;

/** What the lane technician does when, lane by lane. */
record OilingPlan(Event event) {
    /** Usual cautions for work with lane machines. */
    static final List<String> CAUTIONS = List.of(
            "Trained staff only. The machine's manual and the centre's procedures come first.",
            "Stop the machine and cut its power before you reach into it or clear a jam.",
            "Keep everybody off lanes and approaches until they are done; oil and cleaner make them slippery.",
            "Wear what the safety data sheets of oil and cleaner ask for, and keep both away from drains and flames.");

    /** One oiling: what, for which squad, and when it must begin and be done. */
    record Oiling(Squad squad, long beginMs, long doneMs) {
        /** The squad's place in an event. */
        int place(Event event) {
            return event.squad(squad.id());
        }
    }

    /** The oilings of an event, at the times that are stated, else as late as they may begin. */
    static List<Oiling> oilings(Event event) {
        return event.squads().stream()
                .filter(squad -> squad.conditioning() != Conditioning.NONE)
                .map(squad -> oiling(event, squad))
                .toList();
    }

    private static Oiling oiling(Event event, Squad squad) {
        long workMs = MachinePlan.of(event, event.squad(squad.id())).durationMs();
        long beginMs = squad.arrangements().oiling().beginMs(squad.startMs(), workMs);
        return new Oiling(squad, beginMs, beginMs + workMs);
    }

    List<SheetModel.Part> parts() {
        List<SheetModel.Part> parts = new ArrayList<>();
        parts.add(overview());
        List<Oiling> oilings = oilings(event);
        for (int i = 0; i < oilings.size(); i++) {
            parts.add(part(oilings.get(i), i + 1));
        }
        return parts;
    }

    private SheetModel.Part overview() {
        List<List<String>> rows = Table.rows(
                List.of("Squad", "Lanes are", "Begin by", "Done by", "Squad starts"), event.squads(), squad -> {
                    boolean oiled = squad.conditioning() != Conditioning.NONE;
                    Oiling oiling = oiling(event, squad);
                    return List.of(
                            squad.id(),
                            PatternWords.conditioning(squad.conditioning()),
                            oiled ? seconds(oiling.beginMs()) : "",
                            oiled ? time(oiling.doneMs()) : "",
                            time(squad.startMs()));
                });
        List<String> notes = new ArrayList<>(event.patterns().stream()
                .map(pattern -> PatternWords.named(pattern, false))
                .toList());
        notes.addAll(LaidWords.laid(event));
        notes.addAll(CAUTIONS);
        return new SheetModel.Part(
                "What is done before each squad", notes, List.of(Table.of("oilings", "All squads", rows, 2)));
    }

    private SheetModel.Part part(Oiling oiling, int number) {
        List<MachinePlan.LaneTimes> lanes =
                MachinePlan.of(event, oiling.place(event)).lanes();
        boolean named = event.patterns().size() > 1;
        List<List<String>> rows = Table.rows(
                Stream.of("Lane", named ? "Pattern" : "", "Machine", "From", "To", "Done by (initials)")
                        .filter(head -> !head.isEmpty())
                        .toList(),
                lanes,
                lane -> {
                    List<String> row = new ArrayList<>(List.of(
                            String.valueOf(lane.lane()),
                            String.valueOf(lane.machine()),
                            seconds(oiling.beginMs() + lane.beganMs()),
                            seconds(oiling.beginMs() + lane.oiledMs()),
                            ""));
                    if (named) {
                        row.add(
                                1,
                                event.pattern(oiling.place(event), lane.lane()).id());
                    }
                    return row;
                });
        long laneMs = lanes.get(0).oiledMs() - lanes.get(0).beganMs();
        return new SheetModel.Part(
                "Before " + FinalsSheet.called(oiling.squad()),
                List.of("The lanes are "
                        + PatternWords.conditioning(oiling.squad().conditioning()) + ", " + laneMs / 1000
                        + " s a lane, " + when(oiling.squad().arrangements().oiling())),
                List.of(Table.of("plan-" + number, "Lane by lane", rows, 5)));
    }

    private static String when(OilTime oiling) {
        String rest = oiling.restMs() == 0
                ? ""
                : "; the oil then lies " + oiling.restMs() / 60_000 + " min at least before practice";
        return (oiling.fromMs().isPresent() ? "at the time that is planned" : "as late as they may begin") + rest + ".";
    }

    private static String time(long timeMs) {
        return timeMs < 0 ? "the evening before" : TimeOfDay.write(timeMs);
    }

    private static String seconds(long timeMs) {
        return timeMs < 0
                ? "the evening before"
                : TimeOfDay.write(timeMs / 60_000 * 60_000) + String.format(Locale.ROOT, ":%02d", timeMs / 1000 % 60);
    }
}
