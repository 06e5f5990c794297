/**
 * What a bowler knows of his own balls, what others' balls and words tell him, and how he moves and changes his ball by
 * it. He sees no oil.
 */
package lanetide.squads.bowler;
