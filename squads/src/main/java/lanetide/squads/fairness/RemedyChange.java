package lanetide.squads.fairness;

import java.util.Optional;
import lanetide.squads.model.Conditioning;
import lanetide.squads.rotation.design.RotationDesign;

/**
 * What is changed in an event, with its settings.
 *
 * @param kind what is changed
 * @param design the rotation's design; empty where the rotations stay
 * @param oiling what is done before every squad, or where it is oil over before every later one; empty where that stays
 */
public record RemedyChange(Kind kind, Optional<RotationDesign> design, Optional<Conditioning> oiling) {
    /** Kinds of changes; the names never change between versions. */
    public enum Kind {
        /** Nothing: the event as it is. */
        AS_IT_IS,
        /** Another rotation. */
        ROTATION,
        /** Another oiling. */
        OILING,
        /** Another oiling and another rotation. */
        OILING_AND_ROTATION,
        /** The groups redrawn, styles and hands evenly. */
        GROUPS,
        /** The squads in reverse order. */
        SQUAD_ORDER
    }

    /**
     * A change without settings.
     *
     * @param kind what is changed
     * @return the change
     */
    public static RemedyChange of(Kind kind) {
        return new RemedyChange(kind, Optional.empty(), Optional.empty());
    }

    static RemedyChange rotation(RotationDesign design) {
        return new RemedyChange(Kind.ROTATION, Optional.of(design), Optional.empty());
    }

    static RemedyChange oiling(Conditioning oiling) {
        return new RemedyChange(Kind.OILING, Optional.empty(), Optional.of(oiling));
    }

    RemedyChange and(RotationDesign other) {
        return new RemedyChange(Kind.OILING_AND_ROTATION, Optional.of(other), oiling);
    }
}
