/** Where each style starts on the fresh pattern: who is asked about, on which surfaces, and the lines found. */
package lanetide.cli.lines;
