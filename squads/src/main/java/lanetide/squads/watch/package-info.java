/** Those who watch a playing: what they are shown of lanes and balls, and what is written down. */
package lanetide.squads.watch;
