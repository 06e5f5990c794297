package lanetide.squads.rotation;

/** Something a director should know about a rotation. */
public sealed interface RotationFinding permits Collision, RepeatedVisit, SolePredecessor {}
