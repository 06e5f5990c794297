package lanetide.squads.qualifying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.TieRule;
import org.junit.jupiter.api.Test;

/** Tables worked by hand. */
class QualifyingTest {
    /** Totals 640, 620, 600, 600, 600, 580; the three of 600 end on 210, 190 and 210. */
    private static final List<Entrant> SIX = List.of(
            Entrant.of(200, 190, 210),
            Entrant.of(220, 210, 210),
            Entrant.of(190, 220, 190),
            Entrant.of(180, 210, 210),
            Entrant.of(230, 190, 200),
            Entrant.of(190, 190, 200));

    private static Cut cut(int places, TieRule ties) {
        return new Cut(OptionalInt.of(places), OptionalDouble.empty(), ties, true, Counting.BEST);
    }

    private static Qualified qualified(int places, TieRule ties, List<Entrant> people) {
        return Qualifying.of(cut(places, ties), people).qualified();
    }

    @Test
    void thoseWithTheHighestTotalsGoOn() {
        Qualified two = qualified(2, TieRule.LOT, SIX);
        assertThat(two).isEqualTo(new Qualified(List.of(0.0, 1.0, 0.0, 0.0, 1.0, 0.0), 2, 620));
        assertThat(qualified(5, TieRule.LOT, SIX).chances()).containsExactly(1.0, 1.0, 1.0, 1.0, 1.0, 0.0);
    }

    @Test
    void theLotSharesTheLastPlacesAmongAllWhoTie() {
        assertThat(qualified(3, TieRule.LOT, SIX).chances()).containsExactly(1.0 / 3, 1.0, 1.0 / 3, 1.0 / 3, 1.0, 0.0);
        assertThat(qualified(4, TieRule.LOT, SIX).chances()).containsExactly(2.0 / 3, 1.0, 2.0 / 3, 2.0 / 3, 1.0, 0.0);
        assertThat(qualified(4, TieRule.LOT, SIX).scorePins()).isEqualTo(600);
    }

    @Test
    void theLastGamePartsThoseWhoTieAndThenTheOneBeforeIt() {
        // 210 after 210 stands before 210 after 190, and that before 190.
        assertThat(qualified(3, TieRule.LAST_GAME, SIX).chances()).containsExactly(0.0, 1.0, 0.0, 1.0, 1.0, 0.0);
        assertThat(qualified(4, TieRule.LAST_GAME, SIX).chances()).containsExactly(1.0, 1.0, 0.0, 1.0, 1.0, 0.0);
    }

    @Test
    void theHighGamePartsThoseWhoTieAndWhatIsLeftIsForTheLot() {
        // 220 stands first; 210, 200, 190 and 210, 210, 180: the second best game parts them.
        assertThat(qualified(3, TieRule.HIGH_GAME, SIX).chances()).containsExactly(0.0, 1.0, 1.0, 0.0, 1.0, 0.0);
        assertThat(qualified(4, TieRule.HIGH_GAME, SIX).chances()).containsExactly(0.0, 1.0, 1.0, 1.0, 1.0, 0.0);
        List<Entrant> alike = List.of(Entrant.of(200, 180), Entrant.of(180, 200), Entrant.of(190, 190));
        assertThat(qualified(1, TieRule.HIGH_GAME, alike).chances()).containsExactly(0.5, 0.5, 0.0);
        assertThat(qualified(1, TieRule.LAST_GAME, alike).chances()).containsExactly(0.0, 1.0, 0.0);
    }

    @Test
    void whereAllWhoTieGoOnThereAreMoreThanPlaces() {
        Qualified three = qualified(3, TieRule.ALL, SIX);
        assertThat(three.chances()).containsExactly(1.0, 1.0, 1.0, 1.0, 1.0, 0.0);
        assertThat(three.goingOn()).isEqualTo(5);
        assertThat(qualified(2, TieRule.ALL, SIX).goingOn()).isEqualTo(2);
    }

    @Test
    void theChancesAddUpToThoseWhoGoOnUnderEveryRule() {
        for (TieRule ties : TieRule.values()) {
            for (int places = 1; places < 6; places++) {
                Qualified found = qualified(places, ties, SIX);
                // Thirds add up to whole numbers here.
                assertThat(found.chances().stream()
                                .mapToDouble(chance -> chance)
                                .sum())
                        .isEqualTo(found.goingOn());
                assertThat(found.goingOn()).isGreaterThanOrEqualTo(places);
            }
        }
    }

    @Test
    void aStartedPlaceOfAShareCounts() {
        assertThat(new Cut(OptionalInt.empty(), OptionalDouble.of(0.25), TieRule.LOT, true, Counting.BEST).places(10))
                .isEqualTo(3);
        assertThat(new Cut(OptionalInt.empty(), OptionalDouble.of(0.1), TieRule.LOT, true, Counting.BEST).places(30))
                .isEqualTo(3);
    }

    @Test
    void theBestBlockOrTheSumOfAllCountsForWhoIsEnteredTwice() {
        Entrant twice = new Entrant(List.of(List.of(200, 190), List.of(180, 220)));
        List<Entrant> people = List.of(Entrant.of(205, 200), twice, Entrant.of(199, 200));
        assertThat(Qualifying.of(cut(1, TieRule.LOT), people).order(List.of(0, 1, 2)))
                .containsExactly(0, 1, 2);
        Cut sum = new Cut(OptionalInt.of(1), OptionalDouble.empty(), TieRule.LOT, true, Counting.SUM);
        assertThat(Qualifying.of(sum, people).order(List.of(0, 1, 2))).containsExactly(1, 0, 2);
        // With the first squad alone he has 390, behind both.
        assertThat(Qualifying.of(cut(1, TieRule.LOT), people)
                        .with(1, twice.only(0))
                        .order(List.of(0, 1, 2)))
                .containsExactly(0, 2, 1);
    }

    @Test
    void ofTwoBlocksOfOneTotalTheOneThatWinsTiesCounts() {
        Entrant twice = new Entrant(List.of(List.of(210, 190), List.of(190, 210)));
        List<Entrant> people = List.of(twice, Entrant.of(200, 200), Entrant.of(100, 100));
        assertThat(Qualifying.of(cut(1, TieRule.LAST_GAME), people).qualified().chances())
                .containsExactly(1.0, 0.0, 0.0);
    }

    @Test
    void whoHasNotBowledStandsLast() {
        List<Entrant> people = List.of(new Entrant(List.of()), Entrant.of(100), Entrant.of(90));
        assertThat(Qualifying.of(cut(2, TieRule.LAST_GAME), people).order(List.of(0, 1, 2)))
                .containsExactly(1, 2, 0);
    }

    @Test
    void whereThereAreNoMorePeopleThanPlacesAllGoOn() {
        for (int places : new int[] {6, 9}) {
            Qualified all = qualified(places, TieRule.LOT, SIX);
            assertThat(all.chances()).containsOnly(1.0);
            assertThat(all.goingOn()).isEqualTo(6);
            assertThat(all.scorePins()).isEqualTo(580);
        }
    }

    @Test
    void aCutWithoutPlacesIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> cut(0, TieRule.LOT));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Cut(OptionalInt.of(1), OptionalDouble.of(0.5), TieRule.LOT, true, Counting.BEST));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Cut(OptionalInt.empty(), OptionalDouble.of(1), TieRule.LOT, true, Counting.BEST))
                .withMessageContaining("must be above 0 and below 1");
    }
}
