/** Sentences that several answers and the notices share, and how sentences count and list. */
package lanetide.cli.words;
