/**
 * What all answers share: pages of text, tables, JSON, figures, cautions. Each answer has a room of its own beside this
 * one.
 */
package lanetide.cli.report;
