/** The options that commands share, and what is said of a value that cannot be used. */
package lanetide.cli.options;
