/** Squads of bowlers on pairs of lanes: who bowls where and when, shot by shot, and what it does to scores. */
package lanetide.squads;
