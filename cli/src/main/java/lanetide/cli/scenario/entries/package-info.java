/** Who bowls, as a scenario or the table beside it lists them, or by the shares of a field. */
package lanetide.cli.scenario.entries;
