/** Oil patterns of a scenario, by their sheets or by tapes. */
package lanetide.cli.scenario.pattern;
