/** What is printed and handed out: lane assignments, the oiling plan, bowlers' cards, a calendar, a table. */
package lanetide.cli.sheets;
