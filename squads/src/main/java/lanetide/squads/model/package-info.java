/** The event as its director describes it: centre, pattern, squads, groups, bowlers, pace. Immutable. */
package lanetide.squads.model;
