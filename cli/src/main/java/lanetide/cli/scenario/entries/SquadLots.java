package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.DrawKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.draw.Rule;
import lanetide.squads.draw.SquadDraw;
import lanetide.squads.draw.Traits;

/**
 * Draws entries that name no squad into squads, by what the list says of them, and says how even it came out. What the
 * list does not say of a bowler is drawn after that, and cannot be spread.
 *
 * @param draw the draw that asks for it
 * @param squads squads in order
 * @param places how many bowlers each takes
 */
record SquadLots(EntryDraw draw, List<String> squads, List<Integer> places) {
    /** The lots of a scenario; empty if its entries name their squads themselves, or there is but one. */
    static Optional<SquadLots> of(Optional<EntryDraw> draw, List<EntriesReader.Room> rooms) {
        return draw.filter(asked -> asked.section().get(DrawKeys.SQUADS))
                .filter(asked -> rooms.size() > 1)
                .map(asked -> new SquadLots(
                        asked,
                        rooms.stream().map(EntriesReader.Room::squad).toList(),
                        rooms.stream().map(EntriesReader.Room::places).toList()));
    }

    /** The squad of each entry of the list, those it names too; none of them, with a notice, if one finds no room. */
    List<Optional<String>> drawn(List<Section> sections) {
        List<SquadDraw.Entry> entries = sections.stream().map(this::entry).toList();
        List<OptionalInt> squadOf = lots(entries, draw.rules());
        int without = squadOf.indexOf(OptionalInt.empty());
        if (without >= 0) {
            refuse(sections.get(without), entries.size());
            return squadOf.stream().map(squad -> Optional.<String>empty()).toList();
        }
        if (!entries.isEmpty()) {
            tell(entries, squadOf);
        }
        return squadOf.stream()
                .map(squad -> Optional.of(squads.get(squad.getAsInt())))
                .toList();
    }

    private List<OptionalInt> lots(List<SquadDraw.Entry> entries, Set<Rule> rules) {
        return SquadDraw.draw(entries, places, rules, draw.streams().stream("draw/squads"));
    }

    private SquadDraw.Entry entry(Section section) {
        int named = section.value(BowlerKeys.SQUAD)
                .map(Value::plain)
                .map(squads::indexOf)
                .orElse(-1);
        Optional<Integer> average = section.find(BowlerKeys.AVERAGE);
        return new SquadDraw.Entry(
                section.find(BowlerKeys.ID).orElse(""),
                section.find(BowlerKeys.PARTNERS),
                named < 0 ? OptionalInt.empty() : OptionalInt.of(named),
                new Traits(
                        section.find(BowlerKeys.HAND),
                        section.value(BowlerKeys.STYLE).map(Value::plain),
                        average.map(OptionalInt::of).orElse(OptionalInt.empty())));
    }

    private void refuse(Section section, int entries) {
        int all = places.stream().mapToInt(Integer::intValue).sum();
        section.notices()
                .add(
                        NoticeCode.NO_SQUAD_LEFT,
                        section.place(),
                        section.pathOf(BowlerKeys.SQUAD),
                        "",
                        "The draw finds no squad for " + section.path() + ": there are " + all + " places for "
                                + entries
                                + " entries; partners must go together, and nobody may bowl twice in one squad."
                                + " Give squads more `places`, or use more lanes or squads.");
    }

    private void tell(List<SquadDraw.Entry> entries, List<OptionalInt> squadOf) {
        List<List<Traits>> drawn = bySquad(entries, squadOf);
        List<List<Traits>> byLot = bySquad(entries, lots(entries, EnumSet.noneOf(Rule.class)));
        long named = entries.stream().filter(entry -> entry.squad().isPresent()).count();
        List<String> sizes = IntStream.range(0, squads.size())
                .mapToObj(squad -> drawn.get(squad).size() + " in " + squads.get(squad))
                .toList();
        List<String> words = new ArrayList<>();
        words.add((entries.size() - named) + " entries are drawn into squads by lot with " + draw.seed()
                + ", so that there are " + String.join(", ", sizes) + ".");
        words.add("A squad has " + EntryDraw.told(drawn) + ".");
        words.add("Without rules the same lot would have given it " + EntryDraw.told(byLot) + ".");
        words.addAll(reasons(entries, named, drawn));
        draw.section()
                .notices()
                .add(
                        NoticeCode.DRAWN_BY_LOT,
                        draw.section().place(),
                        draw.section().path(),
                        "",
                        String.join(" ", words));
    }

    /** What stood in the way of more. */
    private List<String> reasons(List<SquadDraw.Entry> entries, long named, List<List<Traits>> drawn) {
        List<String> reasons = new ArrayList<>();
        if (named > 0) {
            reasons.add(
                    named + (named == 1 ? " entry names its squad and stays" : " entries name their squads and stay")
                            + " there.");
        }
        if (entries.stream().anyMatch(entry -> entry.partners().isPresent())) {
            reasons.add("Partners go together.");
        }
        int largest = drawn.stream().mapToInt(List::size).max().orElse(0);
        int smallest = drawn.stream().mapToInt(List::size).min().orElse(0);
        if (largest > smallest + 1) {
            reasons.add("Places, partners and squads that are named leave squads no more alike in size.");
        }
        long blank = entries.stream()
                .filter(entry -> entry.traits().hand().isEmpty()
                        || entry.traits().style().isEmpty())
                .count();
        if (blank > 0) {
            reasons.add("Of " + blank + " the list does not say hand or style, so that these could not be spread.");
        }
        return reasons;
    }

    private List<List<Traits>> bySquad(List<SquadDraw.Entry> entries, List<OptionalInt> squadOf) {
        return IntStream.range(0, squads.size())
                .mapToObj(squad -> IntStream.range(0, entries.size())
                        .filter(i -> squadOf.get(i).equals(OptionalInt.of(squad)))
                        .mapToObj(i -> entries.get(i).traits())
                        .toList())
                .toList();
    }
}
