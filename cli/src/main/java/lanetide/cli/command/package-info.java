/** The commands of the program, one class each. */
package lanetide.cli.command;
