/** Whose luck is whose: the streams of chance of every bowler. */
package lanetide.squads.luck;
