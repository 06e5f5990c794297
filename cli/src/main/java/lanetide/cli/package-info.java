/** The lanetide program: scenarios in, answers out. */
package lanetide.cli;
