/** What a reader makes of a scenario: its faults, and what was understood. */
package lanetide.cli.check;
