/**
 * Late changes: pairs that fail, bowlers who stay away, squads that run late, and the least that must change for them.
 */
package lanetide.squads.change;
