/** What a scenario says: text, YAML and tables turned into values that know their place. */
package lanetide.cli.scenario.value;
