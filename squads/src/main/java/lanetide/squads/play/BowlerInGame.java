package lanetide.squads.play;

import lanetide.squads.score.TenpinScore;

/** A bowler in a game, which he may play on several pairs if a lane fails. */
final class BowlerInGame {
    private final int group;
    private final Member member;
    private int framesDone;

    BowlerInGame(int group, Member member) {
        this.group = group;
        this.member = member;
    }

    /** His group. */
    int group() {
        return group;
    }

    Member member() {
        return member;
    }

    int framesDone() {
        return framesDone;
    }

    boolean isDone() {
        return framesDone == TenpinScore.FRAMES;
    }

    void frameDone() {
        framesDone++;
    }
}
