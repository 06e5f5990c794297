/** What a playing of an event gives: scores, times, states of lanes, the account of the oil. */
package lanetide.squads.result;
