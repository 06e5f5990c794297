/** What a plan alone tells of a rotation and of an event, exactly. */
package lanetide.squads.rotation.check;
