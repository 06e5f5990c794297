/** What a scenario can say: its blocks and keys, the quantities they take, and the names they choose from. */
package lanetide.cli.scenario.key;
