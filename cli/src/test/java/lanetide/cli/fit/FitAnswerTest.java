package lanetide.cli.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanetide.cli.report.Cautions;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.fit.Explanation;
import lanetide.squads.fit.FitResult;
import lanetide.squads.fit.Reading;
import lanetide.squads.fit.Suspicion;
import lanetide.squads.measured.When;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One fit in text, JSON and a table. */
class FitAnswerTest {
    private static final double NINE_IN_TEN = 1.645;
    private static final int ASKED_FIRST = 7;

    @TempDir
    static Path folder;

    private static FitAnswer answer;
    private static String text;
    private static JsonNode json;

    @BeforeAll
    static void fits() throws IOException {
        answer = SmallDay.told(folder);
        text = FitText.write(answer, false);
        json = JsonMapper.shared().readTree(FitJson.write(answer));
    }

    @AfterAll
    static void leaveTheMachine() {
        Locale.setDefault(Locale.ROOT);
    }

    @Test
    void theThreadsChangeNothing() throws IOException {
        FitAnswer again = SmallDay.fitted(folder, 2);

        assertThat(again.result()).isEqualTo(answer.result());
    }

    @Test
    void everyKindOfReadingIsAmongThem() {
        assertThat(readings().map(one -> one.get("kind").asString()).distinct())
                .containsExactlyInAnyOrder(
                        "tapes on fresh oil",
                        "tapes after play",
                        "balls at the pins",
                        "lines in practice",
                        "scores by game",
                        "ends of games");
        assertThat(json.get("days").get(0).toString())
                .contains("\"scenario\":\"small.yaml\"", "\"tapes\":6,\"balls\":2,\"scores\":4,\"ends\":2");
    }

    /** Lane 1 has too much oil in the heads, so a tape there is drawn beyond what was expected. */
    @Test
    void everyTapeIsDrawnOnceWithWhatWasExpectedOfIt() {
        List<String> drawn = text.lines()
                .filter(line -> line.contains(" board "))
                .filter(line -> line.chars().filter(c -> c == '|').count() == 2)
                .toList();
        List<JsonNode> tapes = readings()
                .filter(one -> one.get("kind").asString().startsWith("tapes"))
                .toList();

        assertThat(drawn).hasSameSizeAs(tapes);
        for (JsonNode tape : tapes) {
            double read = tape.get("read").asDouble();
            double mean = tape.get("expected").get("mean").asDouble();
            double half = NINE_IN_TEN * tape.get("expected").get("deviation").asDouble();
            String sign = Math.abs(read - mean) <= half ? "o" : "X";
            String bar = String.format(Locale.ROOT, "| %5.1f", read);
            assertThat(drawn)
                    .anySatisfy(line -> assertThat(line)
                            .endsWith(bar)
                            .contains(sign)
                            .doesNotContain(sign.equals("o") ? "X" : "o |"));
        }
        assertThat(drawn).anySatisfy(line -> assertThat(line).contains("8 ft").contains("38.0"));
    }

    @Test
    void theTableHasTheNumbersOfTheJson() {
        List<String> rows = FitCsv.write(answer.result()).lines().toList();

        assertThat(rows.get(0))
                .isEqualTo(
                        "kind,where,unit,read,expected,expectedDeviation,fitted,fittedDeviation,missBefore,missAfter");
        assertThat(rows).hasSize(1 + json.get("readings").size());
        for (int row = 1; row < rows.size(); row++) {
            JsonNode reading = json.get("readings").get(row - 1);
            assertThat(rows.get(row)).startsWith(reading.get("kind").asString());
            assertThat(numbers(rows.get(row)))
                    .containsExactlyElementsOf(Stream.of(
                                    reading.get("read"),
                                    reading.get("expected").get("mean"),
                                    reading.get("expected").get("deviation"),
                                    reading.get("fitted").get("mean"),
                                    reading.get("fitted").get("deviation"),
                                    reading.get("missBefore"),
                                    reading.get("missAfter"))
                            .map(JsonNode::asDouble)
                            .toList());
        }
    }

    @Test
    void theTextHasTheNumbersOfTheJson() {
        long agree = readings()
                .filter(one -> Math.abs(one.get("missBefore").asDouble()) <= NINE_IN_TEN)
                .count();
        JsonNode farthest = readings()
                .reduce((a, b) -> Math.abs(a.get("missAfter").asDouble())
                                >= Math.abs(b.get("missAfter").asDouble())
                        ? a
                        : b)
                .orElseThrow();

        assertThat(text)
                .startsWith(
                        "Small day\n" + agree + " of " + json.get("readings").size() + " readings lie");
        assertThat(text.lines()
                        .filter(line ->
                                line.startsWith("  " + farthest.get("where").asString()))
                        .findFirst())
                .hasValueSatisfying(line -> assertThat(line.replaceAll(" +", " "))
                        .endsWith(String.format(
                                Locale.ROOT,
                                "(%s) %.1f %s %s %+.1f",
                                farthest.get("unit").asString(),
                                farthest.get("read").asDouble(),
                                plusMinus(farthest.get("expected")),
                                plusMinus(farthest.get("fitted")),
                                farthest.get("missAfter").asDouble())));
        json.get("fresh")
                .forEach(lane ->
                        assertThat(unwrapped(text)).contains(lane.get("text").asString()));
    }

    @Test
    void whatItChangesIsToldBeforeAndAfter() {
        for (JsonNode change : json.get("changes")) {
            String what = change.get("what").asString();
            String line = text.lines()
                    .filter(each -> each.strip().startsWith(what))
                    .findFirst()
                    .orElseThrow();
            List<Double> told = Pattern.compile("-?\\d+(\\.\\d)?")
                    .matcher(line.substring(line.indexOf(what) + what.length()))
                    .results()
                    .map(number -> Double.parseDouble(number.group()))
                    .toList();
            double digit = change.get("unit").asString().equals("games") ? 1 : 0.1;
            List<Double> exact = Stream.of(change.get("before"), change.get("after"))
                    .flatMap(FitAnswerTest::numbers)
                    .toList();

            assertThat(told).hasSameSizeAs(exact);
            for (int i = 0; i < told.size(); i++) {
                assertThat(told.get(i)).isCloseTo(exact.get(i), within(digit / 2 + 0.001));
            }
        }
        assertThat(json.get("changes"))
                .extracting(one -> one.get("what").asString())
                .contains("squad A scores (pins)", "oil again after (games on a pair)");
    }

    private static Stream<Double> numbers(JsonNode said) {
        JsonNode ends = said.get("interval");
        return ends.isNull()
                ? Stream.of(said.get("mean").asDouble())
                : Stream.of(
                        said.get("mean").asDouble(),
                        ends.get("low").asDouble(),
                        ends.get("high").asDouble());
    }

    @Test
    void whatWasLearntStandsInTheTextAndTheRestIsCounted() {
        List<FitResult.Learnt> learnt = new ArrayList<>(answer.result().learnt());
        learnt.replaceAll(one -> new FitResult.Learnt(one.unknown(), one.before(), one.after(), 0.09));
        assertThat(unwrapped(learning(learnt)))
                .contains("Nothing: your lanes say no more than published facts do.")
                .contains(
                        " and " + (learnt.size() - ASKED_FIRST) + " more things, many of them about bowlers and balls");

        learnt.replaceAll(one -> one.unknown().id().equals("dry-friction")
                ? new FitResult.Learnt(
                        one.unknown(),
                        new FitResult.Points(0.19, 0.22, 0.25),
                        new FitResult.Points(0.21, 0.2222, 0.23),
                        0.64)
                : one);
        String told = learning(learnt);

        assertThat(told).containsPattern("friction of the dry lane +0.19 to 0.25 +0.21 to 0.23 +64 %\n");
        assertThat(unwrapped(told))
                .contains("Your lanes say next to nothing about friction under thick oil, how thick the oil is at the")
                .contains(" and " + (learnt.size() - ASKED_FIRST) + " more things")
                .doesNotContain("Nothing: your lanes");
    }

    @ParameterizedTest
    @CsvSource({
        "20, 0, That is as it should be",
        "18, 2, That is as it should be",
        "4, 2, That may be chance",
        "1, 3, That is too few",
        "80, 20, That is fewer than it should be",
        "60, 40, That is too few"
    })
    void howManyAgreeIsJudgedByHowManyThereAre(int agree, int others, String verdict) {
        FitResult.Check one = answer.result().checks().get(0);
        List<FitResult.Check> checks = new ArrayList<>();
        for (int i = 0; i < agree + others; i++) {
            double mean = one.reading().observed() + (i < agree ? 0.5 : 2);
            checks.add(new FitResult.Check(one.reading(), new FitResult.Said(mean, 1), new FitResult.Said(mean, 1)));
        }

        String told = FitText.write(with(checks, answer.result().learnt(), List.of()), false);

        assertThat(told.lines().skip(1))
                .startsWith(agree + " of " + (agree + others)
                        + " readings lie where the model expected them. If all is right, nine in ten do.");
        assertThat(told).contains("\n  " + verdict);
    }

    @Test
    void whatDoesNotBelongIsToldInSentences() {
        When fresh = new When("A", 0);
        When worn = new When("A", 2);
        Reading first = answer.result().checks().get(0).reading();
        Map<Explanation, String> told = Map.of(
                new Explanation.LanesSwapped(fresh, 1, 2),
                "The tapes of lanes 1 and 2, as squad A found it, look as if they were each other's.",
                new Explanation.SidesSwapped(worn, 2),
                "The boards of lane 2, after 2 games of squad A, look as if they were counted from the left-hand gutter.",
                new Explanation.OtherUnit(fresh, 3.937),
                "The tapes as squad A found it look as if they were in units and were written as micrometres.",
                new Explanation.OtherTime(worn, fresh),
                "The tapes said to be after 2 games of squad A look as if they were taken as squad A found it.",
                new Explanation.OtherPattern(fresh, -2 * LaneGeometry.FOOT_M),
                "The tapes as squad A found it look as if they were taken on a pattern about 2 ft shorter than that of the"
                        + " scenario.",
                new Explanation.OneReading(first),
                "One reading looks wrong by itself: lane 1, board 20 at 8 ft, fresh.");

        told.forEach((what, words) -> {
            assertThat(doubted(new Suspicion(0, what, 9, Suspicion.Verdict.NAMED)))
                    .contains("Readings that do not belong - " + words + " Then all the readings fit together better");
            assertThat(doubted(new Suspicion(0, what, 9, Suspicion.Verdict.ONE_OF_SEVERAL)))
                    .contains("cannot say for sure what. It may be this: - " + words);
            assertThat(doubted(new Suspicion(0, what, 9, Suspicion.Verdict.NOT_SHOWN)))
                    .doesNotContain(words);
        });
    }

    @Test
    void theTextFitsAPageAndEndsWithTheCautions() {
        List<FitResult.Learnt> learnt = new ArrayList<>(answer.result().learnt());
        learnt.replaceAll(one -> new FitResult.Learnt(one.unknown(), one.before(), one.after(), 0.5));
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(text).doesNotContain("NaN", "null", "Infinity");
        Cautions.ALL.forEach(caution -> assertThat(unwrapped(text)).contains(caution));
        for (int moved = 0; moved < learnt.size(); moved++) {
            String all = learning(learnt);
            assertThat(all.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
            assertThat(unwrapped(all))
                    .contains("Of " + (learnt.size() - 8) + " more things a little was learnt.")
                    .doesNotContain("say next to nothing");
            Collections.rotate(learnt, 1);
        }
    }

    /** The model holds it in metres. */
    @Test
    void howFarLanesAreOutOfLevelIsToldInMillimetres() {
        List<FitResult.Learnt> learnt = new ArrayList<>(answer.result().learnt());
        learnt.replaceAll(one -> new FitResult.Learnt(
                one.unknown(),
                new FitResult.Points(0.0001, 0.0002, 0.0004),
                new FitResult.Points(0.00015, 0.0002, 0.00035),
                one.unknown().id().equals("lane-tilt") ? 0.5 : 0));

        assertThat(learning(learnt))
                .containsPattern("how far lanes are out of level \\(mm\\) +0.1 to 0.4 +0.15 to 0.35 +50 %\n");
    }

    @Test
    void inMetresOnlyTheDistancesChange() {
        String metric = FitText.write(answer, true);

        assertThat(text).contains("board 20 at 22 ft").doesNotContain(" 6.7 m");
        assertThat(metric).contains("board 20 at 6.7 m").doesNotContain(" ft");
    }

    @Test
    void nothingFollowsTheLanguageOfTheMachine() {
        String table = FitCsv.write(answer.result());
        for (String locale : List.of("ar-EG", "th-TH-u-nu-thai", "tr-TR")) {
            Locale.setDefault(Locale.forLanguageTag(locale));

            assertThat(FitText.write(answer, false)).isEqualTo(text);
            assertThat(JsonMapper.shared().readTree(FitJson.write(answer))).isEqualTo(json);
            assertThat(FitCsv.write(answer.result())).isEqualTo(table);
        }
    }

    private static String learning(List<FitResult.Learnt> learnt) {
        return FitText.write(with(answer.result().checks(), learnt, List.of()), false);
    }

    private static String doubted(Suspicion suspicion) {
        return unwrapped(
                FitText.write(with(answer.result().checks(), answer.result().learnt(), List.of(suspicion)), false));
    }

    private static FitAnswer with(
            List<FitResult.Check> checks, List<FitResult.Learnt> learnt, List<Suspicion> suspicions) {
        FitResult was = answer.result();
        return new FitAnswer(
                answer.reading(),
                answer.days(),
                new FitResult(
                        was.sets(), checks, learnt, was.fresh(), suspicions, was.otherLawBefore(), was.otherLawAfter()),
                answer.changes());
    }

    private static Stream<JsonNode> readings() {
        return json.get("readings").valueStream();
    }

    private static String plusMinus(JsonNode said) {
        return String.format(
                Locale.ROOT,
                "%.1f +- %.1f",
                said.get("mean").asDouble(),
                NINE_IN_TEN * said.get("deviation").asDouble());
    }

    private static List<Double> numbers(String row) {
        String[] cells = row.replaceAll("\"[^\"]*\"", "").split(",", -1);
        return Stream.of(cells).skip(cells.length - 7).map(Double::valueOf).toList();
    }

    private static String unwrapped(String words) {
        return words.replaceAll("\\s+", " ");
    }
}
