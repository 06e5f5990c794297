/** Traditional tenpin scoring, ball by ball, and the exact number of games there are for every score. */
package lanetide.squads.score;
