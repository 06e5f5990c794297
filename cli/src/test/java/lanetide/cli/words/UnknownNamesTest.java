package lanetide.cli.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.stream.Stream;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.Unknown;
import lanetide.squads.unknown.PlayModel;
import org.junit.jupiter.api.Test;

class UnknownNamesTest {
    @Test
    void everyUnknownHasWordsOfItsOwn() {
        assertThat(Stream.concat(OilModel.UNKNOWNS.all().stream(), PlayModel.UNKNOWNS.all().stream())
                        .map(Unknown::id)
                        .map(UnknownNames::of))
                .doesNotHaveDuplicates()
                .allMatch(words -> words.matches("[a-z].*[a-z]"));
    }

    @Test
    void whatIsNoUnknownHasNone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UnknownNames.of("luck"))
                .withMessage("there are no words for the unknown luck");
    }
}
