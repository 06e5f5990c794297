package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Break;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LineUpChange;

/** Reads what is arranged for a squad beside its games. */
final class ArrangementsReader {
    private static final Range LENGTH = Range.above(0, 12 * 3_600_000.0);

    private final Notices notices;
    private final Optional<Centre> centre;

    ArrangementsReader(Notices notices, Optional<Centre> centre) {
        this.notices = notices;
        this.centre = centre;
    }

    Optional<Arrangements> read(SquadDraft squad, List<LineUpChange> changes) {
        int before = notices.errors();
        Section section = squad.section();
        List<Break> breaks = new ArrayList<>();
        section.get("breaks")
                .flatMap(Value::list)
                .ifPresent(list -> list.forEach(item -> item.section(Block.BREAK)
                        .flatMap(block -> pause(block, squad))
                        .ifPresent(breaks::add)));
        OptionalInt machines = machines(section);
        return section.build(before, () -> new Arrangements(breaks, changes, machines));
    }

    private OptionalInt machines(Section section) {
        Optional<Value> value = section.get("machines");
        OptionalInt machines = value.map(written -> written.whole(1, MachinesReader.MOST_MACHINES))
                .orElse(OptionalInt.empty());
        int there = centre.map(known -> known.machines().most()).orElse(Integer.MAX_VALUE);
        if (machines.orElse(0) > there) {
            value.ifPresent(written -> written.refuse(
                    NoticeCode.TOO_FEW_MACHINES,
                    ", so that " + machines.getAsInt() + " lanes would be worked on at once, but the centre has "
                            + there + (there == 1 ? " machine" : " machines")
                            + "; a machine works on one lane at a time. Write at most " + there
                            + ", or more `machines` under `centre`."));
        }
        return machines;
    }

    private Optional<Break> pause(Section section, SquadDraft squad) {
        int before = notices.errors();
        double lengthMs = section.quantity("length", Measure.TIME, LENGTH);
        if (section.has("after") && section.has("at")) {
            section.get("at")
                    .ifPresent(value -> value.refuse(
                            NoticeCode.CONFLICTING_KEYS,
                            ", but `after` is given too; a break must come either after a game or at a time. Remove one of"
                                    + " the two."));
        } else if (!section.has("at") && !section.has("after")) {
            section.missing("after");
        }
        OptionalLong atMs = section.get("at").map(Value::timeOfDay).orElse(OptionalLong.empty());
        int after = section.get("after").map(value -> afterGame(value, squad)).orElse(1);
        atMs.ifPresent(timeMs -> checkTime(section, timeMs, squad));
        return section.build(before, () -> new Break(after, atMs.orElse(0), Math.round(lengthMs)));
    }

    /** After its last game a squad has no use for a break. */
    private static int afterGame(Value value, SquadDraft squad) {
        int game = value.whole(1, SquadsReader.MOST_GAMES).orElse(0);
        if (squad.games() > 0 && game >= squad.games()) {
            value.refuse(
                    NoticeCode.OUT_OF_RANGE,
                    ", but squad " + squad.id() + " plays " + squad.games()
                            + (squad.games() == 1 ? " game" : " games")
                            + "; a break must come before the last of them. Choose an earlier game, or leave the break out.");
        }
        return game;
    }

    private static void checkTime(Section section, long atMs, SquadDraft squad) {
        squad.startMs()
                .filter(startMs -> atMs < startMs)
                .ifPresent(startMs -> section.get("at")
                        .ifPresent(value -> value.refuse(
                                NoticeCode.OUT_OF_RANGE,
                                ", but squad " + squad.id() + " starts at " + TimeOfDay.write(startMs)
                                        + "; a break must come after that. Correct the time.")));
    }
}
