/** What a pattern is and what it means for play. */
package lanetide.cli.pattern;
