package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import org.junit.jupiter.api.Test;

/** One fault is one notice: in the unit it was written in, at its place, and nothing that only follows from it. */
class FollowUpNoticesTest {
    private static List<Notice> errors(String passage, String replacement) {
        return Scenarios.readWith(passage, replacement).notices().stream()
                .filter(notice -> notice.severity() == Severity.ERROR)
                .toList();
    }

    @Test
    void aNameWhoseOwnValuesAreWrongIsNotUnknownBesides() {
        String levels = Scenarios.SOUND
                .lines()
                .filter(line -> line.contains("levels:"))
                .findFirst()
                .orElseThrow();

        assertThat(errors(
                        levels,
                        "  levels: {mine: 100 %}\nlevels:\n  mine: {arrows: 11 boards, speedShare: 2 %, spinShare: 4 %, sees: 1"
                                + " board, deadBand: 1 board, gain: 1, patience: 2 shots, drift: 0.1 boards, form: 10 %,"
                                + " source: assumption}\nfield:\n"))
                .extracting(Notice::code)
                .contains(NoticeCode.OUT_OF_RANGE)
                .doesNotContain(NoticeCode.UNKNOWN_NAME);
    }

    @Test
    void lanesAsAListAreToldOnce() {
        assertThat(errors("lanes: 1 to 4", "lanes: [1, 4]"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.code()).isEqualTo(NoticeCode.WRONG_KIND));
    }

    @Test
    void limitsInTheWrongOrderAreToldAsTheyAreWritten() {
        assertThat(errors("  ratio: 4:1", "  ratio: 4:1\n  bands: {shortTo: 40 ft, longFrom: 11.5 m}"))
                .singleElement()
                .satisfies(notice ->
                        assertThat(notice.message()).contains("`shortTo` (40 ft) must be below `longFrom` (11.5 m)"))
                .satisfies(notice -> assertThat(notice.field()).isEqualTo("pattern.bands.shortTo"));
        assertThat(errors("  ratio: 4:1", "  ratio: 4:1\n  bands: {lowBelow: 25 mL}"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.message())
                        .contains("`lowBelow` (25 mL) must be at most `highAbove` (24 mL)"));
    }

    @Test
    void aKeyThatIsNoWordIsToldAtItsPlace() {
        assertThat(errors("games: 3", "games: 3\n? [a, b]\n: 3"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.code()).isEqualTo(NoticeCode.WRONG_KIND))
                .satisfies(notice -> assertThat(notice.line()).isGreaterThan(1));
    }

    @Test
    void aRotationThatNeverMovesIsWarnedOf() {
        assertThat(Scenarios.readWith("rotation: stay", "rotation: {design: right, every: 60 games}")
                        .notices())
                .extracting(Notice::code)
                .contains(NoticeCode.VALUE_WITHOUT_EFFECT);
        assertThat(Scenarios.readWith("rotation: stay", "rotation: {design: right, every: 2 games}")
                        .notices())
                .extracting(Notice::code)
                .doesNotContain(NoticeCode.VALUE_WITHOUT_EFFECT);
    }

    @Test
    void aMisspeltKeyIsNotMissingBesides() {
        assertThat(errors("  length: 39 ft", "  lenght: 39 ft")).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo(NoticeCode.UNKNOWN_KEY);
            assertThat(notice.field()).isEqualTo("pattern.lenght");
            assertThat(notice.message()).contains("Did you mean `length`?");
        });
        assertThat(errors("games: 3", "gmes: 3"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.field()).isEqualTo("gmes"));
        assertThat(errors("{id: A, start:", "{id: A, strat:"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.field()).isEqualTo("squads[1].strat"));
    }

    @Test
    void whatIsMissingIsToldBesideAKeyThatMeansSomethingElse() {
        assertThat(errors("  length: 39 ft", "  zebra: 39 ft"))
                .extracting(Notice::code, Notice::field)
                .containsExactlyInAnyOrder(
                        tuple(NoticeCode.UNKNOWN_KEY, "pattern.zebra"),
                        tuple(NoticeCode.MISSING_KEY, "pattern.length"));
        assertThat(errors("  length: 39 ft\n  volume: 23 mL", "  lenght: 39 ft"))
                .extracting(Notice::code, Notice::field)
                .containsExactlyInAnyOrder(
                        tuple(NoticeCode.UNKNOWN_KEY, "pattern.lenght"),
                        tuple(NoticeCode.MISSING_KEY, "pattern.volume"));
    }
}
