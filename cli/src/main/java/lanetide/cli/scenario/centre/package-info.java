/** Centre files: what was measured in a centre, and the sets of values that it leaves. */
package lanetide.cli.scenario.centre;
