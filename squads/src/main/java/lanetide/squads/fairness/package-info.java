/** Whether an event treats its bowlers alike: what a seat, a hand, a style and the draw are worth in pins a game. */
package lanetide.squads.fairness;
