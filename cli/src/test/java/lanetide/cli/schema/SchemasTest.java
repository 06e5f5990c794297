package lanetide.cli.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import lanetide.cli.command.Program;
import lanetide.cli.fit.FitJson;
import lanetide.cli.fit.SmallDay;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.key.Blocks;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The schemas judged by a reference validator, on every scenario and on the program's own answers. */
class SchemasTest {
    private static final Path PUBLISHED = Scenarios.FOLDER.resolve("schema");

    /** Faults of form, which a schema can see; the others are faults of meaning. */
    private static final Set<NoticeCode> OF_FORM = EnumSet.of(
            NoticeCode.UNKNOWN_KEY,
            NoticeCode.MISSING_KEY,
            NoticeCode.EMPTY_VALUE,
            NoticeCode.WRONG_KIND,
            NoticeCode.NOT_A_NUMBER,
            NoticeCode.NOT_WHOLE,
            NoticeCode.UNIT_MISSING,
            NoticeCode.WRONG_UNIT,
            NoticeCode.BAD_TIME);

    @ParameterizedTest
    @MethodSource("names")
    void thePublishedSchemaIsTheOneOfTheProgram(String name) throws IOException {
        Path file = PUBLISHED.resolve(name + ".schema.json");

        assertThat(file)
                .as("write it with: lanetide schema %s -o scenarios/schema/%s.schema.json", name, name)
                .exists();
        assertThat(Files.readString(file))
                .as("write it anew with: lanetide schema %s -o scenarios/schema/%s.schema.json", name, name)
                .isEqualTo(Schemas.write(name));
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedScenarioIsAccepted(Path file) throws IOException {
        assertThat(errors(Schemas.SCENARIO, json(file))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("faultyInForm")
    void everyScenarioThatIsFaultyInFormIsRejected(Path file) throws IOException {
        assertThat(errors(Schemas.SCENARIO, json(file))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check one-pair.yaml",
                "check taped-lanes.yaml",
                "check two-day-open.yaml",
                "check faulty/length-61-ft.yaml",
                "lines one-pair.yaml",
                "pattern one-pair.yaml",
                "pattern taped-lanes.yaml",
                "simulate one-pair.yaml --replications 2",
                "simulate one-pair.yaml --until-halfwidth 5",
                "simulate busy-day.yaml --replications 1",
                "simulate small-open.yaml --replications 1",
                "simulate small-open.yaml --replications 4",
                "simulate doubles-open.yaml --replications 1",
                "preview one-pair.yaml --replications 2 --bowler Anchor",
                "rotate championship.yaml",
                "rotate club-night.yaml",
                "rotate club-final.yaml --search",
                "rotate championship.yaml --without 9-10 --no-shows A=20 --late B=60min",
                "compare one-pair.yaml one-pair.yaml --replications 2",
                "fairness club-night.yaml --replications 15 --remedies 15",
                "fairness one-pair.yaml --replications 15",
                "fairness club-final.yaml --replications 12 --remedies 0 --without 5-6",
                "fairness small-open.yaml --replications 10 --remedies 0 --bounds 0",
                "reoil club-final.yaml --replications 4 --games 2 --oilings 2"
            })
    void anAnswerFitsItsSchemaAndTheSchemaNamesEveryField(String words) {
        String command = words.substring(0, words.indexOf(' '));
        String answer = answer(words);

        assertThat(errors(command, answer)).isEmpty();
        assertThat(undescribed(
                        JsonMapper.shared().readTree(answer),
                        JsonMapper.shared().readTree(Schemas.write(command)),
                        ""))
                .as("describe these fields in %s", Answer.class)
                .isEmpty();
    }

    /** A fit of few sets, since a whole one takes long. */
    @Test
    void theAnswerOfAFitIsDescribedToo(@TempDir Path folder) throws IOException {
        String answer = FitJson.write(SmallDay.told(folder));

        assertThat(errors("fit", answer)).isEmpty();
        assertThat(undescribed(
                        JsonMapper.shared().readTree(answer),
                        JsonMapper.shared().readTree(Schemas.write("fit")),
                        ""))
                .isEmpty();
    }

    @Test
    void aSchemaRejectsAnAnswerThatLacksAField() {
        assertThat(errors("check", "{\"schemaVersion\": 1}")).isNotEmpty();
    }

    static List<String> names() {
        return Schemas.names();
    }

    static List<Path> shipped() {
        return Scenarios.shipped();
    }

    /** Scenarios whose one error is of form, and in the scenario itself. */
    static List<Path> faultyInForm() throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path file : Scenarios.faulty()) {
            List<Notice> notices = new ScenarioReader(OptionalLong.empty())
                    .read(file.toString(), Files.readAllBytes(file)).notices().stream()
                            .filter(notice -> notice.severity() == Severity.ERROR)
                            .toList();
            Notice error = notices.get(0);
            if (error.file().equals(file.toString()) && OF_FORM.contains(error.code()) && !dependsOnOthers(error)) {
                files.add(file);
            }
        }
        assertThat(files).hasSizeGreaterThan(30);
        return files;
    }

    @Test
    void everyShippedScenarioNamesTheSchemaForEditors() throws IOException {
        for (Path scenario : Scenarios.shipped()) {
            String first = Files.readAllLines(scenario).get(0);
            assertThat(first).as(scenario.toString()).startsWith("# yaml-language-server: $schema=");
            assertThat(scenario.resolveSibling(first.substring(first.indexOf('=') + 1)))
                    .isRegularFile();
        }
    }

    /** A key that may be left out beside another one, which the schema leaves to the program. */
    private static boolean dependsOnOthers(Notice error) {
        if (error.code() != NoticeCode.MISSING_KEY) {
            return false;
        }
        String path = error.field()
                .replaceAll("\\[\\d+\\]", "")
                .replaceFirst("^patterns\\.[^.]+", "patterns.NAME")
                .replaceFirst("^fields\\.[^.]+", "field");
        return Blocks.ALL.stream()
                .flatMap(block ->
                        block.keys().stream().filter(key -> block.path(key).equals(path)))
                .anyMatch(key -> !key.isRequired());
    }

    private static List<Error> errors(String schema, String json) {
        Schema loaded = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Schemas.write(schema), InputFormat.JSON);
        return loaded.validate(json, InputFormat.JSON);
    }

    private static String json(Path yaml) throws IOException {
        Object loaded = new Load(LoadSettings.builder().build()).loadFromString(Files.readString(yaml));
        return JsonMapper.shared().writeValueAsString(loaded);
    }

    private static String answer(String words) {
        Object[] command = Stream.concat(Stream.of(words.split(" ")), Stream.of("--format", "json"))
                .map(word ->
                        word.endsWith(".yaml") ? Scenarios.FOLDER.resolve(word).toString() : word)
                .toArray();
        return Program.run(command).out();
    }

    /** Fields of an answer that its schema does not name. */
    private static List<String> undescribed(JsonNode answer, JsonNode schema, String path) {
        List<String> missing = new ArrayList<>();
        if (answer.isArray()) {
            answer.forEach(item -> missing.addAll(undescribed(item, schema.path("items"), path + "[]")));
        } else if (answer.isObject() && !schema.has("additionalProperties")) {
            for (String field : answer.propertyNames()) {
                JsonNode described = schema.path("properties").path(field);
                if (described.isMissingNode()) {
                    missing.add(path + "." + field);
                } else {
                    missing.addAll(undescribed(answer.get(field), described, path + "." + field));
                }
            }
        }
        return missing.stream().distinct().toList();
    }
}
