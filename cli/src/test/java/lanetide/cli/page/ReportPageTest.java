package lanetide.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.fairness.FairnessAnswer;
import lanetide.cli.fairness.FairnessJson;
import lanetide.cli.fairness.MeasureWords;
import lanetide.cli.reoil.ReoilJson;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.report.PagePolicy;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.simulate.SimulateJson;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.FairnessStudy;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.fairness.RemedyStudy;
import lanetide.squads.measure.Measurement;
import lanetide.squads.measure.WhatToMeasure;
import lanetide.squads.model.Event;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilResult;
import lanetide.squads.recondition.ReoilStudy;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Playings;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.WearStudy;
import lanetide.squads.watch.Observers;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What stands on the page, without a browser. */
class ReportPageTest {
    private static final WhatToMeasure MEASURE = new WhatToMeasure(
            EffectKind.SQUAD,
            "A",
            1.5,
            List.of(new WhatToMeasure.HangsOn("friction-law", 0.24, true)),
            List.of(new WhatToMeasure.Worth(new Measurement.SquadScore("C"), 0.13)));

    private static final String TWO_SQUADS =
            "  - {id: A, start: \"18:00\", oil: fresh}\n" + "  - {id: B, start: \"21:00\", oil: none}";

    private static Document page;
    private static JsonNode json;
    private static JsonNode fairnessJson;
    private static JsonNode reoilJson;

    @BeforeAll
    static void write() {
        Reading reading = Scenarios.readWith("  - {id: A, start: \"18:00\", oil: fresh}", TWO_SQUADS);
        FilmReel reel = new FilmReel();
        StudyResult study = play(reading.scenario().orElseThrow(), 2, reel);
        Event event = reading.scenario().orElseThrow().event();
        FairnessResult fairness = FairnessStudy.run(
                event, new FairnessPlan(1, FairnessStudy.fewestPlayings(event), 2, true), 1, done -> {});
        ReoilResult reoil = ReoilStudy.run(
                event,
                new ReoilPlan(
                        1,
                        4,
                        6,
                        2,
                        ReoilPlan.DEFAULT_LIMIT_BOARDS,
                        reading.scenario().orElseThrow().policy().costs()),
                1,
                done -> {});
        List<Remedy> remedies = RemedyStudy.run(
                new PossibleEvents(event, 1),
                Set.of(),
                fairness,
                FairnessStudy.fewestPlayings(event),
                reading.scenario().orElseThrow().policy().costs(),
                Execution.on(1),
                done -> {});
        List<WearStudy.Wear> wear = WearStudy.run(new PossibleEvents(event, 1), 1, Execution.on(1), done -> {});
        FairnessAnswer answer = new FairnessAnswer(
                fairness, Optional.empty(), remedies, Optional.of(MEASURE), Optional.empty(), wear, false);
        fairnessJson = JsonMapper.shared().readTree(JsonAnswer.write(FairnessJson.tree(reading, answer)));
        reoilJson = JsonMapper.shared().readTree(ReoilJson.write(reading, reoil, Optional.empty()));
        PageAnswers answers = new PageAnswers(study, Optional.of(answer), Optional.of(reoil));
        page = Jsoup.parse(ReportPage.write(reading, answers, reel, false, List.of()));
        json = JsonMapper.shared().readTree(SimulateJson.write(reading, study));
    }

    @Test
    void thePolicyKnowsEveryStyleAndScriptOfThePageByItsHashAndNothingElse() {
        String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
        List<String> styles = page.select("style").stream().map(Element::data).toList();
        List<String> scripts =
                page.select("script:not([type])").stream().map(Element::data).toList();

        assertThat(scripts).hasSize(2);
        assertThat(policy).isEqualTo(PagePolicy.of(styles, scripts)).doesNotContain("unsafe-inline");
        assertThat(page.select("[style]")).isEmpty();
    }

    /** ISC, as its own project gives it: the notice shall appear in all copies. */
    @Test
    void theChartLibraryHasItsLicenceBesideIt() {
        assertThat(page.select("script:not([type])").first().data().replaceAll("\\s+", " "))
                .contains(
                        "Permission to use, copy, modify, and/or distribute this software for any purpose",
                        "provided that the above copyright notice and this permission notice appear in all copies.",
                        "THE SOFTWARE IS PROVIDED \"AS IS\"");
    }

    private static StudyResult play(Scenario scenario, int replications, FilmReel reel) {
        return EventStudy.run(
                new PossibleEvents(scenario.event(), 1),
                scenario.seed(),
                Playings.fixed(replications),
                Execution.on(1),
                done -> {},
                Observers.of(reel));
    }

    @Test
    void whatTheLeastSureAdvantageHangsOnAndWhatWouldSettleItIsTold() {
        String fairness = page.selectFirst("#fairness").text();
        MeasureWords.hangsOn(MEASURE).forEach(line -> assertThat(fairness).contains(line));
        MeasureWords.worth(MEASURE).forEach(line -> assertThat(fairness).contains(line));
        assertThat(fairness).contains(MeasureWords.least(MEASURE), "24 % of it", "narrows it by 13 %");
        assertThat(fairnessJson.get("hangsOn")).hasSize(1);
    }

    @Test
    void theAnswerInsideThePageIsTheAnswerOfSimulate() {
        assertThat(JsonMapper.shared().readTree(page.selectFirst("#answer").data()))
                .isEqualTo(json);
    }

    @Test
    void everyAdvantageIsThatOfTheAnswerOfFairness() {
        assertThat(JsonMapper.shared()
                        .readTree(page.selectFirst("#fairness-answer").data()))
                .isEqualTo(fairnessJson);
        assertThat(page.select("#verdict li").get(0).text())
                .contains(fairnessJson.get("verdict").asString());
        Map<String, Integer> rowsOfKind = new HashMap<>();
        for (JsonNode effect : fairnessJson.get("effects")) {
            String kind = effect.get("kind").asString();
            List<String> row = rows("effects-" + kind).get(rowsOfKind.merge(kind, 1, Integer::sum) - 1);
            assertThat(row.get(0)).isEqualTo(effect.get("id").asString());
            same(row.get(2), effect.get("advantagePinsPerGame"));
            same(row.get(3).split(" to ", -1)[0], effect.get("ci90").get("low"));
            same(row.get(3).split(" to ", -1)[1], effect.get("ci90").get("high"));
            assertThat(row.get(4)).isEqualTo(effect.get("verdict").asString());
        }
    }

    @Test
    void whatWearDoesToStylesIsThatOfTheAnswerOfFairnessAndItsPartsMakeTheWhole() {
        JsonNode wear = fairnessJson.get("wear");
        assertThat(wear.size()).isPositive();
        for (String unit : List.of("Strikes", "Boards")) {
            List<List<String>> rows = rows("wear-" + unit.toLowerCase(Locale.ROOT));
            assertThat(rows).hasSameSizeAs(wear);
            for (int i = 0; i < rows.size(); i++) {
                assertThat(rows.get(i).get(0))
                        .isEqualTo(wear.get(i).get("squad").asString());
                double sum = 0;
                List<String> parts = List.of("all", "heads", "midLane", "pastEnd", "together");
                for (int part = 0; part < parts.size(); part++) {
                    double told = wear.get(i).get(parts.get(part) + unit).asDouble();
                    assertThat(Double.parseDouble(rows.get(i).get(part + 2))).isEqualTo(told);
                    sum += part == 0 ? -told : told;
                }
                assertThat(sum).isCloseTo(0, within(1e-9));
            }
        }
        assertThat(page.select("#fairness p").eachText())
                .anyMatch(text -> text.startsWith("Squad B: ") && text.contains(" strikes in 100 for "));
    }

    @Test
    void everyRemedyIsThatOfTheAnswerOfFairness() {
        JsonNode remedies = fairnessJson.get("remedies");
        List<List<String>> rows = rows("remedies");
        assertThat(rows).hasSameSizeAs(remedies).hasSizeGreaterThan(2);
        for (int i = 0; i < rows.size(); i++) {
            JsonNode remedy = remedies.get(i);
            assertThat(rows.get(i).get(1)).isEqualTo(remedy.get("isChoice").asBoolean() ? "*" : "");
            assertThat(rows.get(i).get(0)).isEqualTo(remedy.get("change").asString());
            same(rows.get(i).get(2), remedy.get("expectedSpreadPins"));
            same(rows.get(i).get(3), remedy.get("gainPins"));
            same(rows.get(i).get(5), remedy.get("extraMinutes"));
            same(rows.get(i).get(6), remedy.get("extraCost"));
        }
    }

    @Test
    void thePageOpensWithThreeAnswersInALineEachAndThenThePictureOfTheDay() {
        assertThat(page.select("#verdict dt").eachText()).containsExactly("Is it fair?", "Oil again?", "Late?");
        List<String> answers = page.select("#verdict dd").eachText();
        assertThat(answers.get(0))
                .startsWithIgnoringCase(fairnessJson.get("verdict").asString());
        assertThat(answers.get(1)).startsWith("Oil all lanes again after ");
        assertThat(answers.get(2)).startsWith("When squad B leaves, lines leave the oil ");
        assertThat(answers).allSatisfy(answer -> assertThat(answer).hasSizeLessThan(170));
        assertThat(page.select("#verdict > *").eachAttr("class")).startsWith("answers", "caution");
        assertThat(page.select("#verdict figure").attr("data-name")).isEqualTo("windows");
        assertThat(JsonMapper.shared()
                        .readTree(page.selectFirst("#data").data())
                        .at("/starts/B")
                        .asString())
                .isEqualTo("21:00");
    }

    /** Long tables are folded; each wide one can stand as lists on a phone, every cell with the head of its column. */
    @Test
    void longTablesAreFoldedAndWideOnesKnowTheirHeads() {
        for (Element table : page.select("table[id]:not(#lane-numbers)")) {
            int rows = table.select("tbody tr").size();
            assertThat(table.closest("details") != null).as(table.id()).isEqualTo(rows > 14);
            List<String> heads =
                    table.select("thead tr > *").stream().map(Element::text).toList();
            if (heads.size() > 4) {
                for (Element row : table.select("tbody tr")) {
                    assertThat(row.select("td").stream().map(cell -> cell.attr("data-head")))
                            .as(table.id())
                            .containsExactlyElementsOf(heads.subList(1, heads.size()));
                }
            }
        }
    }

    @Test
    void theShortAnswerStaysShort() {
        assertThat(page.select("#verdict li")).hasSizeBetween(5, 10);
    }

    @Test
    void everyPointOfTheCurveIsThatOfTheAnswerOfReoil() {
        assertThat(JsonMapper.shared()
                        .readTree(page.selectFirst("#reoil-answer").data()))
                .isEqualTo(reoilJson);
        for (int i = 0; i < reoilJson.get("curve").size(); i++) {
            JsonNode point = reoilJson.get("curve").get(i);
            List<String> row = rows("reoil-curve").get(i);
            same(row.get(1), point.get("windowShiftBoards"));
            same(row.get(2), point.get("windowWidthBoards"));
            same(row.get(4), point.get("spreadPins"));
            same(row.get(5), point.get("costPerGame"));
        }
    }

    @Test
    void everyScoreIsThatOfTheAnswer() {
        List<List<String>> rows = rows("scores");
        for (int s = 0; s < json.get("squads").size(); s++) {
            JsonNode squad = json.get("squads").get(s);
            assertThat(rows.get(s).get(0)).isEqualTo(squad.get("id").asString());
            same(rows.get(s).get(1), squad.get("meanScore"));
            String[] interval = rows.get(s).get(2).split(" to ", -1);
            same(interval[0], squad.get("meanScoreCi95").get("low"));
            same(interval[1], squad.get("meanScoreCi95").get("high"));
            for (int game = 0; game < squad.get("games").asInt(); game++) {
                same(
                        rows("scores-by-game").get(game).get(s + 1),
                        squad.get("meanScoreByGame").get(game));
            }
        }
    }

    @Test
    void everyTimeIsThatOfTheAnswer() {
        int told = 0;
        for (int squad = 0; squad < json.get("squads").size(); squad++) {
            String id = json.get("squads").get(squad).get("id").asString();
            List<JsonNode> entries = json.get("timetable")
                    .valueStream()
                    .filter(entry -> entry.get("squad").asString().equals(id))
                    .toList();
            List<List<String>> rows = rows("timetable-" + (squad + 1));
            assertThat(rows).hasSameSizeAs(entries);
            for (int i = 0; i < rows.size(); i++) {
                assertThat(rows.get(i).get(1))
                        .isEqualTo(entries.get(i).get("start").asString());
                assertThat(rows.get(i).get(3))
                        .isEqualTo(entries.get(i).get("end").asString());
            }
            told += rows.size();
        }
        assertThat(told).isEqualTo(json.get("timetable").size());
    }

    @Test
    void everyNumberAboutLanesIsThatOfTheAnswer() {
        List<List<String>> lanes = rows("lane-by-lane");
        for (int l = 0; l < json.get("lanes").size(); l++) {
            JsonNode lane = json.get("lanes").get(l);
            assertThat(lanes.get(l).get(0)).isEqualTo(lane.get("lane").asString());
            for (int s = 0; s < 2; s++) {
                JsonNode last = game(lane, s == 0 ? "A" : "B", 3);
                same(lanes.get(l).get(3 * s + 1), last.get("volumeMl"));
                same(lanes.get(l).get(3 * s + 2), last.get("headUnitsLow"));
                same(lanes.get(l).get(3 * s + 3), last.get("carrydownMl"));
            }
        }
        for (int game = 0; game <= 3; game++) {
            List<String> oil = rows("oil-2").get(game);
            same(oil.get(1), mean(game, "volumeMl"));
            same(oil.get(2), mean(game, "headUnits"));
            same(oil.get(3), mean(game, "headUnitsLow"));
            same(oil.get(4), mean(game, "carrydownMl"));
        }
    }

    @Test
    void everyMillilitreOfTheAccountIsThatOfTheAnswer() {
        List<String> fields = List.of("appliedMl", "onLanesMl", "wipedMl", "absorbedMl", "onBallsMl", "strippedMl");
        List<List<String>> rows = rows("oil-account");
        for (int i = 0; i < fields.size(); i++) {
            same(rows.get(i).get(1), json.get("oil").get(fields.get(i)));
        }
    }

    /** The middle windows over the lanes that the charts draw and the tables list, from the windows of the answer. */
    @Test
    void everyWindowIsTheMedianOfTheAnswersWindows() {
        JsonNode data = JsonMapper.shared().readTree(page.selectFirst("#data").data());
        int kind = 0;
        for (JsonNode drawn : data.get("windows")) {
            for (JsonNode point : drawn.get("points")) {
                List<Double> lows = new ArrayList<>();
                for (JsonNode lane : json.get("lanes")) {
                    JsonNode window = game(
                                    lane,
                                    point.get("squad").asString(),
                                    point.get("game").asInt())
                            .get("windows")
                            .get(kind);
                    if (!window.get("low").isNull()) {
                        lows.add(window.get("low").asDouble());
                    }
                }
                lows.sort(null);
                double median = (lows.get((lows.size() - 1) / 2) + lows.get(lows.size() / 2)) / 2;
                assertThat(point.get("low").asDouble()).isEqualTo(median, within(0.0101));
                if (point.get("squad").asString().equals("B")) {
                    String cell = rows("windows-2")
                            .get(kind)
                            .get(1 + point.get("game").asInt())
                            .split("-", -1)[0];
                    same(cell, point.get("low"));
                }
            }
            kind++;
        }
    }

    @Test
    void thePageNamesWhatItWasMadeFromAndWhatToKeepInMind() {
        assertThat(page.select("#marks").text())
                .contains(
                        json.get("scenarioSha256").asString(),
                        json.get("version").asString());
        for (JsonNode caution : json.get("cautions")) {
            assertThat(page.select("#basis").text()).contains(caution.asString());
        }
        for (JsonNode assumption : json.get("assumptions")) {
            assertThat(page.select("#assumptions").text())
                    .contains(
                            assumption.get("value").asString(),
                            assumption.get("source").asString());
        }
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.scenario.Scenarios#hostileNames")
    void aHostileNameStandsOnThePageAsText(String name) {
        Reading reading = Scenarios.readWith("name: Practice night", "name: " + Scenarios.quoted(name));
        FilmReel reel = new FilmReel();
        StudyResult study = play(reading.scenario().orElseThrow(), 1, reel);

        Document hostile = Jsoup.parse(ReportPage.write(reading, PageAnswers.of(study), reel, false, List.of()));

        assertThat(hostile.selectFirst("h1").text()).isEqualTo(name);
        assertThat(hostile.title()).startsWith(name);
        assertThat(hostile.select("script")).hasSameSizeAs(page.select("script"));
        assertThat(hostile.select("img, iframe, object, b")).isEmpty();
    }

    private static JsonNode game(JsonNode lane, String squad, int afterGame) {
        for (JsonNode game : lane.get("games")) {
            if (game.get("squad").asString().equals(squad)
                    && game.get("afterGame").asInt() == afterGame) {
                return game;
            }
        }
        throw new AssertionError("no game " + afterGame + " of " + squad);
    }

    private static JsonNode mean(int game, String field) {
        double sum = 0;
        for (JsonNode lane : json.get("lanes")) {
            sum += game(lane, "B", game).get(field).asDouble();
        }
        return JsonMapper.shared().valueToTree(sum / json.get("lanes").size());
    }

    /** A cell is the number rounded once more: it may be off by half of the last place of both. */
    private static void same(String cell, JsonNode number) {
        int point = cell.indexOf('.');
        int decimals = point < 0 ? 0 : cell.length() - point - 1;
        assertThat(Double.parseDouble(cell))
                .isEqualTo(number.asDouble(), within(0.5 * Math.pow(10, -decimals) + 0.006));
    }

    private static List<List<String>> rows(String table) {
        List<List<String>> rows = new ArrayList<>();
        for (Element row : page.select("#" + table + " tbody tr")) {
            rows.add(row.select("th, td").stream().map(Element::text).toList());
        }
        assertThat(rows).as(table).isNotEmpty();
        return rows;
    }
}
