package lanetide.cli.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.Scenarios;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.catalogue.Grits;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;
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

    /** Home is known under one condition; there no move is needed, whatever the level. */
    @Test
    void underTheKnownConditionEveryoneStartsOnHisHomeLine() {
        Scenario known = Scenarios.readWith("23 mL", "25 mL").scenario().orElseThrow();
        Physics physics = Physics.under(known.event().laws());
        HomeLines homes = physics.homeLines(
                new LineFinder(new RowMarch(physics.grid()), physics.carry()),
                known.event().pattern());
        Question question = new Question(
                List.of(known.names().surfaces().get(Catalogue.REFERENCE_SURFACE)),
                List.copyOf(known.names().styles().values()),
                List.of(Hand.RIGHT),
                List.of(known.names().covers().get(Catalogue.REFERENCE_COVER)),
                List.of(),
                Optional.of(known.names().levels().get("casual")));

        List<StartLine> natural = FreshLines.of(known, question).stream()
                .filter(line -> line.basis() == LineBasis.NATURAL)
                .toList();

        assertThat(natural).hasSize(4);
        assertThat(natural).allSatisfy(start -> {
            Kind kind = start.kind();
            Player player = new Player(
                    kind.style(), kind.level().spread(), kind.hand(), physics.contact(kind.cover(), start.surface()));
            Line home = homes.home(player).orElseThrow();
            Line line = start.line().orElseThrow().line();
            assertThat(line.laydownBoard()).isCloseTo(home.laydownBoard(), within(0.02));
            assertThat(line.launchRad()).isCloseTo(home.launchRad(), within(1e-4));
            assertThat(Math.toDegrees(line.launchRad()))
                    .isCloseTo(Math.toDegrees(kind.style().naturalLaunchRad()), within(2.0));
        });
    }
}
