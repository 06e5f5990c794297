package lanetide.cli.report;

import lanetide.oilflow.film.OilFilm;

/**
 * How a text answer writes the thickness of oil.
 *
 * @param metric micrometres if true, units of oil if false
 */
public record OilUnits(boolean metric) {
    /** A film given in units of oil. */
    public String film(double units) {
        return metric ? Figures.fixed(units * OilFilm.UNIT_UM, 1) : Figures.fixed(units, 0);
    }

    /** Name of the unit. */
    public String name() {
        return metric ? "micrometres" : "units of oil";
    }

    /** The head of a column. */
    public String shortName() {
        return metric ? "um" : "units";
    }

    /** Where the heads end. */
    public String headsEnd() {
        return metric ? "4.57 m" : "15 ft";
    }
}
