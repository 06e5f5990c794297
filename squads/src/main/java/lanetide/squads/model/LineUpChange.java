package lanetide.squads.model;

import lanetide.oilflow.Require;

/** How who bowls differs from the list. */
public sealed interface LineUpChange {
    /**
     * Whom it is about.
     *
     * @return name of a bowler of the squad
     */
    String bowler();

    /**
     * Whether it is of any consequence for the first games.
     *
     * @param games how many games, at least 1
     * @return whether it may begin in one of them
     */
    boolean beginsBy(int games);

    /**
     * What is left of it when games have been played and the next one counts as the first.
     *
     * @param games how many games, at least 1
     * @return the change; one that has begun goes on from the first
     */
    LineUpChange after(int games);

    /**
     * A bowler does not bowl from a game on. His group goes on without him; the games are not scored for him.
     *
     * @param bowler name of a bowler of the squad
     * @param fromGame first game he misses, from 1; with 1 he practises neither
     */
    record Absence(String bowler, int fromGame) implements LineUpChange {
        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if the name is blank or {@code fromGame < 1}
         */
        public Absence {
            requireGame(bowler, fromGame);
        }

        @Override
        public boolean beginsBy(int games) {
            return fromGame <= games;
        }

        @Override
        public LineUpChange after(int games) {
            return new Absence(bowler, Math.max(1, fromGame - games));
        }
    }

    /**
     * Another bowler takes a bowler's place in the bowling order from a game on. Each keeps his own scores.
     *
     * @param bowler name of a bowler of the squad
     * @param fromGame first game of the other, from 1; with 1 he practises too
     * @param substitute the other, of a name alone in the squad
     */
    record Substitution(String bowler, int fromGame, Bowler substitute) implements LineUpChange {
        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if the name is blank or {@code fromGame < 1}
         */
        public Substitution {
            requireGame(bowler, fromGame);
        }

        @Override
        public boolean beginsBy(int games) {
            return fromGame <= games;
        }

        @Override
        public LineUpChange after(int games) {
            return new Substitution(bowler, Math.max(1, fromGame - games), substitute);
        }
    }

    /**
     * A bowler comes late. He joins at the first game that his group begins when he is there, and does not make up what
     * he has missed (assumption: rules of events differ).
     *
     * @param bowler name of a bowler of the squad
     * @param arrivesMs when he is there (ms from midnight before the first day), at least 0
     */
    record LateArrival(String bowler, long arrivesMs) implements LineUpChange {
        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if the name is blank or {@code arrivesMs < 0}
         */
        public LateArrival {
            Require.named(bowler, "bowler who comes late");
            if (arrivesMs < 0) {
                throw new IllegalArgumentException(
                        "bowler " + bowler + " comes at " + arrivesMs + " ms; it must be at least 0");
            }
        }

        @Override
        public boolean beginsBy(int games) {
            return true;
        }

        @Override
        public LineUpChange after(int games) {
            return this;
        }
    }

    private static void requireGame(String bowler, int fromGame) {
        Require.named(bowler, "bowler whose place changes");
        if (fromGame < 1) {
            throw new IllegalArgumentException(
                    "the place of bowler " + bowler + " changes in game " + fromGame + "; it must be at least 1");
        }
    }
}
