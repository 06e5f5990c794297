package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.junit.jupiter.api.Test;

/** A block of keys, shown by that of a pattern. 39 ft are 11.8872 m (international foot, 1959). */
class SectionTest {
    private static final double LENGTH_M = 11.8872;

    private final Notices notices = new Notices("test.yaml");

    private Section pattern(String... lines) {
        return new Section(PatternKeys.PATTERN, "pattern", Yaml.block(lines), notices);
    }

    @Test
    void aSoundBlockHoldsWhatItsKeysSayAndWhatIsUsualWhereTheyAreLeftOut() {
        Section section = pattern("length: 39 ft", "volume: 23 mL", "ratio: 4:1");

        assertThat(section.get(PatternKeys.LENGTH)).isEqualTo(LENGTH_M);
        assertThat(section.has(PatternKeys.DECAY)).isFalse();
        assertThat(section.notices().assumptions().list()).isEmpty();
        assertThat(section.find(PatternKeys.DECAY)).isEqualTo(PatternKeys.DECAY.usual());
        assertThat(section.notices().assumptions().list())
                .extracting(Assumption::name)
                .containsExactly("pattern.decay");
        assertThat(section.find(PatternKeys.TAPER_FROM)).isEmpty();
        assertThat(notices.list()).isEmpty();
    }

    @Test
    void anAssumptionOfSomeAnswersIsKeptByItself() {
        Section section = pattern("length: 39 ft");

        Section other = section.withOwnAssumptions();
        assertThat(other.find(PatternKeys.FLOOR)).isPresent();

        assertThat(other.notices().assumptions().list()).hasSize(1);
        assertThat(section.notices().assumptions().list()).isEmpty();
        assertThat(other.get(PatternKeys.LENGTH)).isEqualTo(LENGTH_M);
    }

    @Test
    void aKeyThatMustBeThereIsToldWithWhatIsTypical() {
        assertThat(pattern("volume: 23 mL").find(PatternKeys.LENGTH)).isEmpty();

        assertThat(notices.list())
                .containsExactly(new Notice(
                        NoticeCode.MISSING_KEY,
                        "test.yaml",
                        1,
                        1,
                        "pattern.length",
                        "",
                        "",
                        "pattern has no `length`, and it must have one: where the oil ends. Add `length:`, typical: 36 ft"
                                + " to 44 ft."));
    }

    @Test
    void aKeyThatOtherValuesAskForIsMissingOnlyWhereItIsNotWritten() {
        Section section = pattern("length: 39 ft", "volume: 23 mL");

        section.require(PatternKeys.VOLUME);
        assertThat(notices.list()).isEmpty();

        section.require(PatternKeys.RATIO);
        assertThat(notices.list()).extracting(Notice::field).containsExactly("pattern.ratio");
    }

    @Test
    void whatAnUnknownKeyWasMeantToBeIsNotMissingAndYetNothingIsBuilt() {
        Section section = pattern("lenght: 39 ft", "ratoi: 4:1");

        section.require(PatternKeys.RATIO);

        assertThat(notices.list())
                .extracting(Notice::code, Notice::field, Notice::line)
                .containsExactly(
                        tuple(NoticeCode.UNKNOWN_KEY, "pattern.lenght", 1),
                        tuple(NoticeCode.UNKNOWN_KEY, "pattern.ratoi", 2));
        assertThat(section.build(() -> "built")).isEmpty();
    }

    @Test
    void anUnknownKeyIsToldWithTheKeysThereAre() {
        pattern("length: 39 ft", "zebra: 1");

        assertThat(notices.list()).singleElement().satisfies(notice -> {
            assertThat(notice.message())
                    .startsWith("`zebra` is not a key of pattern. Keys here: ")
                    .contains("length, volume");
            assertThat(notice.limit()).startsWith("name, length, volume");
            assertThat(notice.value()).isEqualTo("zebra");
        });
    }

    @Test
    void aKeyOfAnotherBlockIsToldWhereItBelongs() {
        pattern("length: 39 ft", "games: 3");

        assertThat(notices.list())
                .extracting(Notice::message)
                .singleElement()
                .satisfies(message ->
                        assertThat(message).contains("It belongs at the left margin of the file.", "Keys here: "));
    }

    @Test
    void aKeyThatStandsTwiceIsToldAndTheFirstHolds() {
        Section section = pattern("length: 39 ft", "length: 40 ft");

        assertThat(notices.list())
                .extracting(Notice::code, Notice::line)
                .containsExactly(tuple(NoticeCode.DUPLICATE_KEY, 2));
        assertThat(section.get(PatternKeys.LENGTH)).isEqualTo(LENGTH_M);
    }

    @Test
    void aKeyThatIsNoWordIsToldWithItsBlock() {
        pattern("length: 39 ft", "? [a]", ": 1");

        assertThat(notices.list())
                .extracting(Notice::code, Notice::message)
                .containsExactly(tuple(
                        NoticeCode.WRONG_KIND, "A key of pattern is not a word; it must be a name before the colon."));
    }

    @Test
    void aValueFarFromWhatIsUsualIsReadAndWarnedOf() {
        Section section = pattern("length: 20 ft");

        assertThat(section.has(PatternKeys.LENGTH)).isTrue();
        assertThat(notices.hasErrors()).isFalse();
        assertThat(notices.list()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo(NoticeCode.IMPLAUSIBLE_VALUE);
            assertThat(notice.limit()).isEqualTo("from 30 ft to 52 ft");
        });
    }

    @Test
    void aLimitThatHangsOnOtherValuesHoldsWhereTheKeyIsWritten() {
        Section section = pattern("length: 39 ft", "buffFrom: 30 ft");

        assertThat(section.within(PatternKeys.BUFF_FROM, Range.between(3, LENGTH_M)))
                .contains(30 * 0.3048);
        assertThat(section.within(PatternKeys.TAPER_FROM, Range.between(0, 1))).isEmpty();
        assertThat(section.within(PatternKeys.DECAY, Range.between(0, 6))).isEmpty();
        assertThat(notices.list()).isEmpty();

        assertThat(section.within(PatternKeys.BUFF_FROM, Range.between(3, 9))).isEmpty();
        assertThat(notices.list()).extracting(Notice::code).containsExactly(NoticeCode.OUT_OF_RANGE);
    }

    @Test
    void aBlockUnderAKeyIsOpenedAndOneThatIsLeftOutIsAsUsual() {
        Section section = pattern("length: 39 ft", "left: {ratio: 2:1}");

        assertThat(section.block(PatternKeys.LEFT_HALF))
                .hasValueSatisfying(half -> assertThat(half.path()).isEqualTo("pattern.left"));
        assertThat(section.block(PatternKeys.OWN_BANDS)).isEmpty();
        assertThat(section.blockOrUsual(PatternKeys.OWN_BANDS))
                .hasValueSatisfying(bands -> assertThat(bands.path()).isEqualTo("pattern.bands"));
        assertThat(notices.list()).isEmpty();
    }

    @Test
    void aKeyOfAnotherBlockIsAFaultOfTheProgram() {
        Section section = pattern("length: 39 ft");

        assertThatThrownBy(() -> section.value(EventKeys.GAMES))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("block pattern does not declare games");
        assertThatThrownBy(() -> section.get(PatternKeys.VOLUME)).hasMessage("pattern.volume has no value");
    }

    @Test
    void theBlockItselfIsAValueOfTheOneAroundIt() {
        Section section = pattern("length: 39 ft", "volume: 23 mL");

        assertThat(section.value().path()).isEqualTo("pattern");
        assertThat(section.value().isBlock()).isTrue();
        assertThat(section.pathOf(PatternKeys.VOLUME)).isEqualTo("pattern.volume");
        section.refuse(PatternKeys.VOLUME, NoticeCode.OUT_OF_RANGE, ", too little.");
        section.refuse(PatternKeys.RATIO, NoticeCode.OUT_OF_RANGE, ", too little.");
        assertThat(notices.list())
                .extracting(Notice::message)
                .containsExactly("pattern.volume is `23 mL`, too little.");
    }
}
