/**
 * Where each style starts on the fresh pattern: who is asked about, on which surfaces, the lines found, and how they
 * are told.
 */
package lanetide.cli.lines;
