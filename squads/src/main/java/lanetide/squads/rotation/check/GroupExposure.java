package lanetide.squads.rotation.check;

/**
 * What lanes a group finds, by games since oiling.
 *
 * @param squad the squad's name
 * @param group group, counted from zero
 * @param fresh games on lanes in the first third of an oiling
 * @param middle games in the second third
 * @param worn games in the last third
 * @param gamesSinceOiling mean number of games bowled on the pair since it was oiled, on arrival
 * @param rightHandedBefore mean number of right-handed bowlers' games on the pair since it was oiled, on arrival
 * @param leftHandedBefore the same of left-handed bowlers
 */
public record GroupExposure(
        String squad,
        int group,
        int fresh,
        int middle,
        int worn,
        double gamesSinceOiling,
        double rightHandedBefore,
        double leftHandedBefore) {}
