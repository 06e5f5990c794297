/** What a bowler will meet on his pairs, game by game, over many playings of the event. */
package lanetide.cli.preview;
