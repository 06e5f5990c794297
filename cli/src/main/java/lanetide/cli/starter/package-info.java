/** A scenario to begin with: what is asked for, and how it is written. */
package lanetide.cli.starter;
