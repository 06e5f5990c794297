package lanetide.squads.study;

import lanetide.squads.result.EventResult;

/**
 * What one playing of a study gives: scores and sheets of every bowler by game, times, the lanes as each squad found
 * them and after each game, where the oil went.
 *
 * @param playing which one
 * @param result what happened
 */
public record PlayingSummary(Playing playing, EventResult result) {}
