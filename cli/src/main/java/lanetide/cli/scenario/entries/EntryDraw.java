package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import lanetide.cli.scenario.key.DrawKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.words.English;
import lanetide.des.random.RandomStreams;
import lanetide.squads.draw.GroupDraw;
import lanetide.squads.draw.GroupDraw.Entry;
import lanetide.squads.draw.Rule;
import lanetide.squads.draw.Traits;
import lanetide.squads.model.Group;

/**
 * Draws listed bowlers into the groups of their squads, and says how even it came out.
 *
 * @param section the block that asks for it
 * @param rules what is spread evenly
 * @param streams family to draw from
 */
record EntryDraw(Section section, Set<Rule> rules, RandomStreams streams) {
    /** The draw of a scenario; empty if it has none or, with notices, a wrong one. */
    static Optional<EntryDraw> read(Section scenario, RandomStreams streams) {
        if (scenario.has(EventKeys.DRAW) && !scenario.has(EventKeys.ENTRIES)) {
            scenario.refuse(
                    EventKeys.DRAW,
                    NoticeCode.CONFLICTING_KEYS,
                    ", but no `entries` are listed; a field by shares is drawn as it is. Remove `draw`.");
        }
        return scenario.block(EventKeys.DRAW)
                .flatMap(section -> section.build(() -> new EntryDraw(
                        section,
                        rules(section),
                        section.find(DrawKeys.SEED).map(RandomStreams::new).orElse(streams))));
    }

    private static Set<Rule> rules(Section section) {
        Set<Rule> rules = EnumSet.noneOf(Rule.class);
        if (section.get(DrawKeys.HANDS)) {
            rules.add(Rule.HANDS);
        }
        if (section.get(DrawKeys.STYLES)) {
            rules.add(Rule.STYLES);
        }
        if (section.get(DrawKeys.AVERAGES)) {
            rules.add(Rule.AVERAGES);
        }
        return rules;
    }

    /** The groups of a squad, with a remark on how even they are. */
    List<Group> groups(String squad, List<Entry> entries, int groups) {
        List<List<Entry>> drawn = GroupDraw.draw(entries, groups, rules, streams.stream("draw/squad/" + squad));
        List<List<Entry>> byLot =
                GroupDraw.draw(entries, groups, EnumSet.noneOf(Rule.class), streams.stream("draw/squad/" + squad));
        section.notices()
                .add(
                        NoticeCode.DRAWN_BY_LOT,
                        section.place(),
                        section.path(),
                        "",
                        "Squad " + squad + " is drawn by lot with " + seed() + ". A group has " + told(traits(drawn))
                                + ". Without rules the same lot would have given it " + told(traits(byLot)) + ".");
        return GroupDraw.groups(drawn);
    }

    private static List<List<Traits>> traits(List<List<Entry>> groups) {
        return groups.stream()
                .map(group -> group.stream().map(Entry::traits).toList())
                .toList();
    }

    /** The seed of the lot in words. */
    String seed() {
        return section.find(DrawKeys.SEED).map(seed -> "seed " + seed).orElse("the event's seed");
    }

    /** How much of what some groups have, from the least to the most. */
    static String told(List<List<Traits>> groups) {
        List<String> parts = new ArrayList<>();
        parts.add(range(groups, Traits::left) + " left-handers");
        groups.stream()
                .flatMap(List::stream)
                .flatMap(entry -> entry.style().stream())
                .distinct()
                .sorted()
                .forEach(style -> parts.add(range(groups, group -> Traits.ofStyle(group, style)) + " " + style));
        if (groups.stream()
                .flatMap(List::stream)
                .anyMatch(entry -> entry.averagePins().isPresent())) {
            double mean = Traits.mean(groups.stream().flatMap(List::stream).toList(), 0);
            parts.add("a mean average of " + range(groups, group -> Math.rint(Traits.mean(group, mean))) + " pins");
        }
        return English.joined(parts);
    }

    private static String range(List<List<Traits>> groups, ToDoubleFunction<List<Traits>> of) {
        double low = groups.stream().mapToDouble(of).min().orElseThrow();
        double high = groups.stream().mapToDouble(of).max().orElseThrow();
        return low == high ? Range.round(low) : Range.round(low) + " to " + Range.round(high);
    }
}
