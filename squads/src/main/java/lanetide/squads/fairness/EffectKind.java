package lanetide.squads.fairness;

/** What an advantage can go with. */
public enum EffectKind {
    /** Playing in this squad, whoever plays. */
    SQUAD,
    /** Starting on this pair, whoever starts there; over all squads. */
    PAIR,
    /** Being these bowlers in the draw as it is, against the same bowlers over all seats. */
    GROUP,
    /** Delivering from this side, whoever does. */
    HAND,
    /** What the change of the lanes gives to this style, against the whole field. */
    STYLE
}
