package lanetide.cli.scenario.centre;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.SourceText;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.GameEnded;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.ScoreMade;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads centre files. They are written by the program, so what does not fit is refused as a whole. */
public final class CentreFileFromJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    /** Its texts are shown on terminals. */
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Cs}]");

    private CentreFileFromJson() {}

    /** What a file holds that is none, or was changed by hand. */
    private static final class Broken extends RuntimeException {
        private static final long serialVersionUID = 1;

        Broken(String what) {
            super(what);
        }
    }

    /**
     * Reads a file.
     *
     * @param bytes its bytes
     * @param at where a scenario names it
     * @return what it holds; empty, with a notice, if it is no centre file or was fitted from other sets than ship now
     */
    public static Optional<CentreFile> read(byte[] bytes, Value at) {
        if (bytes.length > SourceText.MAX_BYTES) {
            return none(at, "it is larger than 1 MB");
        }
        try {
            JsonNode root = MAPPER.readTree(bytes);
            if (!startedFrom(root).equals(ValueSets.mark())) {
                at.refuse(
                        NoticeCode.CENTRE_FILE_OLD,
                        ", which was fitted from sets of values that this program no longer has. Take this key out, and"
                                + " make the file again: `" + text(root, CentreFields.REFIT) + "`.");
                return Optional.empty();
            }
            return Optional.of(file(root));
        } catch (Broken e) {
            return none(at, e.getMessage());
        } catch (JacksonException e) {
            return none(at, "it is not JSON");
        } catch (IllegalArgumentException e) {
            return none(at, "a value in it lies outside what is possible");
        }
    }

    private static Optional<CentreFile> none(Value at, String why) {
        at.refuse(
                NoticeCode.NO_CENTRE_FILE,
                ", which must be a centre file as `lanetide fit` writes it, and is none: " + why
                        + ". Name the file that `lanetide fit SCENARIO --centre FILE` has written.");
        return Optional.empty();
    }

    /** Looked at before all else: what follows may be written otherwise in files of another time. */
    private static String startedFrom(JsonNode root) {
        if (root.path(CentreFields.FORM).asInt(0) != CentreFields.VERSION) {
            throw new Broken("it does not begin with \"" + CentreFields.FORM + "\": " + CentreFields.VERSION);
        }
        return text(root, CentreFields.STARTED_FROM);
    }

    private static CentreFile file(JsonNode root) {
        List<String> unknowns = unknowns(root);
        List<ValueSet> sets = new ArrayList<>();
        list(root, CentreFields.SETS).forEach(node -> sets.add(set(sets.size() + 1, node, unknowns)));
        if (sets.isEmpty()) {
            throw new Broken("it holds no sets of values");
        }
        List<CentreFile.Day> days = new ArrayList<>();
        list(root, CentreFields.DAYS).forEach(node -> days.add(day(node)));
        return new CentreFile(startedFrom(root), text(root, CentreFields.REFIT), days, sets);
    }

    private static List<String> unknowns(JsonNode root) {
        List<String> names = new ArrayList<>();
        list(root, CentreFields.UNKNOWNS).forEach(name -> names.add(name.asString("")));
        List<String> all = known().map(Unknown::id).sorted().toList();
        if (!names.stream().sorted().toList().equals(all)) {
            throw new Broken("its `" + CentreFields.UNKNOWNS + "` are not the " + all.size() + " of this program");
        }
        return names;
    }

    private static Stream<Unknown> known() {
        return Stream.of(OilModel.UNKNOWNS, PlayModel.UNKNOWNS).flatMap(all -> all.all().stream());
    }

    private static ValueSet set(int number, JsonNode node, List<String> unknowns) {
        JsonNode values = list(node, CentreFields.VALUES);
        if (values.size() != unknowns.size()) {
            throw new Broken("set " + number + " has " + values.size() + " values of " + unknowns.size() + " unknowns");
        }
        Map<String, Double> byName = new TreeMap<>();
        for (int u = 0; u < unknowns.size(); u++) {
            byName.put(unknowns.get(u), value(number, unknowns.get(u), values.get(u)));
        }
        try {
            return new ValueSet(number, byName, Long.parseLong(text(node, CentreFields.DRAWN_BY)));
        } catch (NumberFormatException e) {
            throw new Broken("set " + number + " is drawn by no whole number");
        }
    }

    private static double value(int number, String name, JsonNode node) {
        Unknown unknown =
                known().filter(each -> each.id().equals(name)).findFirst().orElseThrow();
        double value = node.isNumber() ? node.asDouble() : Double.NaN;
        if (!(value >= unknown.low() && value <= unknown.high())) {
            throw new Broken("in set " + number + " " + name + " is " + Notices.quote(String.valueOf(node))
                    + " and must lie between " + unknown.low() + " and " + unknown.high());
        }
        return value;
    }

    private static CentreFile.Day day(JsonNode node) {
        List<TapeTaken> tapes = new ArrayList<>();
        List<TapeTaken> fresh = new ArrayList<>();
        list(node, CentreFields.TAPES).forEach(one -> {
            TapeTaken tape = tape(one);
            tapes.add(tape);
            if (one.path(CentreFields.FRESH).asBoolean(false)) {
                fresh.add(tape);
            }
        });
        List<BallThrown> balls = new ArrayList<>();
        list(node, CentreFields.BALLS).forEach(one -> balls.add(ball(one)));
        List<ScoreMade> scores = new ArrayList<>();
        list(node, CentreFields.SCORES).forEach(one -> scores.add(score(one)));
        List<GameEnded> ends = new ArrayList<>();
        if (node.has(CentreFields.ENDS)) {
            list(node, CentreFields.ENDS).forEach(one -> ends.add(end(one)));
        }
        return new CentreFile.Day(
                text(node, CentreFields.SCENARIO),
                text(node, CentreFields.SHA256),
                text(node, CentreFields.EVENT),
                text(node, CentreFields.PATTERN),
                new Measurements(tapes, balls, scores, ends),
                fresh);
    }

    private static GameEnded end(JsonNode node) {
        return new GameEnded(
                text(node, CentreFields.SQUAD),
                whole(node, CentreFields.GAME),
                Math.round(number(node, CentreFields.ENDED_MS)),
                number(node, CentreFields.ERROR),
                text(node, CentreFields.PLACE));
    }

    private static TapeTaken tape(JsonNode node) {
        return new TapeTaken(
                whole(node, CentreFields.LANE),
                when(node),
                number(node, CentreFields.DISTANCE_M),
                whole(node, CentreFields.BOARD),
                number(node, CentreFields.UNITS),
                number(node, CentreFields.ERROR),
                text(node, CentreFields.PLACE));
    }

    private static BallThrown ball(JsonNode node) {
        return new BallThrown(
                node.has(CentreFields.LANE) ? OptionalInt.of(whole(node, CentreFields.LANE)) : OptionalInt.empty(),
                when(node),
                node.has(CentreFields.BOWLER) ? Optional.of(text(node, CentreFields.BOWLER)) : Optional.empty(),
                new BallSeen(
                        optional(node, CentreFields.LAYDOWN),
                        optional(node, CentreFields.ARROWS),
                        passed(node),
                        optional(node, CentreFields.MET),
                        number(node, CentreFields.ERROR)),
                optional(node, CentreFields.SPEED_MPS),
                optional(node, CentreFields.SPIN_RADPS),
                text(node, CentreFields.PLACE));
    }

    private static Optional<BallSeen.Passed> passed(JsonNode node) {
        return node.has(CentreFields.PASSED)
                ? Optional.of(
                        new BallSeen.Passed(number(node, CentreFields.DISTANCE_M), number(node, CentreFields.PASSED)))
                : Optional.empty();
    }

    private static ScoreMade score(JsonNode node) {
        return new ScoreMade(
                text(node, CentreFields.SQUAD),
                whole(node, CentreFields.GAME),
                text(node, CentreFields.BOWLER),
                whole(node, CentreFields.PINS),
                text(node, CentreFields.PLACE));
    }

    private static When when(JsonNode node) {
        return new When(text(node, CentreFields.SQUAD), whole(node, CentreFields.AFTER));
    }

    private static OptionalDouble optional(JsonNode node, String field) {
        return node.has(field) ? OptionalDouble.of(number(node, field)) : OptionalDouble.empty();
    }

    private static double number(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isNumber() || !Double.isFinite(value.asDouble())) {
            throw new Broken("`" + field + "` is no number");
        }
        return value.asDouble();
    }

    private static int whole(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isIntegralNumber() || !value.canConvertToInt()) {
            throw new Broken("`" + field + "` is no whole number");
        }
        return value.asInt();
    }

    private static String text(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isString()) {
            throw new Broken("`" + field + "` is no text");
        }
        if (UNPRINTABLE.matcher(value.asString()).find()) {
            throw new Broken("`" + field + "` has characters that cannot be printed");
        }
        return value.asString();
    }

    private static JsonNode list(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isArray()) {
            throw new Broken("`" + field + "` is no list");
        }
        return value;
    }
}
