package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Break;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.OilTime;

/** Reads what is arranged for a squad beside its games. */
record ArrangementsReader(Optional<Centre> centre) {
    Optional<Arrangements> read(SquadDraft squad, List<LineUpChange> changes) {
        Section section = squad.section();
        List<Break> breaks = section.blocks(EventKeys.BREAKS).stream()
                .flatMap(block -> pause(block, squad).stream())
                .toList();
        OptionalInt machines = machines(section);
        return section.build(() -> new Arrangements(
                breaks,
                changes,
                machines,
                new OilTime(
                        section.find(EventKeys.OIL_AT).map(OptionalLong::of).orElse(OptionalLong.empty()),
                        section.get(EventKeys.OIL_REST))));
    }

    private OptionalInt machines(Section section) {
        Optional<Integer> machines = section.find(EventKeys.SQUAD_MACHINES);
        int there = centre.map(known -> known.machines().most()).orElse(Integer.MAX_VALUE);
        machines.filter(wanted -> wanted > there)
                .flatMap(wanted -> section.value(EventKeys.SQUAD_MACHINES))
                .ifPresent(written -> written.refuse(
                        NoticeCode.TOO_FEW_MACHINES,
                        ", so that " + written.plain() + " lanes would be worked on at once, but the centre has "
                                + there
                                + (there == 1 ? " machine" : " machines")
                                + "; a machine works on one lane at a time. Write at most " + there
                                + ", or more `machines` under `centre`."));
        return machines.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private static Optional<Break> pause(Section section, SquadDraft squad) {
        if (section.has(EventKeys.AFTER) && section.has(EventKeys.AT)) {
            section.refuse(
                    EventKeys.AT,
                    NoticeCode.CONFLICTING_KEYS,
                    ", but `after` is given too; a break must come either after a game or at a time. Remove one of"
                            + " the two.");
        } else if (!section.has(EventKeys.AT) && !section.has(EventKeys.AFTER)) {
            section.missing(EventKeys.AFTER);
        }
        Optional<Long> atMs = section.find(EventKeys.AT);
        Optional<Integer> after = section.find(EventKeys.AFTER);
        after.ifPresent(game -> checkGame(section, game, squad));
        atMs.ifPresent(timeMs -> checkTime(section, timeMs, squad));
        return section.build(() -> new Break(after.orElse(1), atMs.orElse(0L), section.get(EventKeys.LENGTH)));
    }

    /** After its last game a squad has no use for a break. */
    private static void checkGame(Section section, int game, SquadDraft squad) {
        squad.games()
                .filter(games -> game >= games)
                .ifPresent(games -> section.refuse(
                        EventKeys.AFTER,
                        NoticeCode.OUT_OF_RANGE,
                        ", but squad " + squad.called() + " plays " + games + (games == 1 ? " game" : " games")
                                + "; a break must come before the last of them. Choose an earlier game, or leave"
                                + " the break out."));
    }

    private static void checkTime(Section section, long atMs, SquadDraft squad) {
        squad.startMs()
                .filter(startMs -> atMs < startMs)
                .ifPresent(startMs -> section.refuse(
                        EventKeys.AT,
                        NoticeCode.OUT_OF_RANGE,
                        ", but squad " + squad.called() + " starts at " + TimeOfDay.write(startMs)
                                + "; a break must come after that. Correct the time."));
    }
}
