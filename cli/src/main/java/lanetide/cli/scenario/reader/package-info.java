/** What a scenario means: each block read into a part of the event, then what must fit together. */
package lanetide.cli.scenario.reader;
