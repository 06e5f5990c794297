/** Reads scenario files: YAML in, an event or notices out, every fault in one pass. */
package lanetide.cli.scenario;
