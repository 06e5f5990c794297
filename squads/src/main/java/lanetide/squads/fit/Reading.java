package lanetide.squads.fit;

import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.GameEnded;
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
     * What would be read on the mean.
     *
     * @param said what there is in a playing
     * @return the mean reading; more than there is where a tape cannot read less than nothing
     */
    default double mean(double said) {
        return said;
    }

    /**
     * What would be read with an error.
     *
     * @param said what there is in a playing
     * @param error the error
     * @return the reading
     */
    default double read(double said, double error) {
        return said + error;
    }

    /** A tape, whatever it was taken on. */
    sealed interface OfTape extends Reading {
        /**
         * The tape.
         *
         * @return the tape
         */
        TapeTaken tape();

        @Override
        default double observed() {
            return tape().units();
        }

        @Override
        default double errorVariance() {
            return tape().errorUnits() * tape().errorUnits();
        }

        @Override
        default double mean(double said) {
            return tape().meanReading(said);
        }

        @Override
        default double read(double said, double error) {
            return Math.max(0, said + error);
        }
    }

    /**
     * A tape on oil that nobody has played on.
     *
     * @param tape the tape
     */
    record Fresh(TapeTaken tape) implements OfTape {}

    /**
     * A tape on oil that was played on.
     *
     * @param tape the tape
     */
    record Worn(TapeTaken tape) implements OfTape {}

    /** A board on which a ball was seen. */
    sealed interface OfBall extends Reading {
        /**
         * The ball.
         *
         * @return the ball
         */
        BallThrown ball();

        @Override
        default double errorVariance() {
            return ball().seen().errorBoards() * ball().seen().errorBoards();
        }
    }

    /**
     * Where a ball passed a distance.
     *
     * @param ball a ball of which that is known
     */
    record Passed(BallThrown ball) implements OfBall {
        /**
         * Where it was seen.
         *
         * @return distance and board
         */
        public BallSeen.Passed at() {
            return ball.seen().passed().orElseThrow();
        }

        @Override
        public double observed() {
            return at().board();
        }
    }

    /**
     * Where a ball met the pins.
     *
     * @param ball a ball of which that is known
     */
    record Met(BallThrown ball) implements OfBall {
        @Override
        public double observed() {
            return ball.seen().pinsBoard().orElseThrow();
        }
    }

    /**
     * Where a bowler plays on oil that nobody has played on, as the mean of his balls in practice.
     *
     * @param squad name of his squad
     * @param bowler his name
     * @param observed board at the arrows, from the gutter on his side
     */
    record Played(String squad, String bowler, double observed) implements Reading {
        /** How far bowlers of a kind stand from each other by habit (boards, standard deviation, assumption). */
        static final double HABIT_BOARDS = 1.5;

        @Override
        public double errorVariance() {
            return HABIT_BOARDS * HABIT_BOARDS;
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

    /**
     * When a game was done on its last pair, which tells the pace of play.
     *
     * @param game the game
     * @param startMs planned start of its squad's practice (ms from midnight before the first day)
     */
    record Ended(GameEnded game, long startMs) implements Reading {
        private static final double MINUTE_MS = 60_000;

        /** Minutes from the start that was planned. */
        double minutes(long timeMs) {
            return (timeMs - startMs) / MINUTE_MS;
        }

        @Override
        public double observed() {
            return minutes(game.endedMs());
        }

        @Override
        public double errorVariance() {
            return game.errorMs() * game.errorMs() / (MINUTE_MS * MINUTE_MS);
        }
    }
}
