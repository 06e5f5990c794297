/** The commands of the program, one class each, and the options they share. */
package lanetide.cli.command;
