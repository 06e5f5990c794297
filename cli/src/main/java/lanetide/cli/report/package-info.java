/** Answers as plain text, JSON and CSV. */
package lanetide.cli.report;
