/** When to oil again. */
package lanetide.cli.reoil;
