/** What {@code fairness} answers: its sentences, as text, JSON and a table. */
package lanetide.cli.fairness;
