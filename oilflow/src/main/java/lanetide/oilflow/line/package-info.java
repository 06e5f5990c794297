/** Lines a bowler can play, how good they are, and the window they leave the pattern through. */
package lanetide.oilflow.line;
