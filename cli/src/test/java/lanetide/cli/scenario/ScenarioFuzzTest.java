package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import lanetide.cli.scenario.notice.Severity;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Scenarios spoilt at random: whatever is written, the reader answers with notices and never with an exception. */
class ScenarioFuzzTest {
    private static final int SPOILT_PER_SEED = 100;
    private static final List<String> PIECES = List.of(
            ": ",
            "- ",
            "\n",
            "  ",
            "[",
            "]",
            "{",
            "}",
            "\"",
            "'",
            "#",
            ",",
            "%",
            "|",
            ">",
            "0",
            "-1",
            "1e309",
            ".nan",
            "ft",
            "mL",
            "true",
            "null",
            "~",
            "1-2",
            "99999999999999999999",
            "day 2 ",
            "stay",
            "\t",
            "\u00e9",
            "\ud83c\udfb3");

    private static final String TAPED = Scenarios.SOUND.replace("  ratio: 4:1\n", """
              tapes:
                error: 2 units
                boards: [3, 8, 12, 20]
                readings:
                  - {at: 8 ft, units: [6, 12, 19, 24]}
                  - {at: 22 ft, units: [5, 9, 14, 18]}
                  - {at: 37 ft, units: [2, 4, 6, 8]}
            """);

    private static final String LISTED = Scenarios.SOUND
                    .substring(0, Scenarios.SOUND.indexOf("field:"))
                    .replace(", oil: fresh}", ", oil: fresh}\n  - {id: B, start: \"22:00\", oil: none}")
            + """
            entries:
              file: list.csv
              columns: {name: Competitor, average: Avg, squad: Shift}
            field:
              styles: {stroker: 50 %, tweener: 50 %}
              levels: {scratch: 50 %, league: 50 %}
            bowlers:
              levelFrom: {scratch: 195 pins, league: 0 pins}
            """;

    private static final String LIST = """
            Competitor;Avg;Hand;Shift;Ball;Group
            Anchor;187,4;R;A;urethane;1
            Leadoff;201;;A;;1
            Third;;L;B;Plastic;1
            Anchor;187,4;R;B;;2
            """;

    @TempDir
    Path folder;

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aSpoiltScenarioGivesNoticesOrAnEvent(long seed) {
        UniformRandomProvider luck = new RandomStreams(seed).stream("fuzz");
        for (int i = 0; i < SPOILT_PER_SEED; i++) {
            String text = spoilt(i % 3 == 0 ? TAPED : Scenarios.SOUND, luck);

            Reading reading =
                    new ScenarioReader(OptionalLong.empty()).read("spoilt.yaml", text.getBytes(StandardCharsets.UTF_8));

            assertThat(reading.scenario().isEmpty())
                    .as("seed %d, scenario %d:%n%s", seed, i, text)
                    .isEqualTo(reading.count(Severity.ERROR) > 0);
            assertThat(reading.notices())
                    .as("seed %d, scenario %d:%n%s", seed, i, text)
                    .allSatisfy(notice -> assertThat(notice.message()).endsWith("."));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aSpoiltEntryListGivesNoticesOrAnEvent(long seed) throws IOException {
        UniformRandomProvider luck = new RandomStreams(seed).stream("fuzz/entries");
        for (int i = 0; i < SPOILT_PER_SEED / 4; i++) {
            String text = i % 2 == 0 ? LISTED : spoilt(LISTED, luck);
            String list = i % 2 == 0 ? spoilt(LIST, luck) : LIST;
            Files.writeString(folder.resolve("list.csv"), list);
            Path scenario = Files.writeString(folder.resolve("event.yaml"), text);

            Reading reading =
                    new ScenarioReader(OptionalLong.empty()).read(scenario.toString(), Files.readAllBytes(scenario));

            assertThat(reading.scenario().isEmpty())
                    .as("seed %d, scenario %d:%n%s%n%s", seed, i, text, list)
                    .isEqualTo(reading.count(Severity.ERROR) > 0);
            assertThat(reading.notices())
                    .as("seed %d, scenario %d:%n%s%n%s", seed, i, text, list)
                    .allSatisfy(notice -> assertThat(notice.message()).endsWith("."));
        }
    }

    static LongStream seeds() {
        return LongStream.range(0, 20);
    }

    /**
     * A sound scenario after one to four changes: a line left out, doubled or moved, a piece put in or a stretch cut.
     */
    private static String spoilt(String sound, UniformRandomProvider luck) {
        String text = sound.strip();
        for (int change = luck.nextInt(4); change >= 0; change--) {
            int at = luck.nextInt(text.length());
            int to = Math.min(text.length(), at + luck.nextInt(8));
            text = switch (luck.nextInt(4)) {
                case 0 -> text.substring(0, at) + text.substring(to);
                case 1 -> text.substring(0, at) + PIECES.get(luck.nextInt(PIECES.size())) + text.substring(at);
                case 2 -> text.substring(0, at) + PIECES.get(luck.nextInt(PIECES.size())) + text.substring(to);
                default -> withoutALine(text, luck);
            };
        }
        return text;
    }

    private static String withoutALine(String text, UniformRandomProvider luck) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        String moved = lines.remove(luck.nextInt(lines.size()));
        if (luck.nextBoolean()) {
            lines.add(luck.nextInt(lines.size() + 1), moved);
        }
        return String.join("\n", lines) + " ";
    }
}
