/** Scenarios written back, as they have changed. */
package lanetide.cli.scenario.write;
