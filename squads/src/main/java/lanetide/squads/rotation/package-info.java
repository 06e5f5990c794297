/** Who bowls on which lane pair in which game: rotation designs, the rotation as a graph, and what is wrong with it. */
package lanetide.squads.rotation;
