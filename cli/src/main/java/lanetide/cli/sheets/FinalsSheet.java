package lanetide.cli.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.words.CutWords;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Finals;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.qualifying.People;

/** Who goes on from qualifying, to fill in by hand, and who meets whom in the finals on which lanes. */
final class FinalsSheet {
    private static final String NAME = "finals";

    private FinalsSheet() {}

    /** The parts of an event that has a cut; none if it has none. */
    static List<SheetModel.Part> parts(Event event) {
        List<SheetModel.Part> parts = new ArrayList<>();
        event.cut().ifPresent(cut -> {
            parts.add(qualifying(event, cut));
            cut.finals().ifPresent(finals -> parts.add(matches(event, finals)));
        });
        return parts;
    }

    /**
     * The event with its finals as one more squad, if lanes are oiled before them: on the lanes of the last squad, as
     * they are played.
     */
    static Event withOiling(Event event) {
        Optional<Finals> oiled = event.cut()
                .flatMap(Cut::finals)
                .filter(finals -> finals.conditioning() != Conditioning.NONE)
                .filter(finals ->
                        event.squads().stream().noneMatch(squad -> squad.id().equals(NAME)));
        return oiled.map(finals -> with(event, finals)).orElse(event);
    }

    /** A squad as people call it, of an event as {@link #withOiling} gives it. */
    static String called(Squad squad) {
        return squad.id().equals(NAME) ? "the finals" : "squad " + squad.id();
    }

    private static Event with(Event event, Finals finals) {
        List<Squad> squads = new ArrayList<>(event.squads());
        squads.add(new Squad(
                NAME,
                finals.startMs(),
                finals.conditioning(),
                finals.practiceMs(),
                last(event.squads()).groups(),
                Arrangements.NONE));
        List<SquadPlan> plans = new ArrayList<>(event.plans());
        plans.add(last(event.plans()));
        return event.withSquads(squads, plans);
    }

    private static <T> T last(List<T> all) {
        return all.get(all.size() - 1);
    }

    private static SheetModel.Part qualifying(Event event, Cut cut) {
        int places = cut.places(new People(event).count());
        List<List<String>> rows = Table.rows(
                List.of("Place", "Name", "Squad", "Total"),
                IntStream.rangeClosed(1, places).boxed().toList(),
                place -> List.of(String.valueOf(place), "", "", ""));
        return new SheetModel.Part(
                "Qualifying: who goes on",
                List.of(CutWords.rule(cut, event) + "."),
                List.of(Table.of("qualifying", "To fill in when all squads are done", rows, 3)));
    }

    private static SheetModel.Part matches(Event event, Finals finals) {
        List<LanePair> pairs =
                finals.pairs(event.centre().keeping(last(event.plans()).own()));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Round", "Match", "Lanes", "First", "Pins", "Second", "Pins"));
        int number = 0;
        for (int round = 0; round < finals.rounds().size(); round++) {
            List<Finals.Match> matches = finals.rounds().get(round);
            for (int at = 0; at < matches.size(); at++) {
                number++;
                rows.add(List.of(
                        String.valueOf(round + 1),
                        String.valueOf(number),
                        pairs.get(at).id(),
                        side(matches.get(at).first()),
                        "",
                        side(matches.get(at).second()),
                        ""));
            }
        }
        return new SheetModel.Part(
                "Finals",
                List.of(
                        CutWords.finals(finals) + ".",
                        "Practice from " + TimeOfDay.write(finals.startMs())
                                + " on the pair of the first match. A seed is the place in qualifying."),
                List.of(Table.of("matches", "Who meets whom, round by round", rows, 7)));
    }

    private static String side(Finals.Side side) {
        return switch (side.from()) {
            case SEED -> "seed " + side.number();
            case WINNER -> "winner of match " + side.number();
            case LOSER -> "loser of match " + side.number();
        };
    }
}
