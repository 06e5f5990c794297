/** What {@code compare} answers: as text, JSON and a table. */
package lanetide.cli.compare;
