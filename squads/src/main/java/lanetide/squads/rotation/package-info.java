/** Who bowls on which lane pair in which game: the rotation as a graph, and what is wrong with it. */
package lanetide.squads.rotation;
