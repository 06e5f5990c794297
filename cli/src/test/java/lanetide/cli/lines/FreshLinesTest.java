package lanetide.cli.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.Scenarios;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.catalogue.Grits;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.PlayedLine;
import org.junit.jupiter.api.Test;

class FreshLinesTest {
    private static final Question ALL_OF_THE_SCENARIO =
            new Question(List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty());

    private final Scenario scenario = Scenarios.read(Scenarios.SOUND).scenario().orElseThrow();

    @Test
    void aStyleIsShownWithTheBallAndLevelCommonestInTheField() {
        // 8 bowlers: 2 urethane, 6 medium; half of them scratch, half league.
        List<Kind> kinds = Kinds.of(scenario.event(), ALL_OF_THE_SCENARIO);

        assertThat(kinds.stream().map(kind -> kind.style().id()).distinct()).containsExactly("stroker", "tweener");
        assertThat(kinds).allSatisfy(kind -> assertThat(kind.cover().id()).isEqualTo("medium-reactive"));
    }

    @Test
    void aStyleNobodyPlaysIsShownWithTheFieldsCommonestBallOnTheFieldsHands() {
        Question question = new Question(
                List.of(),
                List.of(scenario.names().styles().get("power")),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty());

        List<Kind> kinds = Kinds.of(scenario.event(), question);

        assertThat(kinds).hasSize(2);
        assertThat(kinds.get(0).hand()).isEqualTo(Hand.RIGHT);
        assertThat(kinds.get(1).hand()).isEqualTo(Hand.LEFT);
        assertThat(kinds.get(0).cover().id()).isEqualTo("medium-reactive");
    }

    @Test
    void everyBallAskedForIsShownWithEveryFinishAskedFor() {
        Question question = new Question(
                List.of(),
                List.of(scenario.names().styles().get("tweener")),
                List.of(Hand.RIGHT),
                List.of(
                        scenario.names().covers().get("urethane"),
                        scenario.names().covers().get("medium-reactive")),
                List.of(500, 3000),
                Optional.empty());

        List<Kind> kinds = Kinds.of(scenario.event(), question);

        assertThat(kinds.stream().map(kind -> kind.cover().id()))
                .containsExactly(
                        "urethane at 500-grit",
                        "urethane at 3000-grit",
                        "medium-reactive at 500-grit",
                        "medium-reactive at 3000-grit");
        assertThat(kinds.get(2).cover().roughnessUm()).isEqualTo(Grits.shipped().roughnessUm(500));
        assertThat(kinds.get(2).cover().flareOverlap())
                .isEqualTo(scenario.names().covers().get("medium-reactive").flareOverlap());
    }

    /** On the surface he knows no move is needed: he starts at his own angle (the design of the natural line). */
    @Test
    void onTheReferenceSurfaceEveryoneStartsAtHisOwnAngle() {
        Question question = new Question(
                List.of(scenario.names().surfaces().get(Catalogue.REFERENCE_SURFACE)),
                List.copyOf(scenario.names().styles().values()),
                List.of(Hand.RIGHT),
                List.of(),
                List.of(),
                Optional.empty());

        List<StartLine> natural = FreshLines.of(scenario, question).stream()
                .filter(line -> line.basis() == LineBasis.NATURAL)
                .toList();

        assertThat(natural).hasSize(4);
        assertThat(natural).allSatisfy(start -> {
            PlayedLine line = start.line().orElseThrow();
            assertThat(Math.toDegrees(line.line().launchRad()))
                    .isCloseTo(
                            Math.toDegrees(start.kind().style().naturalLaunchRad()),
                            org.assertj.core.data.Offset.offset(0.01));
        });
    }
}
