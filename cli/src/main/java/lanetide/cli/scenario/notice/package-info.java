/** What is told of a scenario: notices with their place, and assumptions. */
package lanetide.cli.scenario.notice;
