/** What measurements leave of what is not known: sets of values fitted to tapes, balls and scores. */
package lanetide.squads.fit;
