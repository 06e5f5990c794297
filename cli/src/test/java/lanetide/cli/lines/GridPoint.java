package lanetide.cli.lines;

/**
 * A question of the coach's grid: who bowls on what. Names are those of the shipped catalogue.
 *
 * @param feet length of the pattern (ft)
 * @param ratio its ratio, inside over outside
 * @param volumeMl its volume (mL)
 * @param surface name of the lane surface
 * @param style name of the playing style
 * @param cover name of the ball's cover
 */
record GridPoint(int feet, double ratio, int volumeMl, String surface, String style, String cover) {
    /** Whether the length rule, and what hangs on it, is for patterns of this length. */
    boolean isUsualLength() {
        return feet >= 35 && feet <= 45;
    }

    boolean isReactive() {
        return CoachGrid.REACTIVE.contains(cover);
    }

    GridPoint withRatio(double other) {
        return new GridPoint(feet, other, volumeMl, surface, style, cover);
    }

    GridPoint withVolume(int otherMl) {
        return new GridPoint(feet, ratio, otherMl, surface, style, cover);
    }

    GridPoint withSurface(String other) {
        return new GridPoint(feet, ratio, volumeMl, other, style, cover);
    }

    GridPoint withStyle(String other) {
        return new GridPoint(feet, ratio, volumeMl, surface, other, cover);
    }

    GridPoint withCover(String other) {
        return new GridPoint(feet, ratio, volumeMl, surface, style, other);
    }
}
