package lanetide.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PageTest {
    @Test
    void aLongItemIsWrappedUnderItsFirstWord() {
        String text = new Page().item("word ".repeat(30).strip()).text();

        assertThat(text.lines()).hasSize(2).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(text).startsWith("  - word").contains("\n    word");
    }

    @Test
    void aTableSetsTextLeftAndFiguresRight() {
        String text = new Page()
                .table(List.of(List.of("Squad", "Mean"), List.of("A", "190.1"), List.of("late", "9.5")), 1)
                .text();

        assertThat(text).isEqualTo("  Squad   Mean\n  A      190.1\n  late     9.5\n");
    }

    @Test
    void headingsAreSetApartExceptTheFirst() {
        assertThat(new Page().heading("One").heading("Two").text()).isEqualTo("One\n\nTwo\n");
    }
}
