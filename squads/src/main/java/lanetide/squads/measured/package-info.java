/** What was measured at an event: tapes, balls thrown at the pins, scores. */
package lanetide.squads.measured;
