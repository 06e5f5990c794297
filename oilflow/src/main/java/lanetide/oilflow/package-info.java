/** The oil film on a lane, the ball that moves over it and wears it, and the lines that meet the pocket. */
package lanetide.oilflow;
