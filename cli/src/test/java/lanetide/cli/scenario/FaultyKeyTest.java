package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Blocks;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Each key of each block in turn is wrong, beside all others as they should be: the reader says so, whatever hangs on
 * it.
 */
class FaultyKeyTest {
    private static final String NAMED = ".NAME";

    /** Every block but those of tapes and entries. */
    private static final String ALL_BLOCKS = Scenarios.SOUND
                    .replace("  ratio: 4:1\n", """
              ratio: 4:1
              left: {ratio: 5:1}
              bands: {shortTo: 36 ft}
            """)
                    .replace("  surface: hard-synthetic\n", """
              surface: own-lane
              topography:
                limit: 0.04 in
                readings:
                  - {lane: 1, at: 20 ft, tilt: 0.01 in, crown: 0.02 in}
            """)
                    .replace("rotation: stay", "rotation: {design: right}")
                    .replace("oil: fresh}", "oil: fresh, breaks: [{after: 1, length: 10 min}]}")
            + """
            patterns:
              Flat: {length: 41 ft, volume: 25 mL, ratio: 3:1}
            lanePatterns:
              - {pattern: Flat, lanes: [3-4]}
            changes:
              - {bowler: A-01, substitute: {id: Guest, hand: right, style: own-style, level: own-level, cover: own-cover}}
              - {bowler: A-02, arrives: "18:30"}
            pace: {firstShot: 20 s}
            incidents:
              jams: {every: 100 games, work: 2 min}
              faults: {every: 2000 games, work: 20 min}
              planned:
                - {lane: 1, at: "18:30", work: 20 min}
            bowlers: {tiring: 1 %}
            scoring:
              noTap: 9 pins
              handicap: {base: 200 pins, share: 90 %, averages: {scratch: 190 pins, league: 150 pins, own-level: 150 pins}}
            cut: {places: 4, ties: last-game, handicap: left-out, counts: sum, finals: {form: head-to-head, start: "22:00", oil: over, practice: 5 min, games: 2, matches: [[1-4, 2-3], [w1-w2]]}}
            laws: {friction: mixed-lubrication}
            fairness: {margin: 2 pins}
            costs: {pin: 0.1}
            surfaces:
              own-lane: {dryFriction: 0.2, roughness: 0.4 um, source: assumption}
            covers:
              own-cover: {frictionFactor: 1, roughness: 0.5 um, flareOverlap: 50 %, absorption: 400 s, source: assumption}
            styles:
              own-style: {speed: 18 mph, revRate: 300 rpm, axisRotation: 45 deg, axisTilt: 10 deg, naturalLaunch: 1 deg, source: assumption}
              told-style: {speed: 18 mph, revRate: 330 rpm, plays: {laydown: 14 boards, arrows: 11 boards, ball: medium-reactive, pattern: {length: 40 ft, ratio: 8:1, volume: 23 mL}}, source: told}
            levels:
              own-level: {arrows: 1 board, speedShare: 2 %, spinShare: 5 %, sees: 1 board, deadBand: 1 board, gain: 1, patience: 2 shots, drift: 0.1 boards, form: 5 %, source: assumption}
            """;

    private static final String TAPED = Scenarios.SOUND.replace("  ratio: 4:1\n", """
              tapes:
                boards: [3, 8, 12, 20]
                readings:
                  - {at: 8 ft, units: [6, 12, 19, 24]}
                  - {at: 22 ft, units: [5, 9, 14, 18]}
                  - {at: 37 ft, units: [2, 4, 6, 8]}
            """);

    private static final String LISTED = Scenarios.SOUND.substring(0, Scenarios.SOUND.indexOf("field:")) + """
            entries:
              - {id: Anchor, hand: right, style: stroker, level: league, cover: urethane, partners: Foxes}
              - {id: Leadoff, hand: left, style: tweener, level: scratch, cover: plastic, partners: Foxes}
              - {id: Third, hand: right, style: stroker, level: league, cover: urethane}
            draw: {hands: even, styles: free, averages: even, squads: drawn, seed: 5}
            """;

    private static final String IN_A_TABLE = Scenarios.SOUND
                    .substring(0, Scenarios.SOUND.indexOf("field:"))
                    .replace(", oil: fresh}", ", oil: fresh}\n  - {id: B, start: \"21:00\", oil: none}")
            + """
            entries:
              file: club-final.csv
              columns: {name: Name, cover: Ball}
            field:
              styles: {stroker: 50 %, tweener: 50 %}
              slow: 10 %
            bowlers:
              levelFrom: {scratch: 195 pins, league: 0 pins}
            """;

    /** A scenario as a tree of maps and lists, and the file it stands in. */
    record Sound(Path file, String text) {
        Object tree() {
            return new Load(LoadSettings.builder().build()).loadFromString(text);
        }

        @Override
        public String toString() {
            return file.getFileName().toString();
        }
    }

    @ParameterizedTest
    @MethodSource("everyBlock")
    void anyKeyThatIsWrongIsToldAndNothingElseFails(Sound scenario) {
        breakEach(scenario, (block, key) -> true, FaultyKeyTest::wrong);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aKeyOfAShippedScenarioThatIsWrongIsToldAndNothingElseFails(Sound scenario) {
        breakEach(scenario, (block, key) -> block.containsKey(key.name()), key -> List.of(List.of(List.of(1))));
    }

    private static void breakEach(
            Sound scenario, BiPredicate<Map<String, Object>, Key<?>> chosen, Function<Key<?>, List<Object>> wrong) {
        Object tree = scenario.tree();
        for (Block block : Blocks.ALL) {
            for (Map<String, Object> found : blocks(tree, block)) {
                Map<String, Object> sound = new LinkedHashMap<>(found);
                for (Key<?> key : block.keys()) {
                    for (Object value : chosen.test(sound, key) ? wrong.apply(key) : List.of()) {
                        found.put(key.name(), value);
                        assertToldAlone(read(scenario.file(), tree), block.path() + "." + key.name() + ": " + value);
                        found.clear();
                        found.putAll(sound);
                    }
                }
            }
        }
    }

    private static void assertToldAlone(Reading reading, String wrong) {
        assertThat(reading.notices())
                .as("notices of a scenario with " + wrong)
                .anyMatch(notice -> notice.severity() == Severity.ERROR)
                .noneMatch(notice -> notice.code() == NoticeCode.NOT_ALL_CHECKED);
    }

    @Test
    void everyBlockStandsInOneOfTheScenarios() {
        Set<Block> seen = new LinkedHashSet<>();
        for (Sound scenario : everyBlock()) {
            assertThat(read(scenario.file(), scenario.tree()).notices())
                    .as(scenario.toString())
                    .noneMatch(notice -> notice.severity() == Severity.ERROR);
            for (Block block : Blocks.ALL) {
                if (!blocks(scenario.tree(), block).isEmpty()) {
                    seen.add(block);
                }
            }
        }

        assertThat(seen).containsExactlyInAnyOrderElementsOf(Blocks.ALL);
    }

    static List<Sound> everyBlock() {
        return List.of(
                new Sound(Path.of("all-blocks.yaml"), ALL_BLOCKS),
                new Sound(Path.of("taped.yaml"), TAPED),
                new Sound(Path.of("listed.yaml"), LISTED),
                new Sound(Scenarios.FOLDER.resolve("in-a-table.yaml"), IN_A_TABLE));
    }

    static List<Sound> shipped() throws IOException {
        List<Sound> all = new ArrayList<>();
        for (Path file : Scenarios.shipped()) {
            all.add(new Sound(file, Files.readString(file)));
        }
        return all;
    }

    /** Values that no reader of this key can take: of another kind, a word of no meaning, and none. */
    private static List<Object> wrong(Key<?> key) {
        List<Object> values = new ArrayList<>();
        values.add(List.of(List.of(1)));
        values.add("");
        if (!key.form().inWords().equals("text")) {
            values.add("?!");
        }
        return values;
    }

    private static Reading read(Path file, Object tree) {
        String text = new Dump(DumpSettings.builder().build()).dumpToString(tree);
        return new ScenarioReader(OptionalLong.empty()).read(file.toString(), text.getBytes(StandardCharsets.UTF_8));
    }

    /** The blocks of a kind in a tree, wherever they stand. */
    private static List<Map<String, Object>> blocks(Object tree, Block block) {
        Stream<Object> found = Stream.of(tree);
        if (!block.path().isEmpty()) {
            for (String name : block.path().split("\\.", -1)) {
                found = found.flatMap(parent -> children(parent, name));
            }
        }
        return found.flatMap(FaultyKeyTest::items)
                .filter(Map.class::isInstance)
                .map(FaultyKeyTest::map)
                .toList();
    }

    private static Stream<Object> children(Object parent, String name) {
        return items(parent)
                .filter(Map.class::isInstance)
                .map(FaultyKeyTest::map)
                .flatMap(map -> NAMED.equals("." + name) ? map.values().stream() : Stream.ofNullable(map.get(name)));
    }

    private static Stream<Object> items(Object value) {
        return value instanceof Collection<?> list ? list.stream().map(item -> (Object) item) : Stream.of(value);
    }

    @SuppressWarnings("unchecked") // the keys of a scenario are texts
    private static Map<String, Object> map(Object value) {
        return value instanceof LinkedHashMap ? (Map<String, Object>) value : new LinkedHashMap<>();
    }
}
