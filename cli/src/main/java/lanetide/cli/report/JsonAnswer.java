package lanetide.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.ToDoubleFunction;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.des.stats.ConfidenceInterval;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The common form of every JSON answer: the same bytes for the same scenario, seed and version. */
public final class JsonAnswer {
    /** Grows when a field changes its meaning or goes. */
    private static final int SCHEMA_VERSION = 1;

    private static final DefaultIndenter LINES = new DefaultIndenter("  ", "\n");
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private JsonAnswer() {}

    /**
     * What every answer opens with: versions, the seed of a scenario that can be played, and the hashes of what was
     * read.
     */
    public static ObjectNode opening(Reading reading) {
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        answer.put("schemaVersion", SCHEMA_VERSION);
        answer.put("version", ProgramVersion.text());
        answer.put("seed", reading.scenario().map(Scenario::seed).orElse(null));
        answer.put("scenarioSha256", reading.sha256().orElse(null));
        if (!reading.namedFiles().isEmpty()) {
            ObjectNode files = answer.putObject("namedFilesSha256");
            reading.namedFiles().forEach(files::put);
        }
        putDoubts(answer, reading.scenario().map(Scenario::doubts).orElse(List.of()));
        return answer;
    }

    /** Puts what makes an answer doubtful beside what stands there already; no field if nothing does. */
    public static void putDoubts(ObjectNode answer, List<String> doubts) {
        doubts.forEach(doubt -> answer.withArray("doubts").add(doubt));
    }

    /** The text of an answer, indented. */
    public static String write(ObjectNode answer) {
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(LINES).withArrayIndenter(LINES);
        return MAPPER.writer().with(printer).writeValueAsString(answer) + "\n";
    }

    /**
     * The text of an answer on one line, which can stand in a script element of a page: nothing in it ends the element
     * (HTML Living Standard, restrictions for contents of script elements).
     */
    public static String inPage(ObjectNode answer) {
        return MAPPER.writeValueAsString(answer).replace("<", "\\u003c");
    }

    /** Puts what an answer rests on and the scenario does not state. */
    public static void putAssumptions(ObjectNode answer, List<Assumption> assumptions) {
        putAll(answer, "assumptions", assumptions, (node, taken) -> {
            node.put("name", taken.name());
            node.put("value", taken.value());
            node.put("source", taken.source());
        });
    }

    /** Puts the cautions that stand in every answer about lanes and balls. */
    public static void putCautions(ObjectNode answer) {
        Cautions.ALL.forEach(answer.putArray("cautions")::add);
    }

    /** Writes an answer about lanes and balls, with what it rests on and the cautions at its end. */
    public static String write(ObjectNode answer, List<Assumption> assumptions) {
        putAssumptions(answer, assumptions);
        putCautions(answer);
        return write(answer);
    }

    /** Puts an object, or null where there is nothing to write. */
    public static <T> void put(ObjectNode node, String field, Optional<T> value, BiConsumer<ObjectNode, T> write) {
        value.ifPresentOrElse(known -> write.accept(node.putObject(field), known), () -> node.putNull(field));
    }

    /** Puts an array with an object for each thing. */
    public static <T> void putAll(
            ObjectNode node, String field, Collection<T> things, BiConsumer<ObjectNode, T> write) {
        ArrayNode array = node.putArray(field);
        things.forEach(thing -> write.accept(array.addObject(), thing));
    }

    /** Puts the ends of an interval, rounded to so many decimals. */
    public static void put(ObjectNode node, String field, ConfidenceInterval interval, int decimals) {
        ObjectNode ends = node.putObject(field);
        put(ends, "low", interval.low(), decimals);
        put(ends, "high", interval.high(), decimals);
    }

    /** Puts a number rounded to so many decimals, or null for NaN. */
    public static void put(ObjectNode node, String field, double value, int decimals) {
        if (Double.isNaN(value)) {
            node.putNull(field);
        } else {
            node.put(field, rounded(value, decimals));
        }
    }

    /** Puts a quantity of a thing that may be missing, which gives {@code null}. */
    public static <T> void put(ObjectNode node, String field, Optional<T> thing, ToDoubleFunction<T> of, int decimals) {
        put(node, field, thing.map(of::applyAsDouble).orElse(Double.NaN), decimals);
    }

    /** Writes a number that may be missing, which gives {@code null}. */
    public static void put(ObjectNode node, String field, OptionalDouble value, int decimals) {
        put(node, field, value.orElse(Double.NaN), decimals);
    }

    /** Rounds half to even; never gives a negative zero. */
    public static double rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .doubleValue();
    }
}
