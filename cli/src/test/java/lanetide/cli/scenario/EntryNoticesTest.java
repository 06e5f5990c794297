package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.squads.change.WaitingList;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.FieldMix;
import org.junit.jupiter.api.Test;

/** What is said of entries written in the scenario itself, of their draw and of fields by shares. */
class EntryNoticesTest {
    private static final String HEAD = Scenarios.SOUND.substring(0, Scenarios.SOUND.indexOf("field:"));
    private static final String TWO_SQUADS =
            HEAD.replace(", oil: fresh}", ", oil: fresh}\n  - {id: B, start: \"22:00\", oil: over}");

    private static Reading read(String head, String more, String... entries) {
        return Scenarios.read(head + more + "entries:\n"
                + List.of(entries).stream()
                        .map(entry -> "  - {" + entry + "}\n")
                        .collect(Collectors.joining()));
    }

    private static Notice only(Reading reading, NoticeCode code) {
        List<Notice> found = reading.notices().stream()
                .filter(notice -> notice.code() == code)
                .toList();
        assertThat(found).as("all: %s", reading.notices()).hasSize(1);
        return found.get(0);
    }

    private static String bowler(String id, String more) {
        return "id: " + id + ", level: league, style: stroker, cover: urethane" + more;
    }

    @Test
    void aDrawOfGroupsHasNoUseForGroupsThatAreListed() {
        Notice notice = only(
                read(
                        HEAD,
                        "draw: {seed: 7}\n",
                        bowler("Anchor", ", hand: right"),
                        bowler("Third", ", hand: right, group: 1")),
                NoticeCode.CONFLICTING_KEYS);

        assertThat(notice.field()).isEqualTo("entries[2].group");
    }

    @Test
    void aDrawWithoutEntriesHasNothingToDraw() {
        Notice notice = only(Scenarios.read(Scenarios.SOUND + "draw: {seed: 7}\n"), NoticeCode.CONFLICTING_KEYS);

        assertThat(notice.field()).isEqualTo("draw");
        assertThat(notice.message()).contains("no `entries` are listed");
    }

    @Test
    void aDrawTellsWhatEachGroupHasAndWithWhichSeed() {
        Reading reading = read(
                HEAD,
                "draw: {seed: 7}\n",
                bowler("A1", ", hand: left, average: 180 pins"),
                bowler("A2", ", hand: left, average: 180 pins"),
                bowler("A3", ", hand: right, average: 180 pins"),
                bowler("A4", ", hand: right, average: 180 pins"));

        assertThat(only(reading, NoticeCode.DRAWN_BY_LOT).message())
                .startsWith(
                        "Squad A is drawn by lot with seed 7. A group has 1 left-handers, 2 stroker and a mean average"
                                + " of 180 pins. Without rules the same lot would have given it ");
    }

    @Test
    void rulesThatAreLeftFreeSpreadNothing() {
        String[] entries = IntStream.range(0, 12)
                .mapToObj(i -> bowler("A" + i, ", hand: " + (i < 6 ? "left" : "right")))
                .toArray(String[]::new);

        String even = only(read(HEAD, "draw: {seed: 7}\n", entries), NoticeCode.DRAWN_BY_LOT)
                .message();
        String free = only(
                        read(HEAD, "draw: {seed: 7, hands: free, styles: free, averages: free}\n", entries),
                        NoticeCode.DRAWN_BY_LOT)
                .message();

        assertThat(even).contains("A group has 3 left-handers and 6 stroker.");
        String byLot = even.substring(even.indexOf("given it ") + "given it ".length());
        assertThat(free).contains("A group has " + byLot);
    }

    @Test
    void groupsCountFromOneWithoutAGap() {
        Notice notice = only(
                read(HEAD, "", bowler("A1", ", hand: right, group: 2"), bowler("A2", ", hand: right, group: 2")),
                NoticeCode.GROUP_MISSING);

        assertThat(notice.field()).isEqualTo("entries[1].group");
        assertThat(notice.value()).isEqualTo("2");
        assertThat(notice.message()).contains("but group 1 of this squad has no bowler");
    }

    @Test
    void whereSomeHaveAGroupTheOthersNeedOne() {
        Notice notice = only(
                read(HEAD, "", bowler("A1", ", hand: right, group: 1"), bowler("A2", ", hand: right")),
                NoticeCode.MISSING_KEY);

        assertThat(notice.field()).isEqualTo("entries[2].group");
    }

    @Test
    void aBowlerHasANameAloneInHisSquad() {
        Notice notice = only(
                read(HEAD, "", bowler("A1", ", hand: right"), bowler("A1", ", hand: left")), NoticeCode.DUPLICATE_NAME);

        assertThat(notice.field()).isEqualTo("entries[2].id");
        assertThat(notice.message()).contains("an earlier entry of squad A, on line " + (notice.line() - 1));
    }

    @Test
    void aNameLikeThatOfSomebodyWhoBowlsAgainIsTaken() {
        Notice notice = only(
                read(
                        TWO_SQUADS,
                        "",
                        bowler("A1 (B)", ", hand: right, squad: A"),
                        bowler("A1", ", hand: right, squad: A"),
                        bowler("A1", ", hand: right, squad: B")),
                NoticeCode.DUPLICATE_NAME);

        assertThat(notice.field()).isEqualTo("entries[3].id");
        assertThat(notice.message()).contains("alone in the event");
    }

    @Test
    void partnersBowlInOneSquad() {
        Notice notice = only(
                read(
                        TWO_SQUADS,
                        "",
                        bowler("A1", ", hand: right, squad: A, partners: Foxes"),
                        bowler("A2", ", hand: right, squad: A, partners: Foxes"),
                        bowler("B1", ", hand: right, squad: B, partners: Foxes")),
                NoticeCode.PARTNERS_IN_SQUADS);

        assertThat(notice.field()).isEqualTo("entries[3].partners");
        assertThat(notice.message()).contains("but has A1 and A2 in squad A, B1 in squad B");
    }

    @Test
    void tenPartnersShareAPairAndElevenDoNot() {
        assertThat(partners(10)).extracting(Notice::code).doesNotContain(NoticeCode.TOO_MANY_BOWLERS);
        assertThat(partners(11))
                .filteredOn(notice -> notice.code() == NoticeCode.TOO_MANY_BOWLERS)
                .extracting(Notice::field)
                .contains("entries[11].partners");
    }

    private static List<Notice> partners(int number) {
        return read(
                        HEAD,
                        "",
                        IntStream.range(0, number)
                                .mapToObj(i -> bowler("A" + i, ", hand: right, partners: Foxes"))
                                .toArray(String[]::new))
                .notices();
    }

    @Test
    void whoWaitsHasNoGroupAndIsKeptInTheOrderOfTheList() {
        Scenario scenario = read(
                        HEAD,
                        "",
                        bowler("A1", ", hand: right"),
                        bowler("W2", ", hand: right, comes: waiting"),
                        bowler("W1", ", hand: left, comes: waiting"))
                .scenario()
                .orElseThrow();

        assertThat(scenario.event().squads().get(0).everybody())
                .extracting(Bowler::id)
                .containsExactly("A1");
        assertThat(scenario.waiting())
                .extracting(
                        WaitingList.Waiting::squad, waiting -> waiting.bowler().id())
                .containsExactly(tuple("A", "W2"), tuple("A", "W1"));
    }

    @Test
    void moreEntriesThanPlacesFindNoSquad() {
        String head = TWO_SQUADS.replace("id: A,", "id: A, places: 1,").replace("id: B,", "id: B, places: 1,");
        String[] three = {bowler("A1", ", hand: right"), bowler("A2", ", hand: right"), bowler("A3", ", hand: right")};

        assertThat(only(read(head, "draw: {squads: drawn}\n", three), NoticeCode.NO_SQUAD_LEFT)
                        .message())
                .contains("there are 2 places for 3 entries");
        assertThat(read(head, "draw: {squads: drawn}\n", three[0], three[1]).notices())
                .extracting(Notice::code)
                .doesNotContain(NoticeCode.NO_SQUAD_LEFT);
    }

    @Test
    void whatStoodInTheWayOfSquadsThatAreAlikeIsTold() {
        Reading named = read(
                TWO_SQUADS,
                "draw: {squads: drawn, seed: 3}\n",
                bowler("A1", ", hand: right, squad: A"),
                bowler("A2", ", hand: right, squad: A"),
                bowler("A3", ", hand: right, squad: A"),
                "id: B1, level: league, style: stroker, cover: urethane");

        assertThat(squadsDrawn(named))
                .startsWith("1 entries are drawn into squads by lot with seed 3, so that there are 3 in A, 1 in B.")
                .contains(
                        "3 entries name their squads and stay there.",
                        "leave squads no more alike in size.",
                        "Of 1 the list does not say hand or style")
                .doesNotContain("Partners go together.");
    }

    @Test
    void whereSquadsDifferByOneNothingStoodInTheWay() {
        Reading reading = read(
                TWO_SQUADS,
                "draw: {squads: drawn, seed: 3}\n",
                bowler("A1", ", hand: right"),
                bowler("A2", ", hand: right"),
                bowler("A3", ", hand: right"));

        assertThat(squadsDrawn(reading))
                .startsWith("3 entries are drawn into squads by lot")
                .doesNotContain("stay there.", "no more alike", "the list does not say");
    }

    private static String squadsDrawn(Reading reading) {
        return reading.notices().stream()
                .filter(notice -> notice.code() == NoticeCode.DRAWN_BY_LOT)
                .map(Notice::message)
                .filter(message -> message.contains("drawn into squads"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void ofManySquadsInAListTwelveAreNamed() {
        assertThat(unknownSquads(12)).contains("S11 (1) and S12 (1).").doesNotContain("more");
        assertThat(unknownSquads(14)).contains("S12 (1) and 2 more.").doesNotContain("S13 (");
    }

    private static String unknownSquads(int number) {
        return read(
                        TWO_SQUADS,
                        "",
                        IntStream.rangeClosed(1, number)
                                .mapToObj(i -> bowler("A" + i, ", hand: right, squad: S" + i))
                                .toArray(String[]::new))
                .notices()
                .get(0)
                .message();
    }

    @Test
    void sharesMustBeAHundredPercentTogether() {
        Notice notice = only(
                Scenarios.readWith("{right: 75 %, left: 25 %}", "{right: 75 %, left: 24.4 %}"),
                NoticeCode.SHARES_NOT_100);

        assertThat(notice.field()).isEqualTo("field.hands");
        assertThat(notice.value()).isEqualTo("99.4 %");
    }

    @Test
    void sharesThatMissItByRoundingAreScaled() {
        Reading reading = Scenarios.readWith("{right: 75 %, left: 25 %}", "{right: 74.8 %, left: 24.8 %}");

        assertThat(only(reading, NoticeCode.SHARES_ROUNDED).value()).isEqualTo("99.6 %");
        FieldMix mix = reading.scenario()
                .orElseThrow()
                .event()
                .squads()
                .get(0)
                .field()
                .orElseThrow()
                .mix();
        assertThat(mix.hands().get(0).share()).isCloseTo(74.8 / 99.6, within(1e-12));
        assertThat(mix.hands().get(1).share()).isCloseTo(24.8 / 99.6, within(1e-12));
    }

    @Test
    void howSlowSlowBowlersAreIsAssumedWhereThereAreAny() {
        assertThat(assumed("  perSquad: 8\n  slow: 20 %")).contains("field.slowTempo");
        assertThat(assumed("  perSquad: 8\n  slow: 0 %")).doesNotContain("field.slowTempo");
        assertThat(assumed("  perSquad: 8\n  slow: 20 %\n  slowTempo: 140 %")).doesNotContain("field.slowTempo");
        assertThat(assumed("  perSquad: 8")).contains("spareCover");
    }

    private static List<String> assumed(String field) {
        return Scenarios.readWith("  perSquad: 8", field).scenario().orElseThrow().assumptions().stream()
                .map(Assumption::name)
                .toList();
    }

    @Test
    void aFieldThatNoSquadNamesHasNoEffect() {
        String fields = """
                fields:
                  members:
                    perSquad: 8
                    hands: {right: 100 %}
                    styles: {stroker: 100 %}
                    levels: {league: 100 %}
                    covers: {urethane: 100 %}
                """;

        assertThat(only(Scenarios.read(Scenarios.SOUND + fields), NoticeCode.VALUE_WITHOUT_EFFECT)
                        .message())
                .contains("but no squad is drawn from it");
        assertThat(Scenarios.read(Scenarios.SOUND.replace("oil: fresh}", "oil: fresh, field: members}") + fields)
                        .notices())
                .extracting(Notice::code, Notice::value)
                .doesNotContain(tuple(NoticeCode.VALUE_WITHOUT_EFFECT, "members"));
    }

    @Test
    void aFieldThatIsNotThereIsToldWithThoseThereAre() {
        assertThat(only(
                                Scenarios.read(Scenarios.SOUND.replace("oil: fresh}", "oil: fresh, field: members}")),
                                NoticeCode.UNKNOWN_NAME)
                        .message())
                .contains("but the scenario has no `fields`");
    }
}
