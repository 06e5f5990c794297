/** Which lanes a scenario uses, for all squads and for each, and which pattern lies on which of them. */
package lanetide.cli.scenario.lanes;
