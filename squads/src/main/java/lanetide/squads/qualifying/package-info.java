/** Who goes on from qualifying: totals over squads, ties, and people who are entered more than once. */
package lanetide.squads.qualifying;
