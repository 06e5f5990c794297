package lanetide.squads.study;

import lanetide.squads.result.TimetableEntry;

/**
 * One line of the timetable over all playings of an event.
 *
 * @param squad squad it belongs to
 * @param what what happens
 * @param game game number from 1, 0 for what is not a game
 * @param start when it starts
 * @param end when the last pair is done with it
 */
public record TimetableStatistics(
        String squad, TimetableEntry.Activity what, int game, TimeSpread start, TimeSpread end) {}
