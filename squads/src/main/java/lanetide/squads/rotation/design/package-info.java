/**
 * Rules that send every group to a lane pair in every game: those known by name, those searched for, and which can
 * exist.
 */
package lanetide.squads.rotation.design;
