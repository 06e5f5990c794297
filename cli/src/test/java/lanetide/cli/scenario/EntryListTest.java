package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.check.CheckText;
import lanetide.cli.scenario.entries.DrawnTraits;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.scenario.key.UsualField;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Squad;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entry lists that say little: a name, an average, a squad. */
class EntryListTest {
    private static final String HEAD =
            Scenarios.SOUND.substring(0, Scenarios.SOUND.indexOf("field:")).replace("lanes: 1 to 4", "lanes: 1 to 8");
    private static final String TWO_SQUADS =
            HEAD.replace(", oil: fresh}", ", oil: fresh}\n  - {id: B, start: \"22:00\", oil: over}");
    private static final String LIST = "entries: list.csv\n";
    private static final String MINE = "Name,Average\nAnchor,219\nLeadoff,180\nThird,140\nFourth,240\n";

    @TempDir
    Path folder;

    @Test
    void aNameAndAnAverageAreEnough() throws IOException {
        Reading reading = read(HEAD + LIST, MINE);

        assertThat(reading.count(Severity.ERROR)).isZero();
        assertThat(bowlers(reading))
                .extracting(Bowler::id, bowler -> bowler.level().id())
                .containsExactly(
                        tuple("Anchor", "scratch"),
                        tuple("Leadoff", "league"),
                        tuple("Third", "casual"),
                        tuple("Fourth", "elite"));
    }

    @Test
    void whatIsDrawnAndToldByAveragesIsToldOnceWithItsNumbers() throws IOException {
        Reading reading = read(HEAD + LIST, "Name,Average,Level,Hand\nAnchor,219,,R\nLeadoff,180,,\nThird,,casual,L\n");

        assertThat(assumptions(reading))
                .filteredOn(taken -> taken.name().startsWith("entries"))
                .extracting(Assumption::name, Assumption::value, Assumption::source)
                .containsExactly(
                        tuple(
                                "entries.level",
                                "level of 2 of 3 bowlers by average: elite from 220 pins, scratch from 200 pins, league"
                                        + " from 180 pins, else casual",
                                "O'Keefe, US Bowler, July 2012"),
                        tuple(
                                "entries.hand",
                                "hand of 1 of 3 bowlers drawn by shares: right 88 %, left 12 %",
                                "assumption"),
                        tuple(
                                "entries.style",
                                "style of 3 of 3 bowlers drawn by shares: straight 20 %, stroker 35 %, tweener 30 %,"
                                        + " power 15 %",
                                "assumption"),
                        tuple(
                                "entries.cover",
                                "cover of 3 of 3 bowlers drawn by shares: plastic 10 %, urethane 10 %, weak-reactive"
                                        + " 25 %, medium-reactive 40 %, strong-reactive 15 %",
                                "assumption"));
        assertThat(CheckText.write("event.yaml", reading, false, false).replaceAll("\\s+", " "))
                .contains(
                        "Entries: 3 bowlers; level of 2 by the average; hand of 1 drawn by shares; style of 3 drawn by"
                                + " shares; cover of 3 drawn by shares.");
    }

    @Test
    void aListThatSaysAllHasNothingDrawn() throws IOException {
        Reading reading = read(HEAD + LIST, "Name,Hand,Style,Level,Ball\nAnchor,R,tweener,league,urethane\n");

        assertThat(reading.scenario().orElseThrow().drawn()).isEqualTo(new DrawnTraits(1, 0, java.util.Map.of()));
        assertThat(CheckText.write("event.yaml", reading, false, false)).doesNotContain("Entries:");
    }

    @Test
    void theScenarioSetsTheLimitsOfLevels() throws IOException {
        Reading reading = read(
                HEAD + LIST + "bowlers: {levelFrom: {scratch: 210 pins, league: 190 pins, elite: 230 pins}}\n", MINE);

        assertThat(bowlers(reading))
                .extracting(bowler -> bowler.level().id())
                .containsExactly("scratch", "league", "league", "elite");
        assertThat(assumptions(reading))
                .filteredOn(taken -> taken.name().equals("entries.level"))
                .extracting(Assumption::value, Assumption::source)
                .containsExactly(tuple(
                        "level of 4 of 4 bowlers by average: elite from 230 pins, scratch from 210 pins, else league",
                        "the scenario"));
    }

    @Test
    void limitsThatAreNoneAreRefusedWithOrWithoutAList() {
        assertThat(Scenarios.read(Scenarios.SOUND + "bowlers: {levelFrom: {scratch: 200 pins, league: 200 pins}}\n")
                        .notices())
                .extracting(Notice::code, Notice::field)
                .containsExactly(tuple(NoticeCode.IMPOSSIBLE_COMBINATION, "bowlers.levelFrom.league"));
        assertThat(Scenarios.read(Scenarios.SOUND + "bowlers: {levelFrom: {pro: 200 pins}}\n")
                        .notices())
                .extracting(Notice::code)
                .containsExactly(NoticeCode.UNKNOWN_NAME);
        assertThat(Scenarios.read(Scenarios.SOUND + "bowlers: {levelFrom: {}}\n")
                        .notices())
                .extracting(Notice::code)
                .containsExactly(NoticeCode.EMPTY_VALUE);
    }

    @Test
    void sharesOfAFieldBesideTheEntriesAreDrawnBy() throws IOException {
        String field = "field: {styles: {power: 100 %}, levels: {elite: 100 %}, hands: {left: 100 %}, slow: 100 %,"
                + " slowTempo: 200 %, spareCover: urethane, secondCover: plastic}\n";

        Reading reading = read(HEAD + LIST + field, "Name\nAnchor\nLeadoff\n");

        assertThat(reading.notices()).noneMatch(notice -> notice.severity() == Severity.ERROR);
        assertThat(bowlers(reading)).hasSize(2).allSatisfy(bowler -> {
            assertThat(bowler.style().id()).isEqualTo("power");
            assertThat(bowler.level().id()).isEqualTo("elite");
            assertThat(bowler.hand()).isEqualTo(Hand.LEFT);
            assertThat(bowler.tempo()).isEqualTo(2);
            assertThat(bowler.spareCover().id()).isEqualTo("urethane");
            assertThat(bowler.secondCover().orElseThrow().id()).isEqualTo("plastic");
        });
        assertThat(assumptions(reading))
                .filteredOn(taken -> taken.name().startsWith("entries"))
                .extracting(Assumption::name, Assumption::source)
                .contains(
                        tuple("entries.style", "shares of the scenario's field"), tuple("entries.cover", "assumption"));
    }

    @Test
    void withoutFieldsLevelsABowlerNeedsAnAverageOrALevel() throws IOException {
        assertThat(read(HEAD + LIST, "Name,Average\nAnchor,190\nLeadoff,\nThird,\n")
                        .notices())
                .extracting(Notice::code, Notice::field)
                .containsExactly(
                        tuple(NoticeCode.MISSING_KEY, "entries[2].level"),
                        tuple(NoticeCode.MISSING_KEY, "entries[3].level"));
        assertThat(read(HEAD + LIST, "Name\nAnchor\n").notices())
                .extracting(Notice::code)
                .containsExactly(NoticeCode.COLUMN_MISSING);
    }

    @Test
    void whatEntriesSayComesBeforeAnyShare() throws IOException {
        Reading reading =
                read(HEAD + LIST + "field: {styles: {power: 100 %}}\n", "Name,Avg,Style\nAnchor,190,stroker\n");

        assertThat(bowlers(reading)).extracting(bowler -> bowler.style().id()).containsExactly("stroker");
    }

    /** Every bowler has streams of his own: a shorter list draws the same for those who are left. */
    @Test
    void oneEntryMoreChangesNobodyElse() throws IOException {
        List<String> all = IntStream.range(0, 40)
                .mapToObj(i -> "Bowler " + i + "," + (150 + i))
                .toList();
        List<String> fewer = all.stream().filter(row -> !row.contains("7")).toList();

        List<Bowler> many = bowlers(read(HEAD + LIST, table(all)));
        List<Bowler> some = bowlers(read(HEAD + LIST, table(fewer)));

        assertThat(some).hasSize(fewer.size()).hasSizeLessThan(many.size()).isSubsetOf(many);
    }

    private static String table(List<String> rows) {
        return "Name,Average\n" + String.join("\n", rows) + "\n";
    }

    /** Of 40 bowlers every style is drawn, and another seed draws others. */
    @Test
    void drawsFollowTheSeedAndDiffer() throws IOException {
        String list = table(IntStream.range(0, 40)
                .mapToObj(i -> "Bowler " + i + "," + (150 + i))
                .toList());

        List<Bowler> bowlers = bowlers(read(HEAD + LIST, list));

        assertThat(bowlers(read(HEAD + LIST, list))).isEqualTo(bowlers);
        assertThat(bowlers(read(HEAD.replace("seed: 1", "seed: 2") + LIST, list)))
                .isNotEqualTo(bowlers);
        assertThat(bowlers.stream().map(bowler -> bowler.style().id()).distinct())
                .containsExactlyInAnyOrderElementsOf(UsualField.STYLES.keySet());
    }

    /** Of 400 bowlers 352 are right-handed by the shares; six standard deviations of the luck of the draw are 39. */
    @Test
    void whatIsDrawnFollowsTheShares() throws IOException {
        String list = table(
                IntStream.range(0, 40).mapToObj(i -> "Bowler " + i + ",190").toList());
        int right = 0;
        for (int seed = 1; seed <= 10; seed++) {
            right += (int) bowlers(read(HEAD.replace("seed: 1", "seed: " + seed) + LIST, list)).stream()
                    .filter(bowler -> bowler.hand() == Hand.RIGHT)
                    .count();
        }

        assertThat(right).isBetween(352 - 39, 352 + 39);
    }

    @Test
    void whatWasDrawnOfWhomIsKnown() throws IOException {
        DrawnTraits drawn = read(HEAD + LIST, "Name,Average,Hand\nAnchor,190,R\nLeadoff,190,\n")
                .scenario()
                .orElseThrow()
                .drawn();

        assertThat(drawn.of("A", "Anchor")).containsExactlyInAnyOrder(Trait.STYLE, Trait.COVER);
        assertThat(drawn.of("A", "Leadoff")).containsExactlyInAnyOrder(Trait.HAND, Trait.STYLE, Trait.COVER);
        assertThat(drawn.of("A", "Nobody")).isEmpty();
        assertThat(drawn.count(Trait.HAND)).isEqualTo(1);
    }

    @Test
    void columnsMayHaveTitlesThatTheScenarioTells() throws IOException {
        String entries =
                "entries: {file: list.csv, columns: {name: Competitor, average: \"Avg 23/24\", squad: Shift}}\n";

        Reading reading = read(
                TWO_SQUADS + entries,
                "Shift,Competitor,Avg 22/23,Avg 23/24,Average\nB,Anchor,150,201,90\nA,Leadoff,150,222,90\n");

        assertThat(squads(reading))
                .extracting(
                        Squad::id,
                        squad -> squad.everybody().get(0).id(),
                        squad -> squad.everybody().get(0).level().id())
                .containsExactly(tuple("A", "Leadoff", "elite"), tuple("B", "Anchor", "scratch"));
        assertThat(reading.notices())
                .filteredOn(notice -> notice.code() == NoticeCode.COLUMN_IGNORED)
                .extracting(Notice::value)
                .containsExactly("Avg 22/23", "Average");
    }

    @Test
    void aTitleInAnyScriptIsFound() throws IOException {
        Reading reading = read(
                HEAD + "entries: {file: list.csv, columns: {name: \u0418\u043c\u044f, average: \u5e73\u5747}}\n",
                "\u5e73\u5747,\u0418\u043c\u044f\n190,Anchor\n");

        assertThat(bowlers(reading)).extracting(Bowler::id).containsExactly("Anchor");
    }

    @Test
    void aTitleThatTheTableDoesNotHaveIsToldWithThoseItHas() throws IOException {
        Reading reading = read(
                HEAD + "entries: {file: list.csv, columns: {name: Competiter, average: Competitor}}\n",
                "Competitor,Avg\nAnchor,190\n");

        assertThat(reading.notices())
                .filteredOn(notice -> notice.severity() == Severity.ERROR)
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.field()).isEqualTo("entries.columns.name");
                    assertThat(notice.message()).contains("Did you mean `Competitor`?", "Titles: Competitor, Avg.");
                });
    }

    @Test
    void oneTitleForTwoColumnsIsRefused() throws IOException {
        assertThat(read(
                                HEAD + "entries: {file: list.csv, columns: {name: Player, average: Player}}\n",
                                "Player\nAnchor\n")
                        .notices())
                .filteredOn(notice -> notice.severity() == Severity.ERROR)
                .extracting(Notice::code, Notice::field)
                .containsExactly(tuple(NoticeCode.DUPLICATE_NAME, "entries.columns.average"));
    }

    @Test
    void aListOfSpreadsheetsOfManyCountriesIsReadAsItIs() throws IOException {
        String table =
                "Name;Avg;Hand;Team\r\nB\u00f6ller;187,9;R;Rooks;;\r\n  Gr\u00fcn\u00a0 Feld ;200,1 pins;RH;Larks\r\n";
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1)) {
            Reading reading = read(HEAD + LIST, table.getBytes(charset));

            assertThat(bowlers(reading))
                    .extracting(Bowler::id, bowler -> bowler.level().id(), Bowler::hand)
                    .containsExactly(
                            tuple("B\u00f6ller", "league", Hand.RIGHT), tuple("Gr\u00fcn Feld", "scratch", Hand.RIGHT));
            assertThat(assumptions(reading))
                    .filteredOn(taken -> taken.name().equals("entries.average"))
                    .singleElement()
                    .satisfies(taken -> assertThat(taken.value()).contains("187.9 is 187"));
        }
        assertThat(bowlers(read(HEAD + LIST, "\uFEFFName\tAverage\nAnchor\t190\n")))
                .extracting(Bowler::id)
                .containsExactly("Anchor");
    }

    @Test
    void partnersAreFilledIntoGroupsTogetherAndDoubtfulOnesAreTold() throws IOException {
        Reading reading = read(
                HEAD + "entries: {file: list.csv, columns: {partners: Team}}\n",
                "Name,Average,Team\nA1,190,Foxes\nB1,190,Hares\nA2,190,Foxes\nB2,190,Hares\nB3,190,Hares\nC,190,\nD,190,Voles\n");

        assertThat(squads(reading).get(0).groups())
                .extracting(group -> group.bowlers().stream().map(Bowler::id).toList())
                .containsExactly(List.of("B1", "B2", "B3"), List.of("A1", "A2"), List.of("C"), List.of("D"));
        assertThat(reading.notices())
                .extracting(Notice::code, Notice::value)
                .containsExactlyInAnyOrder(
                        tuple(NoticeCode.GROUPS_UNEVEN, "A"),
                        tuple(NoticeCode.PARTNER_ALONE, "Voles"),
                        tuple(NoticeCode.TEAMS_UNEVEN, ""));
    }

    @Test
    void partnersWhoAreListedInTwoGroupsAreToldSo() throws IOException {
        Reading reading = read(HEAD + LIST, "Name,Average,Partners,Group\nA1,190,Foxes,1\nA2,190,Foxes,2\n");

        assertThat(reading.notices())
                .filteredOn(notice -> notice.code() == NoticeCode.PARTNERS_APART)
                .singleElement()
                .satisfies(notice -> assertThat(notice.message()).contains("listed in groups 1 and 2"));
        assertThat(reading.scenario()).isPresent();
    }

    @Test
    void entriesThatNameNoSquadAreDrawnIntoSquadsAndThatIsTold() throws IOException {
        String list = "Name,Average,Hand,Squad,Partners\n"
                + IntStream.range(0, 16)
                        .mapToObj(i -> "Bowler " + i + "," + (150 + 3 * i) + "," + (i % 4 == 0 ? "L" : "R") + ","
                                + (i == 0 ? "B" : "") + ",T" + i / 2 + "\n")
                        .collect(Collectors.joining());
        Reading reading = read(TWO_SQUADS + LIST + "draw: {squads: drawn, seed: 3}\n", list);

        assertThat(squads(reading))
                .extracting(squad -> squad.everybody().size())
                .containsExactly(8, 8);
        assertThat(squads(reading).get(1).everybody()).extracting(Bowler::id).contains("Bowler 0", "Bowler 1");
        assertThat(squads(reading).stream().flatMap(squad -> squad.groups().stream()))
                .as("groups of two on four pairs are partners")
                .hasSize(8)
                .allSatisfy(group -> assertThat(
                                group.bowlers().stream().map(Bowler::partners).distinct())
                        .hasSize(1));
        assertThat(reading.notices())
                .filteredOn(notice -> notice.code() == NoticeCode.DRAWN_BY_LOT)
                .extracting(Notice::message)
                .anySatisfy(message -> assertThat(message)
                        .startsWith(
                                "15 entries are drawn into squads by lot with seed 3, so that there are 8 in A, 8 in B."
                                        + " A squad has 2 left-handers")
                        .contains(
                                "Without rules the same lot",
                                "1 entry names its squad and stays there. Partners go together."));
        assertThat(squads(read(TWO_SQUADS + LIST + "draw: {squads: drawn, seed: 3}\n", list)))
                .isEqualTo(squads(reading));
    }

    @Test
    void partnersMayAllBowlAgainInAnotherSquad() throws IOException {
        assertThat(read(
                                TWO_SQUADS + LIST,
                                "Name,Average,Squad,Partners\nA1,190,A,Foxes\nA2,190,A,Foxes\nA1,190,B,Foxes\nA2,190,B,Foxes\n")
                        .count(Severity.ERROR))
                .isZero();
    }

    @Test
    void theFractionOfAnAverageIsDroppedForTheHandicapToo() throws IOException {
        Reading reading = read(
                HEAD + LIST + "scoring: {handicap: {base: 220 pins, share: 100 %}}\n", "Name,Average\nAnchor,187.9\n");

        assertThat(bowlers(reading)).extracting(Bowler::handicapPins).containsExactly(33);
    }

    @Test
    void squadsThatTheScenarioDoesNotHaveAreToldWithThoseOfTheList() throws IOException {
        Reading reading = read(TWO_SQUADS + LIST, "Name,Avg,Squad\nAnchor,190,A\nLeadoff,190,C\nThird,190,C\n");

        assertThat(reading.notices())
                .filteredOn(notice -> notice.severity() == Severity.ERROR)
                .hasSize(2)
                .allSatisfy(notice -> assertThat(notice.message())
                        .contains("`C`, which is not a known squad", "Your list has squads A (1) and C (2)."));
        assertThat(CheckText.write("event.yaml", reading, false, false)).contains("The same 1 time more");
    }

    @Test
    void aScenarioWithoutSquadsIsToldThoseOfTheList() throws IOException {
        String none = HEAD.replaceFirst("squads:\n.*\n", "");

        Reading reading = read(none + LIST, "Name,Avg,Squad\nAnchor,190,A\nLeadoff,190,B\nThird,190,A\n");

        assertThat(reading.notices())
                .extracting(Notice::code)
                .containsExactly(NoticeCode.MISSING_KEY, NoticeCode.SQUADS_IN_LIST);
        assertThat(reading.notices().get(1).message()).startsWith("Your list has squads A (2) and B (1).");
    }

    @Test
    void aListWithoutSquadsIsToldOnceWhereTheScenarioHasSeveral() throws IOException {
        Reading reading = read(TWO_SQUADS + LIST, "Name,Avg\nAnchor,190\nAnchor,180\n");

        assertThat(reading.notices()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo(NoticeCode.COLUMN_MISSING);
            assertThat(notice.message()).contains("has no column `squad`", "under `columns` of `entries`");
        });
    }

    @Test
    void anEntryWithoutItsSquadIsToldAndNotTakenForOneOfTheFirst() throws IOException {
        assertThat(read(TWO_SQUADS + LIST, "Name,Avg,Squad\nAnchor,190,A\nAnchor,190,\nThird,180,B\n")
                        .notices())
                .extracting(Notice::code, Notice::field)
                .containsExactly(tuple(NoticeCode.MISSING_KEY, "entries[2].squad"));
    }

    @Test
    void aDashOrAQuestionMarkSaysThatNothingIsKnown() throws IOException {
        Reading reading =
                read(HEAD + LIST, "Name,Avg,Level,Hand,Style\nAnchor,190,-,?,n/a\nLeadoff,\u2013,league,N/A,\u2014\n");

        assertThat(bowlers(reading)).extracting(bowler -> bowler.level().id()).containsExactly("league", "league");
        assertThat(reading.scenario().orElseThrow().drawn().of("A", "Leadoff"))
                .containsExactlyInAnyOrder(Trait.HAND, Trait.STYLE, Trait.COVER);
    }

    @Test
    void twoBowlersOfOneNameInASquadAreToldWithTheLineOfTheFirst() throws IOException {
        Reading reading = read(HEAD + LIST, "Name,Avg\nAnchor,190\nLeadoff,180\n Anchor ,200\n");

        assertThat(reading.notices())
                .singleElement()
                .satisfies(notice -> assertThat(notice.message())
                        .contains("the name of an earlier entry of squad A, on line 2", "Add an initial or a number"));
    }

    @Test
    void whoIsListedInTwoSquadsBowlsAgainAsTheSameBowler() throws IOException {
        Reading reading =
                read(TWO_SQUADS + LIST, "Name,Avg,Squad\nAnchor,190,A\nLeadoff,180,A\nAnchor,190,B\nThird,190,B\n");

        List<Squad> squads = squads(reading);
        Bowler first = squads.get(0).everybody().get(0);
        Bowler again = squads.get(1).everybody().get(0);
        assertThat(again.id()).isEqualTo("Anchor (B)");
        assertThat(again.as("Anchor", first.hand())).isEqualTo(first);
        assertThat(again.hand()).isEqualTo(first.hand());
        assertThat(reading.notices())
                .filteredOn(notice -> notice.code() == NoticeCode.BOWLS_AGAIN)
                .singleElement()
                .satisfies(notice -> assertThat(notice.message()).contains("1 entry names", "`Anchor (B)`"));
    }

    @Test
    void theSameFaultOfAWholeListIsToldOnce() throws IOException {
        String list = "Name,Avg\n"
                + IntStream.range(0, 352).mapToObj(i -> "Bowler " + i + ",\n").collect(Collectors.joining());

        String told = CheckText.write("event.yaml", read(HEAD + LIST, list), false, false);

        assertThat(told).containsOnlyOnce("no `level` and no `average`");
        assertThat(told.replaceAll("\\s+", " ")).contains("The same 351 times more, on lines 3 to 353.");
    }

    @Test
    void theSharesThatAreUsedAreThoseOfTheReadme() throws IOException {
        assertThat(Files.readString(Path.of("README.md")))
                .contains(
                        UsualField.written(UsualField.HANDS),
                        UsualField.written(UsualField.STYLES),
                        UsualField.written(UsualField.COVERS));
    }

    private Reading read(String scenario, String table) throws IOException {
        return read(scenario, table.getBytes(StandardCharsets.UTF_8));
    }

    private Reading read(String scenario, byte[] table) throws IOException {
        Files.write(folder.resolve("list.csv"), table);
        Path file = Files.writeString(folder.resolve("event.yaml"), scenario);
        return new ScenarioReader(OptionalLong.empty()).read(file.toString(), Files.readAllBytes(file));
    }

    private static List<Squad> squads(Reading reading) {
        return reading.scenario().orElseThrow().event().squads();
    }

    private static List<Bowler> bowlers(Reading reading) {
        return squads(reading).get(0).groups().stream()
                .flatMap(group -> group.bowlers().stream())
                .toList();
    }

    private static List<Assumption> assumptions(Reading reading) {
        return reading.scenario().orElseThrow().assumptions();
    }
}
