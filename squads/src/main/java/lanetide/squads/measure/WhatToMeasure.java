package lanetide.squads.measure;

import java.util.List;
import lanetide.squads.fairness.EffectKind;

/**
 * What an advantage hangs on, and what would make it surer.
 *
 * @param kind what the advantage goes with
 * @param id name of its class
 * @param notKnownPins standard deviation of the advantage over what may be true, luck taken out (pins a game)
 * @param hangsOn the unknowns that tell most of it, those that tell more first
 * @param worth what measurements would narrow, those that narrow more first
 */
public record WhatToMeasure(EffectKind kind, String id, double notKnownPins, List<HangsOn> hangsOn, List<Worth> worth) {
    /** Copies the lists. */
    public WhatToMeasure {
        hangsOn = List.copyOf(hangsOn);
        worth = List.copyOf(worth);
    }

    /**
     * An unknown that an advantage hangs on.
     *
     * @param unknown its name
     * @param share share of the advantage's variance over what may be true that goes with it alone, 0 to 1
     * @param rises whether the advantage is larger where the unknown is
     */
    public record HangsOn(String unknown, double share, boolean rises) {}

    /**
     * A measurement and what it is worth.
     *
     * @param measurement what is measured, once
     * @param narrows by what share the standard deviation of what is not known would shrink, 0 to 1
     */
    public record Worth(Measurement measurement, double narrows) {}
}
