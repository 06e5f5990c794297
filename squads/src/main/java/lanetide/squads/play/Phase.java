package lanetide.squads.play;

/**
 * Order of events at one instant: machines finish, then bowlers move, then they bowl, then those who are ready step up,
 * then the director decides.
 */
final class Phase {
    static final int MACHINE = 0;
    static final int MOVE = 1;
    static final int PLAY = 2;
    static final int STEP_UP = 3;
    static final int DIRECT = 4;

    private Phase() {}
}
