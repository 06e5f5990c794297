package lanetide.cli.scenario.measured;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.CsvTable;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.measured.When;

/**
 * The rows of a table, with what all kinds of measurements have in common. Each part is empty, with a notice, where it
 * is wrong, so that all faults of a row are told.
 *
 * @param table the table
 * @param names the lanes, squads and bowlers there are
 */
record Rows(MeasuredTable table, EventNames names) {
    private static final Form.Quantity<Integer> GAMES = Form.whole(0, EventKeys.MAX_GAMES);

    /** How people write that nobody had bowled yet. */
    private static final Set<String> AS_FOUND = Set.of("", "fresh", "before", "start", "new");

    /** How people write that a squad was done. */
    private static final Set<String> AT_THE_END = Set.of("all", "end", "last", "done");

    /** The lane, which may be called so or be a number alone. */
    Optional<Integer> lane(CsvTable.Row row) {
        return names.lane(bare(row, Column.LANE, "(lane)? ?(no\\.?|number|#)? ?"));
    }

    /** The place of the squad among the event's; where none is named the only one, or by a time of day. */
    Optional<Integer> squad(CsvTable.Row row) {
        if (table.says(row, Column.SQUAD) || !(names.hasOneSquad() || table.says(row, Column.TIME))) {
            return names.squad(table.value(row, Column.SQUAD));
        }
        return names.hasOneSquad() ? Optional.of(0) : time(row).map(names::squadAt);
    }

    private Optional<Long> time(CsvTable.Row row) {
        return table.value(row, Column.TIME).read(new Form.Clock());
    }

    /** The bowler's name, if his squad is known. */
    Optional<String> bowler(CsvTable.Row row, Optional<Integer> squad) {
        return squad.flatMap(known -> names.bowler(table.value(row, Column.BOWLER), known));
    }

    /** A game of the squad, from 1. */
    Optional<Integer> game(CsvTable.Row row, Optional<Integer> squad) {
        int games = squad.map(names::games).orElse(EventKeys.MAX_GAMES);
        return bare(row, Column.GAME, "(game)? ?").read(Form.whole(1, games));
    }

    /** When a lane was as measured, if squad and lane are known. */
    Optional<When> when(CsvTable.Row row, Optional<Integer> squad, Optional<Integer> lane) {
        if (squad.isEmpty() || lane.isEmpty()) {
            after(row, EventKeys.MAX_GAMES);
            return Optional.empty();
        }
        return when(
                row,
                squad.get(),
                names.gamesOnPairOf(squad.get(), lane.get()),
                " bowls on pair " + names.pairOf(lane.get()).id() + "; count those that were done there.",
                done -> names.gamesOnPairOf(squad.get(), lane.get(), done));
    }

    /** When something was measured on one lane or another, if the squad is known: games are those of the squad. */
    Optional<When> when(CsvTable.Row row, Optional<Integer> squad) {
        if (squad.isEmpty()) {
            after(row, EventKeys.MAX_GAMES);
            return Optional.empty();
        }
        return when(row, squad.get(), names.games(squad.get()), " bowls; count those that were done.", done -> done);
    }

    private Optional<When> when(CsvTable.Row row, int squad, int games, String bowls, IntUnaryOperator onLanes) {
        if (table.says(row, Column.TIME)) {
            return done(row, squad).map(done -> new When(names.squad(squad), onLanes.applyAsInt(done)));
        }
        Optional<Integer> after = after(row, games);
        if (after.isPresent() && after.get() > games) {
            table.value(row, Column.AFTER)
                    .mustBe(
                            NoticeCode.OUT_OF_RANGE,
                            "at most " + games,
                            " So many games squad " + names.squad(squad) + bowls);
            return Optional.empty();
        }
        return after.map(done -> new When(names.squad(squad), done));
    }

    /** The games of the squad that were done by a time of day. */
    private Optional<Integer> done(CsvTable.Row row, int squad) {
        if (table.says(row, Column.AFTER)) {
            table.value(row, Column.AFTER)
                    .refuse(
                            NoticeCode.IMPOSSIBLE_COMBINATION,
                            ", and the row tells a time of day besides; one of the two must do. Leave one of them out.");
            return Optional.empty();
        }
        return time(row).map(told -> names.gamesDone(squad, names.onDayOf(squad, told)));
    }

    /** Games that were done, 0 for the lane as the squad found it. */
    private Optional<Integer> after(CsvTable.Row row, int all) {
        if (!table.says(row, Column.AFTER)) {
            return Optional.of(0);
        }
        Value value = bare(row, Column.AFTER, "(after)? ?(game|games)? ?");
        String word = value.plain().toLowerCase(Locale.ROOT);
        if (AS_FOUND.contains(word)) {
            return Optional.of(0);
        }
        return AT_THE_END.contains(word) ? Optional.of(all) : value.read(GAMES);
    }

    /** A number that may have words around it that say what it counts. */
    Value bare(CsvTable.Row row, Column column, String before) {
        Value value = table.value(row, column);
        return table.value(
                row, column, value.plain().replaceFirst("(?i)^" + before, "").replaceFirst("(?i) games?$", ""));
    }

    /** A number that must be there. */
    <T> Optional<T> read(CsvTable.Row row, Column column, Form<T> form) {
        return table.value(row, column).read(form);
    }

    /** A number that may be left out: then the usual one. */
    Optional<Double> readOr(CsvTable.Row row, Column column, Form<Double> form, double usual) {
        return table.says(row, column) ? read(row, column, form) : Optional.of(usual);
    }

    /** A number that may be left out; empty if it is wrong. */
    Optional<OptionalDouble> readIfAny(CsvTable.Row row, Column column, Form<Double> form) {
        return table.says(row, column)
                ? read(row, column, form).map(OptionalDouble::of)
                : Optional.of(OptionalDouble.empty());
    }
}
