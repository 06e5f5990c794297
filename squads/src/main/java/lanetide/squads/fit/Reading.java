package lanetide.squads.fit;

import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.TapeTaken;

/** One number that was measured and that a playing can say as well. */
public sealed interface Reading {
    /**
     * What was read.
     *
     * @return the number, in the unit in which playings say it
     */
    double observed();

    /**
     * Variance of its own error, without the day's luck.
     *
     * @return the variance, above 0
     */
    double errorVariance();

    /**
     * A tape on oil that nobody has played on.
     *
     * @param tape the tape
     */
    record Fresh(TapeTaken tape) implements Reading {
        @Override
        public double observed() {
            return tape.units();
        }

        @Override
        public double errorVariance() {
            return tape.errorUnits() * tape.errorUnits();
        }
    }

    /**
     * A tape on oil that was played on.
     *
     * @param tape the tape
     */
    record Worn(TapeTaken tape) implements Reading {
        @Override
        public double observed() {
            return tape.units();
        }

        @Override
        public double errorVariance() {
            return tape.errorUnits() * tape.errorUnits();
        }
    }

    /**
     * Where a ball met the pins.
     *
     * @param ball the ball
     */
    record Met(BallThrown ball) implements Reading {
        @Override
        public double observed() {
            return ball.pinsBoard();
        }

        @Override
        public double errorVariance() {
            return ball.errorBoards() * ball.errorBoards();
        }
    }

    /**
     * How much better than their own means those scored in a game who bowled all games of a squad: who they are is
     * taken out.
     *
     * @param squad the squad
     * @param game its game, from 1
     * @param observed pins above their mean
     * @param bowlers how many they are
     */
    record Game(String squad, int game, double observed, int bowlers) implements Reading {
        /** Pins are counted, not measured; the rounding of a mean of whole pins. */
        private static final double COUNTED = 1.0 / 12;

        @Override
        public double errorVariance() {
            return COUNTED / bowlers;
        }
    }
}
