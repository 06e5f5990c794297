/** Who bowls in which group: by lot within rules. */
package lanetide.squads.draw;
