package lanetide.squads.model;

/**
 * A break in a squad. Every group takes it when it has finished a game, before it walks on: the first game that is at
 * least the given one and ends at the given time or later. After its last game a group takes no break.
 *
 * @param afterGame game after which it may begin at the earliest, from 1
 * @param notBeforeMs time at which it may begin at the earliest (ms from midnight before the first day), at least 0
 * @param lengthMs how long it is (ms), above 0
 */
public record Break(int afterGame, long notBeforeMs, long lengthMs) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Break {
        if (afterGame < 1 || notBeforeMs < 0 || lengthMs <= 0) {
            throw new IllegalArgumentException("break: the game (" + afterGame + ") must be at least 1, the time ("
                    + notBeforeMs + " ms) at least 0, the length (" + lengthMs + " ms) above 0");
        }
    }
}
