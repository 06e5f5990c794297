package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.catalogue.Grits;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.LaneSurvey.Station;
import lanetide.oilflow.lane.Topography;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Laws;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.rotation.design.Explicit;
import lanetide.squads.rotation.design.Ring;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ScenarioReaderTest {
    private static final double EXACT = 1e-12;

    @Test
    void aSoundScenarioBecomesTheEventItDescribes() {
        Scenario scenario = Scenarios.read(Scenarios.SOUND).scenario().orElseThrow();

        Event event = scenario.event();
        assertThat(scenario.seed()).isEqualTo(1);
        assertThat(event.name()).isEqualTo("Practice night");
        assertThat(event.centre().pairs()).containsExactly(new LanePair(1, 2), new LanePair(3, 4));
        assertThat(event.pattern().lengthM()).isCloseTo(39 * 0.3048, within(EXACT));
        assertThat(event.pattern().volumeMl()).isEqualTo(23);
        assertThat(event.pattern())
                .isInstanceOfSatisfying(
                        SheetPattern.class, sheet -> assertThat(sheet.ratio()).isEqualTo(4));
        assertThat(event.pace()).isEqualTo(PaceOfPlay.USUAL);
        assertThat(event.squads()).hasSize(1);
        assertThat(event.squads().get(0).startMs()).isEqualTo(18 * 3_600_000L);
        assertThat(event.squads().get(0).conditioning()).isEqualTo(Conditioning.STRIP_AND_OIL);
        assertThat(event.squads().get(0).practiceMs()).isEqualTo(600_000);
        assertThat(event.squads().get(0).groups()).hasSize(2);
        assertThat(event.rotations().get(0).games()).isEqualTo(3);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aShippedScenarioHasNoFault(Path file) throws Exception {
        Reading reading = new ScenarioReader(OptionalLong.empty()).read(file.toString(), Files.readAllBytes(file));

        assertThat(reading.notices().stream().filter(notice -> notice.severity() != Severity.INFO))
                .isEmpty();
        assertThat(reading.scenario()).isPresent();
    }

    static List<Path> shipped() {
        return Scenarios.shipped();
    }

    /** Source: the SHA-256 example for the message "abc" in FIPS 180-4's example values (NIST, 2001). */
    @Test
    void theHashIsThatOfTheBytes() {
        Reading reading = Scenarios.read("abc");

        assertThat(reading.sha256()).contains("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void allFaultsOfAFileAreFoundInOnePass() {
        Reading reading = Scenarios.read("""
                nam: Everything wrong
                seed: 1.5
                centre:
                  lanes: 1 to 5
                  surface: woood
                pattern:
                  length: 61 ft
                  volume: 0 mL
                  ratio: 4
                games: three
                practice: -10 min
                rotation: rigth
                squads:
                  - {id: A, start: "25:00", oil: fresh}
                  - {id: A, start: "19:00", oil: frech}
                field:
                  perSquad: 0
                  hands: {right: 75 %, left: 30 %}
                  styles: {strokr: 100 %}
                  levels: [scratch]
                """);

        assertThat(reading.notices().stream().map(notice -> notice.code().code()))
                .containsExactlyInAnyOrder(
                        "unknown_key",
                        "not_whole",
                        "lanes_odd",
                        "unknown_name",
                        "out_of_range",
                        "zero_value",
                        "unit_missing",
                        "not_a_number",
                        "negative_value",
                        "unknown_name",
                        "bad_time",
                        "duplicate_name",
                        "unknown_name",
                        "zero_value",
                        "shares_not_100",
                        "unknown_name",
                        "wrong_kind",
                        "missing_key");
        assertThat(reading.notices()).isSortedAccordingTo(java.util.Comparator.comparingInt(Notice::line));
    }

    @Test
    void fiftyMegabytesOfBracketsAreRefusedAtOnce() {
        byte[] bomb = new byte[50 << 20];
        Arrays.fill(bomb, (byte) '[');

        Reading reading = Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(2), () -> new ScenarioReader(OptionalLong.empty()).read("bomb.yaml", bomb));

        assertThat(reading.notices()).extracting(Notice::code).containsExactly(NoticeCode.FILE_TOO_LARGE);
        assertThat(reading.sha256()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"[", "{", "'- '", "'? '", "'a: {b: '", "'[{'"})
    void aMegabyteOfAnyNestingIsRefusedWithoutAStackOverflow(String opening) {
        String bomb = opening.repeat((1 << 20) / opening.length());

        Reading reading = Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), () -> Scenarios.read(bomb));

        assertThat(reading.scenario()).isEmpty();
        assertThat(reading.notices())
                .extracting(Notice::code)
                .containsAnyOf(NoticeCode.NESTING_TOO_DEEP, NoticeCode.SYNTAX_ERROR);
    }

    @Test
    void aMegabyteOfOneQuantityIsRefusedWithoutAStackOverflow() {
        Reading reading = Scenarios.readWith("10 min", "1 h ".repeat(200_000) + "1 min");

        assertThat(reading.notices()).extracting(Notice::code).containsExactly(NoticeCode.NOT_A_NUMBER);
        assertThat(reading.notices().get(0).message()).hasSizeLessThan(300);
    }

    @ParameterizedTest
    @CsvSource({
        "39 ft, 11.8872",
        "12 m, 12",
        "1200 cm, 12",
        "468 in, 11.8872",
        "39ft, 11.8872",
        "3.9e1 ft, 11.8872",
        "+39 ft, 11.8872"
    })
    void aLengthMayBeWrittenInAnyOfItsUnits(String written, double metres) {
        OilPattern pattern = event("39 ft", written).pattern();

        assertThat(pattern.lengthM()).isCloseTo(metres, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"25 mL, 25", "25000 uL, 25", "25000 \u00b5L, 25", "2.5e4 ul, 25"})
    void aVolumeMayBeWrittenInAnyOfItsUnits(String written, double millilitres) {
        assertThat(event("23 mL", written).pattern().volumeMl()).isCloseTo(millilitres, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "10 min, 600000",
        "90 s, 90000",
        "1 h, 3600000",
        "1 h 30 min, 5400000",
        "1h 5min 30s, 3930000",
        "0 min, 0"
    })
    void aTimeMayBeWrittenInParts(String written, long milliseconds) {
        assertThat(event("10 min", written).squads().get(0).practiceMs()).isEqualTo(milliseconds);
    }

    @ParameterizedTest
    @CsvSource({"18:00, 64800000", "7:05, 25500000", "day 1 07:05, 25500000", "day 2 08:00, 115200000"})
    void aStartMayFallOnALaterDay(String written, long milliseconds) {
        long startMs = event("18:00", written).squads().get(0).startMs();

        assertThat(startMs).isEqualTo(milliseconds);
        assertThat(TimeOfDay.write(startMs))
                .isEqualTo(written.replace("day 1 ", "").replaceAll("^(\\d):", "0$1:"));
    }

    @Test
    void theLimitIsToldInTheUnitOfTheFile() {
        assertThat(messages("39 ft", "20 m"))
                .containsExactly("pattern.length is `20 m`; it must be from 6 m to 17.7 m. Typical: 36 ft to 44 ft.");
        assertThat(messages("23 mL", "70000 uL"))
                .containsExactly(
                        "pattern.volume is `70000 uL`; it must be from 100 uL to 60000 uL. Typical: 20 mL to 30 mL.");
    }

    @ParameterizedTest
    @CsvSource({"19.7 ft", "58 ft", "6 m", "17.7 m"})
    void aValueAtThePrintedLimitIsAccepted(String limit) {
        assertThat(Scenarios.readWith("39 ft", limit).scenario()).isPresent();
    }

    @Test
    void aRotationMayMoveAndWait() {
        Scenario scenario = Scenarios.readWith(
                        "rotation: stay", "rotation: {design: left, move: 1 pair, every: 2 games}")
                .scenario()
                .orElseThrow();

        assertThat(scenario.designs().get(0)).isEqualTo(new Ring(-1, 2));
    }

    @Test
    void aRotationMayBeListedPairByPair() {
        Scenario scenario = Scenarios.readWith(
                        "rotation: stay", "rotation: {design: listed, table: [[1-2, 3-4], [3-4, 1-2], [1-2, 3-4]]}")
                .scenario()
                .orElseThrow();

        assertThat(scenario.designs().get(0))
                .isEqualTo(new Explicit(List.of(List.of(0, 1), List.of(1, 0), List.of(0, 1))));
        assertThat(scenario.event().rotations().get(0).pairOf(1, 0)).isEqualTo(1);
    }

    @Test
    void closedPairsAreLeftOut() {
        Event event = event("lanes: 1 to 4", "lanes: 1 to 6\n  closed: [3-4]");

        assertThat(event.centre().pairs()).containsExactly(new LanePair(1, 2), new LanePair(5, 6));
    }

    @Test
    void aSquadMayHaveItsOwnGamesPracticeAndNumber() {
        Event event = event(
                "oil: fresh}",
                "oil: fresh}\n  - {id: B, start: \"22:00\", oil: over, games: 2, practice: 5 min, bowlers: 6}");

        assertThat(event.squads().get(1).practiceMs()).isEqualTo(300_000);
        assertThat(event.squads().get(1).groups())
                .extracting(group -> group.bowlers().size())
                .containsExactly(3, 3);
        assertThat(event.rotations().get(1).games()).isEqualTo(2);
        assertThat(event.squads().get(1).conditioning()).isEqualTo(Conditioning.OIL_OVER);
    }

    @Test
    void aSquadMayHaveItsOwnField() {
        Event event = event("oil: fresh}", """
                oil: fresh}
                  - id: B
                    start: "22:00"
                    oil: none
                    field:
                      perSquad: 4
                      hands: {left: 100 %}
                      styles: {power: 100 %}
                      levels: {elite: 100 %}
                      covers: {plastic: 100 %}
                """);

        assertThat(event.squads().get(1).groups())
                .flatExtracting(group -> group.bowlers())
                .hasSize(4)
                .extracting(Bowler::hand)
                .containsOnly(Hand.LEFT);
    }

    @Test
    void ownSurfacesCoversStylesAndLevelsCanBeNamed() {
        Scenario scenario = Scenarios.read(Scenarios.SOUND
                                .replace("hard-synthetic", "old-lane")
                                .replace("urethane: 25 %", "matt: 25 %")
                                .replace("stroker: 50 %", "two-handed: 50 %")
                                .replace("league: 50 %", "junior: 50 %")
                        + """
                        surfaces:
                          old-lane: {dryFriction: 0.22, roughness: 20 microinch, source: our own estimate}
                        covers:
                          matt:
                            frictionFactor: 1
                            roughness: 1 um
                            flareOverlap: 30 %
                            absorption: none
                            source: assumption
                        styles:
                          two-handed:
                            speed: 18 mph
                            revRate: 480 rpm
                            axisRotation: 50 deg
                            axisTilt: 10 deg
                            naturalLaunch: -1 deg
                            source: assumption
                        levels:
                          junior:
                            arrows: 1.4 boards
                            speedShare: 2 %
                            spinShare: 5 %
                            sees: 2 boards
                            deadBand: 1 board
                            gain: 0.5
                            patience: 3 shots
                            drift: 0.2 boards
                            form: 10 %
                            source: assumption
                        """)
                .scenario()
                .orElseThrow();

        assertThat(scenario.event().centre().surface().roughnessUm()).isCloseTo(20 * 0.0254, within(EXACT));
        List<Bowler> bowlers = scenario.event().squads().get(0).groups().stream()
                .flatMap(group -> group.bowlers().stream())
                .toList();
        assertThat(bowlers)
                .filteredOn(bowler -> bowler.style().id().equals("two-handed"))
                .hasSize(4)
                .allSatisfy(bowler ->
                        assertThat(bowler.style().release().speedMps()).isCloseTo(8.04672, within(EXACT)));
        assertThat(bowlers)
                .filteredOn(bowler -> bowler.cover().id().equals("matt"))
                .hasSize(2)
                .allSatisfy(bowler -> assertThat(bowler.cover().absorptionS()).isEqualTo(1e9));
        assertThat(bowlers)
                .filteredOn(bowler -> bowler.level().id().equals("junior"))
                .hasSize(4);
    }

    @Test
    void anotherSeedDrawsAnotherOrderOfTheSameField() {
        byte[] bytes = Scenarios.SOUND.getBytes(StandardCharsets.UTF_8);
        Scenario own = new ScenarioReader(OptionalLong.empty())
                .read("a", bytes)
                .scenario()
                .orElseThrow();
        Scenario other = new ScenarioReader(OptionalLong.of(2))
                .read("a", bytes)
                .scenario()
                .orElseThrow();

        assertThat(other.seed()).isEqualTo(2);
        assertThat(other.event().squads()).isNotEqualTo(own.event().squads());
    }

    @Test
    void defaultsThatAreTakenAreListed() {
        List<Assumption> assumptions = Scenarios.read(
                        Scenarios.SOUND.replace("practice: 10 min\n", "").replace("rotation: stay\n", ""))
                .scenario()
                .orElseThrow()
                .assumptions();

        assertThat(assumptions)
                .extracting(Assumption::name)
                .contains("practice", "rotation", "centre.machines", "pattern.decay", "pace.settle", "spareCover");
        assertThat(assumptions).extracting(Assumption::source).doesNotContain("");
    }

    @ParameterizedTest
    @CsvSource({
        "perSquad: 8, perSquad: 1, pairs_empty",
        "perSquad: 8, perSquad: 7, groups_uneven",
        "lanes: 1 to 4, lanes: 2 to 5, pair_starts_even",
        "'stroker: 50 %, tweener: 50 %', 'stroker: 33.3 %, tweener: 33.3 %, power: 33.3 %', shares_rounded"
    })
    void whatIsOddButPlayableIsAWarningOrARemark(String passage, String replacement, String code) {
        Reading reading = Scenarios.readWith(passage, replacement);

        assertThat(reading.scenario()).isPresent();
        assertThat(reading.notices()).extracting(notice -> notice.code().code()).contains(code);
    }

    @Test
    void onePairThatStaysEmptyIsNotToldOfAsIfItWereSeveral() {
        assertThat(Scenarios.readWith("perSquad: 8", "perSquad: 1").notices())
                .extracting(Notice::message)
                .anySatisfy(message -> assertThat(message).contains("1 group on 2 pairs, so that 1 pair stays empty"));
    }

    @Test
    void aSquadThatWillProbablyStartLateIsAWarning() {
        Reading reading = Scenarios.readWith("oil: fresh}", "oil: fresh}\n  - {id: B, start: \"19:10\", oil: fresh}");

        assertThat(reading.scenario()).isPresent();
        assertThat(reading.notices()).extracting(Notice::code).containsExactly(NoticeCode.SQUAD_MAY_OVERLAP);
    }

    /** Whoever follows all advice is not warned again: a squad that waits makes the next one wait. */
    @Test
    void theAdvisedStartsHoldWhenTheyAreFollowed() {
        String squads =
                "oil: fresh}\n  - {id: B, start: \"19:10\", oil: fresh}\n  - {id: C, start: \"20:30\", oil: none}";
        Reading reading = Scenarios.readWith("oil: fresh}", squads);
        Pattern advice = Pattern.compile("Start at (\\S+) or later");
        String followed = squads;
        for (Notice notice : reading.notices()) {
            Matcher start = advice.matcher(notice.message());
            assertThat(start.find()).isTrue();
            followed = followed.replace(notice.value(), start.group(1));
        }

        assertThat(reading.notices())
                .extracting(Notice::code)
                .containsExactly(NoticeCode.SQUAD_MAY_OVERLAP, NoticeCode.SQUAD_MAY_OVERLAP);
        assertThat(Scenarios.readWith("oil: fresh}", followed).notices()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"'19:00', 1", "'23:59', 0", "'01:00', 0", "'day 2 19:00', 1"})
    void aSquadThatIsDoneAfterTheCentreClosesIsNamed(String closes, int times) {
        Reading reading = Scenarios.readWith("  lanes: 1 to 4", "  lanes: 1 to 4\n  closes: \"" + closes + "\"");

        assertThat(reading.scenario()).isPresent();
        assertThat(reading.notices())
                .extracting(Notice::code)
                .containsExactlyElementsOf(Collections.nCopies(times, NoticeCode.ENDS_AFTER_CLOSING));
    }

    /**
     * USBC: Ra 1.27 um for the mean of a model and 1.65 um for a ball (2009), friction 0.32 (2012), absorption 135 s
     * (2020).
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "roughness: 1.4 um, absorption: 420 s | 1 | on average at most 1.27 um (50 microinch) (USBC, from April 2009)",
                "roughness: 2 um, absorption: 420 s   | 1 | at most 1.65 um (65 microinch) (USBC, from April 2009)",
                "grit: 240, absorption: 420 s         | 1 | a roughness Ra of 2.34 um",
                "roughness: 0.7 um, absorption: 100 s | 1 | at least 2 min 15 s (USBC, from August 2020)",
                "roughness: 0.7 um, absorption: 420 s | 1.6 | makes the friction of this cover on dry own-lane 0.3248;"
            })
    void aBallBeyondALimitThatItMayStillKeepIsAWarning(String values, double factor, String says) {
        Reading reading = Scenarios.read(Scenarios.SOUND.replace("hard-synthetic", "own-lane")
                + String.format(Locale.ROOT, """
                covers:
                  mine: {frictionFactor: %s, %s, flareOverlap: 30 %%, source: assumption}
                surfaces:
                  own-lane: {dryFriction: 0.203, roughness: 0.3 um, source: assumption}
                """, factor, values));

        assertThat(reading.scenario()).isPresent();
        assertThat(reading.notices()).extracting(Notice::code).containsExactly(NoticeCode.BEYOND_PUBLISHED_LIMIT);
        assertThat(reading.notices().get(0).message()).contains(says);
    }

    @Test
    void aCoverMayStateItsFinishByGritAndTheBallBeneath() {
        Reading reading = Scenarios.read(Scenarios.SOUND + """
                covers:
                  mine:
                    frictionFactor: 1
                    grit: 2000
                    flareOverlap: 30 %
                    absorption: 420 s
                    rg: 2.48 in
                    differential: 0.060 in
                    diameter: 8.59 in
                    weight: 14 lb
                    source: assumption
                """);

        assertThat(reading.notices()).isEmpty();
        Coverstock cover = reading.scenario().orElseThrow().names().covers().get("mine");
        assertThat(cover.roughnessUm()).isEqualTo(Grits.shipped().roughnessUm(2000));
        assertThat(cover.core().gyrationRadiusM()).isCloseTo(2.48 * 0.0254, within(1e-12));
        assertThat(cover.core().radiusM()).isCloseTo(8.59 / 2 * 0.0254, within(1e-12));
        assertThat(cover.core().massKg()).isCloseTo(6.350, within(0.001));
        assertThat(reading.scenario().orElseThrow().assumptions())
                .contains(new Assumption("covers.mine.roughness", "0.412 um by grit 2000", Grits.SOURCE));
    }

    @Test
    void lanesAreShapedAsMeasuredAndElsewhereByTheSeed() {
        String shaped = """
                  topography:
                    limit: 0.050 in
                    spread: 0.01 in
                    readings:
                      - {lane: 2, at: 40 ft, crown: -0.1 cm}
                      - {lane: 2, at: 20 ft, tilt: 0.050 in}
                """;
        String passage = "surface: hard-synthetic\n";
        Event event = event(passage, passage + shaped);

        assertThat(event.centre().topography(2))
                .isEqualTo(new LaneSurvey(
                        List.of(new Station(20 * 0.3048, 0.050 * 0.0254, 0), new Station(40 * 0.3048, 0, -0.001))));
        assertThat(event.centre().topography(1))
                .isEqualTo(event(passage, passage + shaped).centre().topography(1))
                .isNotEqualTo(event.centre().topography(3));
        assertThat(event("seed: 1", "seed: 2").centre().topography(1)).isEqualTo(Topography.FLAT);
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreAccepted() {
        assertThat(Scenarios.read("\uFEFF" + Scenarios.SOUND.replace("\n", "\r\n"))
                        .scenario())
                .isPresent();
    }

    private static Event event(String passage, String replacement) {
        Reading reading = Scenarios.readWith(passage, replacement);
        assertThat(reading.scenario()).as("%s", reading.notices()).isPresent();
        return reading.scenario().get().event();
    }

    private static List<String> messages(String passage, String replacement) {
        return Scenarios.readWith(passage, replacement).notices().stream()
                .map(Notice::message)
                .toList();
    }

    @Test
    void aRotationThatComesBackToAPairIsNamedWithItsFirstReturn() {
        Reading reading = Scenarios.readWith("rotation: stay", "rotation: right");

        assertThat(reading.scenario()).isPresent();
        assertThat(reading.notices())
                .filteredOn(notice -> notice.code() == NoticeCode.ROTATION_REPEATS_PAIRS)
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.severity()).isEqualTo(Severity.WARNING);
                    assertThat(notice.message())
                            .contains(
                                    "Game 3: group 1 is back on pair 1-2, where it bowled in game 1. And 1 more such");
                });
    }

    @Test
    void aGroupThatAlwaysFollowsTheSameGroupIsRemarkedOn() {
        Reading reading = Scenarios.read(
                Scenarios.SOUND.replace("lanes: 1 to 4", "lanes: 1 to 8").replace("rotation: stay", "rotation: right"));

        assertThat(reading.scenario()).isPresent();
        assertThat(reading.notices()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo(NoticeCode.ROTATION_SAME_PREDECESSOR);
            assertThat(notice.severity()).isEqualTo(Severity.INFO);
            assertThat(notice.message())
                    .contains("Each of the 2 times group 1 takes over a pair from another group, it is from group 2.");
        });
    }

    @Test
    void lawsAreChosenByName() {
        Reading reading =
                Scenarios.read(Scenarios.SOUND + "laws: {friction: exponential-stribeck, split: walker-fetsko}\n");

        assertThat(reading.notices()).isEmpty();
        assertThat(reading.scenario().orElseThrow().event().laws())
                .isEqualTo(new Laws(FrictionModel.EXPONENTIAL_STRIBECK, SplitModel.WALKER_FETSKO));
    }

    @Test
    void aLawThatIsNotChosenIsTheUsualOneAndSaidSo() {
        Scenario scenario = Scenarios.read(Scenarios.SOUND + "laws: {split: none}\n")
                .scenario()
                .orElseThrow();

        assertThat(scenario.event().laws()).isEqualTo(new Laws(FrictionModel.MIXED_LUBRICATION, SplitModel.NONE));
        assertThat(scenario.assumptions())
                .extracting(Assumption::name)
                .contains("laws.friction")
                .doesNotContain("laws.split");
    }
}
