/** What {@code fit} answers: how measurements and model agree, and what was learnt. */
package lanetide.cli.fit;
