package lanetide.squads.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.SearchObjective;
import lanetide.squads.rotation.design.Searched;
import lanetide.squads.rotation.design.Shuffled;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.rotation.design.Turning;
import org.junit.jupiter.api.Test;

/** Pairs that no group is sent to. */
class SparePairsTest {
    private static final List<LanePair> SIX = IntStream.range(0, 6)
            .mapToObj(pair -> new LanePair(2 * pair + 1, 2 * pair + 2))
            .toList();

    private static Centre centre(LanePair... spare) {
        return Fixtures.centre(6, Fixtures.machines(1, 45_000, 45_000)).withSpare(List.of(spare));
    }

    @Test
    void everyDesignGoesOverTheOtherPairsAsOverARowWithoutGaps() {
        Centre centre = centre(new LanePair(9, 10), new LanePair(3, 4));
        List<RotationDesign> designs = List.of(
                new Stay(),
                new Ring(1, 1),
                new Turning(2),
                new RowComplete(),
                new Shuffled(3),
                new Searched(SearchObjective.DEFAULT, 3, 80));
        for (RotationDesign design : designs) {
            Rotation row = design.plan(4, 4, 4);
            Rotation rotation = centre.plan(design, 4, 4);

            assertThat(rotation.pairs()).isEqualTo(6);
            assertThat(rotation.visits(1) || rotation.visits(4))
                    .as("%s", design)
                    .isFalse();
            List<LanePair> others = centre.rotationPairs();
            for (int game = 0; game < 4; game++) {
                for (int group = 0; group < 4; group++) {
                    assertThat(SIX.get(rotation.pairOf(game, group)))
                            .as("%s, game %d, group %d", design, game, group)
                            .isEqualTo(others.get(row.pairOf(game, group)));
                }
            }
        }
    }

    @Test
    void moreGroupsThanOtherPairsAreRefused() {
        Centre centre = centre(new LanePair(3, 4), new LanePair(9, 10));

        assertThatThrownBy(() -> centre.plan(new Stay(), 5, 4))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageStartingWith("The number of groups (5) must be at most the number of pairs (4)");
    }

    @Test
    void sparePairsCountAmongTheLanesAndStandFromLeftToRight() {
        Centre centre = centre(new LanePair(9, 10), new LanePair(3, 4));

        assertThat(centre.spare()).containsExactly(new LanePair(3, 4), new LanePair(9, 10));
        assertThat(centre.laneNumbers()).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
    }

    @Test
    void aSparePairMustBeOneOfTheCentreAndOneOtherMustBeLeft() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> centre(new LanePair(13, 14)))
                .withMessageContaining("must be some of the pairs");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> centre(SIX.toArray(LanePair[]::new)))
                .withMessageContaining("at least one must have a group");
    }
}
