package lanetide.squads.fairness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.rotation.design.Ring;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Verdicts on events that are played ball by ball, where construction or physics says what they must be. */
class PlayedVerdictTest {
    private static final int SEEDS = 50;
    private static final int PLAYINGS = 150;

    /**
     * The second squad finds lanes with twice the oil that everybody brings his line for. All are strokers, whom that
     * harms most; what players of more revs lose by it is too little to be shown in so few playings.
     */
    private static final Event UNFAIR = SmallEvents.twoSquads(
            SmallEvents.groups(2, 4, id -> SmallEvents.bowler(id, Hand.RIGHT, "stroker", "scratch", "medium-reactive")),
            4,
            Conditioning.OIL_OVER);

    /** Equal bowlers, equal lanes. */
    private static final Event EVEN = SmallEvents.twoSquads(SmallEvents.alike(2, 4), 4, Conditioning.STRIP_AND_OIL);

    @Test
    void aSquadThatFindsTwiceTheOilIsFoundToLoseByIt() {
        assertThat(isFoundOut(1)).isTrue();
    }

    @Test
    @Tag("slow")
    void anEventThatIsUnfairByConstructionIsFoundUnfairAndTheSquadIsNamed() {
        long found = LongStream.rangeClosed(1, SEEDS)
                .filter(PlayedVerdictTest::isFoundOut)
                .count();

        assertThat(found).as("of %d seeds", SEEDS).isGreaterThanOrEqualTo((long) Math.ceil(0.95 * SEEDS));
        ReadmeRow.says(
                "unfair by construction, played ball by ball (second squad of strokers on twice the oil): the same",
                found + " of " + SEEDS + " seeds");
    }

    private static boolean isFoundOut(long seed) {
        FairnessResult result = study(UNFAIR, seed, PLAYINGS, 1);
        return result.verdict() == Verdict.UNFAIR
                && result.effects().stream()
                        .anyMatch(effect -> effect.kind() == EffectKind.SQUAD
                                && effect.id().equals("B")
                                && effect.verdict() == Verdict.UNFAIR
                                && effect.advantagePins() < 0);
    }

    @Test
    @Tag("slow")
    void anEventThatIsEvenByConstructionIsHardlyEverFoundUnfair() {
        long unfair = LongStream.rangeClosed(1, SEEDS)
                .filter(seed -> study(EVEN, seed, PLAYINGS, 1).verdict() == Verdict.UNFAIR)
                .count();

        assertThat(unfair).as("of %d seeds", SEEDS).isLessThanOrEqualTo((long) (0.05 * SEEDS));
        ReadmeRow.says("even by construction, played ball by ball: unfair", unfair + " of " + SEEDS + " seeds");
    }

    /**
     * Balls that do not flare carry oil down the lane, and a ball thrown over it comes in late (common practice, no
     * source).
     */
    @Test
    @Tag("slow")
    void amongStraightPlayersWithPlasticBallsTheFirstSquadIsBetterOffThanTheThird() {
        List<Group> straight =
                SmallEvents.groups(2, 4, id -> SmallEvents.bowler(id, Hand.RIGHT, "straight", "league", "plastic"));
        Event event = SmallEvents.event(
                2,
                new Ring(1, 1).plan(2, 2, 6),
                straight,
                Conditioning.STRIP_AND_OIL,
                Conditioning.NONE,
                Conditioning.NONE);

        List<Effect> squads = study(event, 1, 150, 1).effects().stream()
                .filter(effect -> effect.kind() == EffectKind.SQUAD)
                .toList();

        assertThat(squads.get(0).ci90().low())
                .isGreaterThan(squads.get(2).ci90().high());
        ReadmeRow.says(
                "straight players with plastic balls: first squad, third squad",
                String.format(
                        Locale.ROOT,
                        "%+.1f, %+.1f pins",
                        squads.get(0).advantagePins(),
                        squads.get(2).advantagePins()));
    }

    private static FairnessResult study(Event event, long seed, int playings, double margin) {
        return FairnessStudy.run(event, new FairnessPlan(seed, playings, margin, true), 2, done -> {});
    }
}
