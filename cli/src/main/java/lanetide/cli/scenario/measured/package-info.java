/** Reads tables of what was measured at an event: tapes, balls followed to the pins, scores. */
package lanetide.cli.scenario.measured;
