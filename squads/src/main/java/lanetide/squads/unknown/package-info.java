/** What is not known of play, and events under sets of values that may be true. */
package lanetide.squads.unknown;
