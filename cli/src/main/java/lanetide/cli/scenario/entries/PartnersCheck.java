package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;

/** Whether partners can bowl together: in one squad, on one pair. */
final class PartnersCheck {
    /** Most bowlers on a pair: two teams of five (common practice, no source). */
    private static final int MAX_ON_A_PAIR = 10;

    private final String name;
    private final Map<String, List<EntriesReader.Entry>> bySquad;

    private PartnersCheck(String name, Map<String, List<EntriesReader.Entry>> bySquad) {
        this.name = name;
        this.bySquad = bySquad;
    }

    /** Tells what is wrong or doubtful with partners in the entries of the squads. */
    static void check(Map<String, List<EntriesReader.Entry>> squads) {
        Map<String, Map<String, List<EntriesReader.Entry>>> teams = new LinkedHashMap<>();
        squads.forEach((squad, entries) -> entries.forEach(entry -> entry.bowler()
                .partners()
                .ifPresent(name -> teams.computeIfAbsent(name, key -> new LinkedHashMap<>())
                        .computeIfAbsent(squad, key -> new ArrayList<>())
                        .add(entry))));
        teams.forEach((name, bySquad) -> new PartnersCheck(name, bySquad).check());
        tellSizes(teams);
    }

    private void check() {
        Set<Set<String>> people = bySquad.values().stream()
                .map(PartnersCheck::people)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (people.size() > 1) {
            refuseSquads();
        }
        bySquad.forEach((squad, entries) -> {
            if (entries.size() > MAX_ON_A_PAIR) {
                last(entries)
                        .refuse(
                                BowlerKeys.PARTNERS,
                                NoticeCode.TOO_MANY_BOWLERS,
                                ", as " + entries.size() + " bowlers of squad " + squad
                                        + " have it; there must be at most " + MAX_ON_A_PAIR
                                        + ", who share a pair. Split them into several, or name a club under `team`.");
            }
            tellGroups(squad, entries);
        });
        if (people.size() == 1 && people.iterator().next().size() == 1) {
            tellAlone();
        }
    }

    private static Set<String> people(List<EntriesReader.Entry> entries) {
        return entries.stream()
                .map(EntriesReader.Entry::bowler)
                .map(bowler -> bowler.person().orElse(bowler.id()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Section last(List<EntriesReader.Entry> entries) {
        return entries.get(entries.size() - 1).section();
    }

    private void refuseSquads() {
        String where = bySquad.entrySet().stream()
                .map(squad -> String.join(" and ", quoted(people(squad.getValue()))) + " in squad " + squad.getKey())
                .collect(Collectors.joining(", "));
        last(bySquad.values().stream().reduce((first, second) -> second).orElseThrow())
                .refuse(
                        BowlerKeys.PARTNERS,
                        NoticeCode.PARTNERS_IN_SQUADS,
                        ", but has " + where
                                + "; partners must bowl in one squad, or all of them again in another. Correct the squad, or"
                                + " give other partners another name.");
    }

    private static List<String> quoted(Set<String> people) {
        return people.stream().map(Notices::quote).toList();
    }

    private void tellGroups(String squad, List<EntriesReader.Entry> entries) {
        Set<Integer> groups = entries.stream()
                .map(EntriesReader.Entry::group)
                .flatMap(Optional::stream)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (groups.size() > 1) {
            say(
                    entries,
                    NoticeCode.PARTNERS_APART,
                    Notices.quote(name) + " of squad " + squad + " is listed in groups "
                            + groups.stream().map(String::valueOf).collect(Collectors.joining(" and "))
                            + ", so that these partners do not share a pair. Give them one group, or leave groups out.");
        }
    }

    private void tellAlone() {
        say(
                bySquad.values().iterator().next(),
                NoticeCode.PARTNER_ALONE,
                "Nobody else has the partners `" + Notices.quote(name)
                        + "`; there should be two at least. Look at how the name is written, or leave it out.");
    }

    private void say(List<EntriesReader.Entry> entries, NoticeCode code, String message) {
        last(entries).value(BowlerKeys.PARTNERS).ifPresent(value -> value.say(code, name, message));
    }

    private static void tellSizes(Map<String, Map<String, List<EntriesReader.Entry>>> teams) {
        List<Integer> sizes = teams.values().stream()
                .flatMap(squads -> squads.values().stream().map(List::size))
                .sorted()
                .toList();
        if (!sizes.isEmpty() && sizes.get(0) < sizes.get(sizes.size() - 1)) {
            List<EntriesReader.Entry> any =
                    teams.values().iterator().next().values().iterator().next();
            last(any)
                    .value(BowlerKeys.PARTNERS)
                    .ifPresent(
                            value -> value.say(
                                    NoticeCode.TEAMS_UNEVEN,
                                    "",
                                    "Partners are " + sizes.get(0) + " to " + sizes.get(sizes.size() - 1)
                                            + " bowlers: totals of more bowlers are higher. Even them out if they shall compare."));
        }
    }
}
