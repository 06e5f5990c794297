package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.junit.jupiter.api.Test;

class ValueTest {
    private static final Map<String, Integer> KNOWN = Map.of("stay", 1);

    private final Notices notices = new Notices("test.yaml");

    private Value value(String written) {
        return Yaml.value(written, "39 ft", notices);
    }

    private Notice told() {
        assertThat(notices.list()).hasSize(1);
        return notices.list().get(0);
    }

    @Test
    void whatIsWrongIsSaidAfterThePathAndTheValue() {
        value("long").refuse(NoticeCode.BAD_TEXT, ", and it should not be.");

        assertThat(told())
                .isEqualTo(new Notice(
                        NoticeCode.BAD_TEXT,
                        "test.yaml",
                        1,
                        6,
                        "key",
                        "long",
                        "",
                        "key is `long`, and it should not be."));
    }

    @Test
    void listsBlocksAndNothingAreNamedForWhatTheyAre() {
        assertThat(value("[1]").written()).isEqualTo("a list");
        assertThat(value("{a: 1}").written()).isEqualTo("a block");
        assertThat(value("{a: 1}").isBlock()).isTrue();
        assertThat(value("[1]").isBlock()).isFalse();
        assertThat(value("[1]").plain()).isEmpty();
        assertThat(value("one").isScalar()).isTrue();
        assertThat(value("\"\"").isScalar()).isFalse();
        assertThat(value("[1]").isScalar()).isFalse();
    }

    @Test
    void aKeyWithoutAValueIsEmptyAndAskedForWithWhatIsUsual() {
        assertThat(value("").text()).isEmpty();

        assertThat(told().code()).isEqualTo(NoticeCode.EMPTY_VALUE);
        assertThat(told().message()).isEqualTo("key is empty; it must be a text. Typical: 39 ft.");
    }

    @Test
    void whereNothingIsUsualAnEmptyValueMayBeTakenOut() {
        assertThat(Yaml.value("", "", notices).text()).isEmpty();

        assertThat(told().message()).endsWith("it must be a text. Fill it in, or take the line out.");
    }

    @Test
    void aListInPlaceOfANumberIsOfTheWrongKind() {
        assertThat(value("[1]").read(Form.whole(1, 3))).isEmpty();

        assertThat(told().code()).isEqualTo(NoticeCode.WRONG_KIND);
        assertThat(told().limit()).isEqualTo("a number");
    }

    @Test
    void theWordForNoQuantityIsReadAsNoneAndANumberAsItself() {
        Form.OrNone<Integer> form = new Form.OrNone<>(Form.whole(1, 3));

        assertThat(value("none").read(form)).contains(Optional.empty());
        assertThat(value("2").read(form)).contains(Optional.of(2));
        assertThat(value("4").read(form)).isEmpty();
    }

    @Test
    void aTextMustPrintAndANameMustBeShort() {
        assertThat(value("\"a\\u0007\"").text()).isEmpty();
        assertThat(told().code()).isEqualTo(NoticeCode.BAD_TEXT);
        assertThat(told().message()).endsWith("Shorten or retype it.");
        assertThat(value("plain text").text()).contains("plain text");
    }

    @Test
    void aNameIsATextOfItsOwnRules() {
        assertThat(value("x".repeat(500)).read(new Form.Text(true))).isEmpty();
        assertThat(value("a").read(new Form.Text(true))).contains("a");
    }

    @Test
    void aKnownNameIsWhatItStandsForAndAnUnknownOneIsAskedAbout() {
        assertThat(value("stay").oneOf(KNOWN, "rotation")).contains(1);
        assertThat(notices.list()).isEmpty();

        assertThat(value("stya").oneOf(KNOWN, "rotation", " See the list.")).isEmpty();
        assertThat(told().message())
                .isEqualTo(
                        "key is `stya`, which is not a known rotation. Did you mean stay? Known: stay. See the list.");
        assertThat(told().limit()).isEqualTo("stay");
    }

    @Test
    void aChoiceIsReadByItsName() {
        assertThat(value("stay").read(new Form.Choice<>("rotation", KNOWN))).contains(1);
    }

    @Test
    void aTimeOfDayIsReadInMilliseconds() {
        assertThat(value("\"00:01\"").read(new Form.Clock())).contains(60_000L);
    }

    @Test
    void whatHasAReaderOfItsOwnIsNotReadHere() {
        assertThatThrownBy(() -> value("a").read(new Form.Name("style", "names")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("`name` has a reader of its own");
    }

    @Test
    void itemsOfAListCountFromOne() {
        List<Value> items = value("[a, b]").list().orElseThrow();

        assertThat(items).extracting(Value::path).containsExactly("key[1]", "key[2]");
        assertThat(items).extracting(Value::plain).containsExactly("a", "b");
        assertThat(items.get(0).advice()).isEqualTo(" Typical: 39 ft.");
        assertThat(value("a").list()).isEmpty();
        assertThat(told().limit()).isEqualTo("a list");
    }

    @Test
    void freeNamesAreReadWithTheirPlacesAndATwiceGivenOneIsTold() {
        Map<String, NamedValue> named =
                value("{right: 75 %, left: 25 %, right: 10 %}").named().orElseThrow();

        assertThat(named).containsOnlyKeys("right", "left");
        assertThat(named.get("right").value().plain()).isEqualTo("75 %");
        assertThat(named.get("left").value().path()).isEqualTo("key.left");
        assertThat(told().code()).isEqualTo(NoticeCode.DUPLICATE_KEY);
        assertThat(told().column()).isEqualTo(32);
    }

    @Test
    void aTextHoldsNoFreeNames() {
        assertThat(value("a").named()).isEmpty();
        assertThat(told().limit()).isEqualTo("a block of `name: value`");
    }

    @Test
    void aChildIsFoundByItsNameAlone() {
        Value block = value("{right: 75 %, left: 25 %}");

        assertThat(block.child("left")).hasValueSatisfying(child -> {
            assertThat(child.plain()).isEqualTo("25 %");
            assertThat(child.path()).isEqualTo("key.left");
        });
        assertThat(block.child("both")).isEmpty();
        assertThat(value("a").child("left")).isEmpty();
    }
}
