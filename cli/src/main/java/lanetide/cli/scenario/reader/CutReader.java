package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.CutKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Squad;

/** Reads who goes on from qualifying. */
final class CutReader {
    private CutReader() {}

    /** The cut; empty if there is none or, with notices, a wrong one. */
    static Optional<Cut> read(Section scenario, List<SquadDraft> drafts, List<Squad> squads, Lanes lanes) {
        return scenario.block(EventKeys.CUT)
                .flatMap(section -> cut(section, drafts, squads)
                        .map(cut -> cut.with(new FinalsReader(squads, squads.isEmpty() ? 0 : people(squads), lanes)
                                .read(section, cut))));
    }

    private static Optional<Cut> cut(Section section, List<SquadDraft> drafts, List<Squad> squads) {
        if (section.has(CutKeys.PLACES) && section.has(CutKeys.SHARE)) {
            section.refuse(
                    CutKeys.SHARE,
                    NoticeCode.CONFLICTING_KEYS,
                    ", but `places` is given too; a cut must have either a number or a share. Remove one of the two.");
        } else if (!section.has(CutKeys.PLACES) && !section.has(CutKeys.SHARE)) {
            section.missing(CutKeys.PLACES);
        }
        Optional<Cut> cut = section.build(() -> new Cut(
                section.find(CutKeys.PLACES).map(OptionalInt::of).orElse(OptionalInt.empty()),
                section.find(CutKeys.SHARE).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                section.get(CutKeys.TIES),
                section.get(CutKeys.HANDICAP),
                section.get(CutKeys.COUNTS)));
        cut.ifPresent(known -> {
            if (!squads.isEmpty()) {
                checkPlaces(section, known, people(squads));
            }
            remarkGames(section, drafts);
        });
        return cut;
    }

    /** Whoever is entered in several squads is one person. */
    private static int people(List<Squad> squads) {
        List<Bowler> entries = squads.stream()
                .flatMap(squad -> squad.groups().stream())
                .flatMap(group -> group.bowlers().stream())
                .toList();
        Stream<Bowler> once = entries.stream().filter(bowler -> bowler.person().isEmpty());
        long again = entries.stream()
                .flatMap(bowler -> bowler.person().stream())
                .distinct()
                .count();
        return (int) (once.count() + again);
    }

    private static void checkPlaces(Section section, Cut cut, int people) {
        if (cut.places(people) >= people) {
            section.refuse(
                    section.has(CutKeys.PLACES) ? CutKeys.PLACES : CutKeys.SHARE,
                    NoticeCode.OUT_OF_RANGE,
                    ", so that " + cut.places(people) + " would go on, but only " + people
                            + (people == 1 ? " is" : " are")
                            + " entered; a cut must leave somebody out. Let fewer go on, or leave `cut` out.");
        }
    }

    private static void remarkGames(Section section, List<SquadDraft> drafts) {
        List<String> games = drafts.stream()
                .flatMap(draft -> draft.games().stream())
                .distinct()
                .map(String::valueOf)
                .toList();
        if (games.size() > 1) {
            section.notices()
                    .add(
                            NoticeCode.CUT_GAMES_DIFFER,
                            section.place(),
                            section.path(),
                            "",
                            "The cut goes by totals, but squads play different numbers of games: "
                                    + games.stream().collect(Collectors.joining(" and "))
                                    + ". Whoever bowls more games has more pins. Give all squads the same `games`.");
        }
    }
}
