/** What lane machines do before a squad: how long it takes, lane by lane, and what it costs. */
package lanetide.squads.machines;
