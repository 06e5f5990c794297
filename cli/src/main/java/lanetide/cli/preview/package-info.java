/** What a bowler will meet on his pairs, game by game, over many playings of the event, and how it is told. */
package lanetide.cli.preview;
