package lanetide.oilflow.pocket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.BallCore;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PinCarryTest {
    private static final PinCarry CARRY = new PinCarry();
    private static final double MPH_MPS = 0.44704;
    private static final double DEFAULT_KG = BallCore.DEFAULT.massKg();
    /**
     * Scatter of a straight spare ball at the pins (boards): between 0.65 board at the arrows and that carried to 60
     * ft.
     */
    private static final double SPARE_SPREAD_BOARDS = 1.3;

    @Test
    void everyStrikeChanceIsAProbability() {
        for (double board = -2; board <= 42; board += 0.1) {
            for (double deg = -8; deg <= 14; deg += 0.5) {
                assertThat(CARRY.strikeChance(board, Math.toRadians(deg)))
                        .as("board %s, %s degrees", board, deg)
                        .isBetween(0.0, 1.0);
            }
        }
    }

    /** Boards 17 to 18 at 4 to 6 degrees strike most (Ridenour, USBC, Is that the 3 pin carrying the 10 pin?). */
    @ParameterizedTest(name = "{0} degrees")
    @ValueSource(doubles = {4, 5, 6})
    void theBestPlaceIsBoard17AndAHalf(double deg) {
        double best = 0;
        double bestBoard = 0;
        for (double board = 10; board <= 30; board += 0.05) {
            double chance = CARRY.strikeChance(board, Math.toRadians(deg));
            if (chance > best) {
                best = chance;
                bestBoard = board;
            }
        }
        assertThat(bestBoard).isCloseTo(17.5, within(0.3));
        for (double other = -2; other <= 14; other += 0.25) {
            assertThat(CARRY.strikeChance(17.5, Math.toRadians(other))).isLessThanOrEqualTo(best);
        }
    }

    /**
     * 40 strikes of 54 pocket hits in televised finals (Thomas): ours within the binomial 95 % limits of that count.
     */
    @Test
    void professionalsCarryAsManyPocketHitsAsPublished() {
        double sum = 0;
        int places = 0;
        for (double off = -1.25; off <= 1.25; off += 0.01) {
            sum += CARRY.strikeChance(17.5 + off, Math.toRadians(5));
            places++;
        }
        assertPlausible(sum / places, 40, 54);
    }

    /** At 16 to 18 mph, where professionals' balls come in, a ball of 15 lb keeps the chances held to their results. */
    @ParameterizedTest(name = "{0} mph")
    @ValueSource(doubles = {16, 17, 18})
    void atProfessionalSpeedsTheFittedChancesHold(double mph) {
        for (double board = 14; board <= 20; board += 0.25) {
            assertThat(CARRY.strikeChance(board, Math.toRadians(5), mph * MPH_MPS, DEFAULT_KG))
                    .isEqualTo(CARRY.strikeChance(board, Math.toRadians(5)));
        }
    }

    @Test
    void tooSlowAndTooFastBallsStrikeLessButSpeedMattersLittle() {
        double best = CARRY.strikeChance(17.5, Math.toRadians(5));
        double slow = CARRY.strikeChance(17.5, Math.toRadians(5), 10 * MPH_MPS, DEFAULT_KG);
        double fast = CARRY.strikeChance(17.5, Math.toRadians(5), 23 * MPH_MPS, DEFAULT_KG);
        assertThat(slow).isBetween(0.85 * best, 0.95 * best);
        assertThat(fast).isBetween(0.85 * best, 0.95 * best);
        assertThat(CARRY.strikeChance(17.5, Math.toRadians(5), 0.1, DEFAULT_KG)).isBetween(0.0, 1.0);
    }

    /** Little deflection widens the pocket (Hooper, International Journal of Sports Science and Coaching, 2024). */
    @Test
    void lightBallsAreTurnedAsideAndStrikeLess() {
        double share12 = pocketShare(12);
        double share14 = pocketShare(14);
        double share16 = pocketShare(16);
        assertThat(share12).isLessThan(share14);
        assertThat(share14).isLessThan(pocketShare(15));
        assertThat(pocketShare(15)).isLessThan(share16);
        assertThat(share16).isLessThan(1.05 * pocketShare(15));
        assertThat(share12).isGreaterThan(0.8 * pocketShare(15));
    }

    private static double pocketShare(double pounds) {
        double sum = 0;
        for (int i = -100; i <= 100; i++) {
            double kg = pounds == 15 ? DEFAULT_KG : pounds * 0.45359237;
            sum += CARRY.strikeChance(17.5 + 0.0125 * i, Math.toRadians(5), 17 * MPH_MPS, kg) / 201;
        }
        return sum;
    }

    @Test
    void aBallThatMissesTheHeadPinNeverStrikes() {
        for (double deg = -5; deg <= 8; deg++) {
            assertThat(CARRY.strikeChance(13.7, Math.toRadians(deg))).isZero();
            assertThat(CARRY.strikeChance(26.3, Math.toRadians(deg))).isZero();
        }
    }

    @Test
    void luckierNumbersStrikeAndTheRestShareTheLeaves() {
        for (double board = 14; board <= 26; board += 0.5) {
            double strike = CARRY.strikeChance(board, Math.toRadians(5));
            boolean struck = true;
            for (double u = 0; u < 1; u += 0.001) {
                boolean now = CARRY.leaveOfFirstBall(board, Math.toRadians(5), u) == 0;
                assertThat(now).as("board %s, u %s", board, u).isEqualTo(u < strike);
                assertThat(struck || !now)
                        .as("a strike after a miss at board %s, u %s", board, u)
                        .isTrue();
                struck = now;
            }
        }
    }

    @Test
    void acrossTheMiddleALeaveIsTheMirrorImage() {
        for (double off = 0.25; off < 6; off += 0.25) {
            for (double u = 0.9; u < 1; u += 0.01) {
                double rad = Math.toRadians(5);
                double near = CARRY.strikeChance(20 - off, rad);
                double far = CARRY.strikeChance(20 + off, rad);
                int leave = CARRY.leaveOfFirstBall(20 - off, rad, near + (1 - near) * u);
                int image = CARRY.leaveOfFirstBall(20 + off, rad, far + (1 - far) * u);
                assertThat(Rack.mirrored(image)).as("off %s, u %s", off, u).isEqualTo(leave);
            }
        }
    }

    /** Light hits near board 16.5 leave the 10 most (Ridenour). */
    @Test
    void aLightHitLeavesTheTenPinMostOften() {
        int[] counts = new int[Rack.FULL + 1];
        for (double u = 0; u < 1; u += 0.0005) {
            counts[CARRY.leaveOfFirstBall(16.5, Math.toRadians(6), u)]++;
        }
        for (int leave = 1; leave <= Rack.FULL; leave++) {
            assertThat(counts[leave]).as(Rack.format(leave)).isLessThanOrEqualTo(counts[Rack.parse("10")]);
        }
    }

    /** None of 53 seven-ten splits and 17 of 35 three-tens were made in televised finals, 2005-06 to 2009-10 (ESPN). */
    @Test
    void splitsAreMadeAsOftenAsPublished() {
        assertPlausible(conversion("7-10", SPARE_SPREAD_BOARDS), 0, 53);
        assertPlausible(conversion("3-10", SPARE_SPREAD_BOARDS), 17, 35);
    }

    /** Half widths of ball and pin, 8.54 and 4.76 in, make a window of 12.3 boards, cut by the gutter to 9.3. */
    @Test
    void theTenPinFallsToEveryBallThatReachesItAndToNoOther() {
        int ten = Rack.parse("10");
        double reach = (0.1085 + 4.76 / 2 * 0.0254) / (41.5 * 0.0254 / 39);
        for (double board = -3; board <= 43; board += 0.1) {
            boolean reached = board >= 0.5 && board < Rack.board(10) + reach;
            assertThat(CARRY.leaveOfSpareBall(ten, board, 0, 0.5) == 0)
                    .as("board %s", board)
                    .isEqualTo(reached);
        }
        assertThat(CARRY.target(ten).board()).isBetween(0.5, Rack.board(10) + reach);
        assertThat(CARRY.target(ten).depthM()).isEqualTo(Rack.depthM(10));
    }

    @Test
    void aSpareBallAddsNoPins() {
        for (int pins = 1; pins <= Rack.FULL; pins++) {
            for (double u = 0; u < 1; u += 0.125) {
                int left = CARRY.leaveOfSpareBall(pins, CARRY.target(pins).board(), 0, u);
                assertThat(left & ~pins).as(Rack.format(pins)).isZero();
                assertThat(left).as("the front pin of " + Rack.format(pins)).isNotEqualTo(pins);
            }
        }
    }

    /** Share of spares made by a straight ball with a normal scatter about the target. */
    private static double conversion(String pins, double spreadBoards) {
        int standing = Rack.parse(pins);
        NormalDistribution normal =
                new NormalDistribution(null, CARRY.target(standing).board(), spreadBoards);
        int made = 0;
        int balls = 0;
        for (int i = 0; i < 200; i++) {
            double board = normal.inverseCumulativeProbability((i + 0.5) / 200);
            for (int j = 0; j < 200; j++) {
                made += CARRY.leaveOfSpareBall(standing, board, 0, (j + 0.5) / 200) == 0 ? 1 : 0;
                balls++;
            }
        }
        return (double) made / balls;
    }

    /** Under our probability, the published count must not lie in a tail of 2.5 %. */
    private static void assertPlausible(double ours, int made, int of) {
        BinomialDistribution published = new BinomialDistribution(null, of, ours);
        assertThat(published.cumulativeProbability(made))
                .as("%d or fewer of %d at %s", made, of, ours)
                .isGreaterThan(0.025);
        assertThat(1 - published.cumulativeProbability(made - 1))
                .as("%d or more of %d at %s", made, of, ours)
                .isGreaterThan(0.025);
    }
}
