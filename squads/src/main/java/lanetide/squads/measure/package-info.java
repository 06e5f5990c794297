/** What a verdict hangs on, and what could be measured to make it surer. */
package lanetide.squads.measure;
