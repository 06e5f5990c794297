package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers with their units. A foot is 0.3048 m (international foot, 1959). */
class QuantityReaderTest {
    private static final Form.Quantity<Double> LENGTH =
            Form.quantity(Measure.LENGTH, "ft or m", Range.between(3.048, 18.288));
    private static final Form.Quantity<Double> TIME =
            Form.quantity(Measure.TIME, "min", Range.between(60_000, 36_000_000));
    private static final Form.Quantity<Double> RATIO = Form.quantity(Measure.RATIO, "n:1", Range.between(1, 14));
    private static final Form.Quantity<Integer> WHOLE = Form.whole(1, 12);

    private final Notices notices = new Notices("test.yaml");

    private <T extends Number> Optional<T> read(String text, Form.Quantity<T> form) {
        return Yaml.value(text, "some", notices).read(form);
    }

    private Notice refused(String text, Form.Quantity<?> form) {
        assertThat(read(text, form)).isEmpty();
        List<Notice> all = notices.list();
        return all.get(all.size() - 1);
    }

    @ParameterizedTest
    @CsvSource({"39 ft, 11.8872", "39ft, 11.8872", "1.2e1 m, 12", "+1200 cm, 12", "18.288 m, 18.288", "10 ft, 3.048"})
    void aLengthIsReadInMetresWhateverItsUnit(String written, double metres) {
        assertThat(read(written, LENGTH).orElseThrow()).isCloseTo(metres, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"90 min, 5_400_000", "1.5 h, 5_400_000", "1 h 30 min, 5_400_000", "1 h 29 min 60 s, 5_400_000"})
    void aTimeMayBeWrittenInParts(String written, String ms) {
        assertThat(read(written, TIME)).contains(Double.parseDouble(ms.replace("_", "")));
    }

    @Test
    void limitsOfATimeInPartsAreToldInTheUnitOfItsLastPart() {
        Notice notice = refused("10 h 30 min", TIME);

        assertThat(notice.code()).isEqualTo(NoticeCode.OUT_OF_RANGE);
        assertThat(notice.limit()).isEqualTo("from 1 min to 600 min");
        assertThat(refused("10 h 30 boards", TIME).code()).isEqualTo(NoticeCode.WRONG_UNIT);
    }

    @Test
    void onlyATimeHasParts() {
        assertThat(refused("10 ft 3 in", LENGTH).code()).isEqualTo(NoticeCode.WRONG_UNIT);
    }

    @Test
    void aRatioMayHaveABlankAfterItsColon() {
        assertThat(read("4:1", RATIO)).contains(4.0);
        assertThat(read("\"4: 1\"", RATIO)).contains(4.0);
    }

    @ParameterizedTest
    @CsvSource({
        "39, UNIT_MISSING, a number with its unit (ft; m; cm or in)",
        "39 boards, WRONG_UNIT, a number with its unit (ft; m; cm or in)",
        "long, NOT_A_NUMBER, a number with its unit (ft; m; cm or in)",
        "'39,5 ft', NOT_A_NUMBER, 'written with a point, such as 39.5'",
        ".nan, NOT_FINITE, a finite number",
        "-inf ft, NOT_FINITE, a finite number",
        "1e999 ft, NOT_FINITE, from 10 ft to 60 ft",
        "-1 ft, NEGATIVE_VALUE, from 10 ft to 60 ft",
        "0 ft, ZERO_VALUE, from 10 ft to 60 ft",
        "61 ft, OUT_OF_RANGE, from 10 ft to 60 ft",
        "1829 cm, OUT_OF_RANGE, from 305 cm to 1820 cm"
    })
    void whatIsWrongIsSaidInTheUnitItWasWrittenIn(String written, NoticeCode code, String limit) {
        Notice notice = refused(written, LENGTH);

        assertThat(notice.code()).isEqualTo(code);
        assertThat(notice.limit().replace(',', ';')).isEqualTo(limit.replace(',', ';'));
        assertThat(notice.value()).isEqualTo(written);
    }

    @Test
    void aNumberWithoutAUnitIsAskedForWithoutOneAndARatioToOne() {
        assertThat(refused("many", WHOLE).limit()).isEqualTo("a number without a unit");
        assertThat(refused("4", RATIO).limit()).isEqualTo("a number to one (n:1)");
    }

    @Test
    void aWholeNumberHasNoFraction() {
        assertThat(read("12", WHOLE)).contains(12);
        assertThat(refused("1.5", WHOLE).code()).isEqualTo(NoticeCode.NOT_WHOLE);
        assertThat(refused("12.5", WHOLE).code()).isEqualTo(NoticeCode.OUT_OF_RANGE);
    }

    @Test
    void belowALimitUnderZeroANumberIsNotCalledNegative() {
        assertThat(refused("-3", Form.number(-2, 2)).code()).isEqualTo(NoticeCode.OUT_OF_RANGE);
    }

    @Test
    void noQuantityIsLongerThanSixtyCharacters() {
        assertThat(read("39." + "0".repeat(54) + " ft", LENGTH)).isPresent();
        assertThat(refused("39." + "0".repeat(55) + " ft", LENGTH).code()).isEqualTo(NoticeCode.NOT_A_NUMBER);
    }
}
