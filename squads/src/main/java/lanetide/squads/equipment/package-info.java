/**
 * What bowlers come with: their balls under the laws of the event, and the lines they have learned on its fresh
 * pattern.
 */
package lanetide.squads.equipment;
