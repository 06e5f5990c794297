package lanetide.oilflow.film;

import java.util.List;
import lanetide.oilflow.Require;

/**
 * The levelling of an oil film at rest: surface tension and weight close the grooves that balls have drawn.
 *
 * <p>A ripple of wavelength {@code 2 pi / k} on a film h dies as {@code exp(-t/tau)} with {@code 1/tau = (h^3 / (3
 * eta)) (rho g k^2 + sigma k^4)}. Source: Orchard, On surface levelling in viscous liquids and gels, Applied Scientific
 * Research A 11 (1962); the term with g is that of a thin film on a level plane and outweighs the other above 12 mm. In
 * a film of 20 um a track 4 mm wide, half a wave of 8 mm, closes in a quarter of an hour, in one of 5 um within a day;
 * a wave one board long takes hours even in thick heads and days in all else.
 *
 * <p>Limits: ripples low against the film and long against it; one Newtonian oil; no drying, no roughness that holds
 * the oil fast. In a film of a few micrometres the roughness is no longer small, so films thinner than
 * {@code leastFilmUm} stay as they are.
 *
 * @param surfaceTensionNpm surface tension of the oil sigma (N/m), 0.01 to 0.08
 * @param densityKgpm3 density rho (kg/m^3), 700 to 1200
 * @param viscosityPas viscosity eta (Pa s), 0.005 to 0.2
 * @param leastFilmUm film below which nothing moves (um), 0 to 1000
 */
public record Levelling(double surfaceTensionNpm, double densityKgpm3, double viscosityPas, double leastFilmUm) {
    /** Film below which nothing moves (um): in less, a track takes more than a day to close. */
    public static final double DEFAULT_MIN_FILM_UM = 5;
    /** Viscosity of a usual lane oil (Pa s). */
    public static final double DEFAULT_VISCOSITY_PAS = 0.035;

    private static final double GRAVITY_MPS2 = 9.80665;
    private static final double M_PER_UM = 1e-6;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Levelling {
        Require.inRange(surfaceTensionNpm, "surface tension (N/m)", 0.01, 0.08);
        Require.inRange(densityKgpm3, "density (kg/m^3)", 700, 1200);
        Require.inRange(viscosityPas, "viscosity (Pa s)", 0.005, 0.2);
        Require.inRange(leastFilmUm, "least film (um)", 0, 1000);
    }

    /**
     * A usual lane oil: 35 mPa s, the mean of one maker's range (34.68 cP; UC Davis Sports Biomechanics Laboratory,
     * Bowling dynamics); surface tension 30 mN/m and density 850 kg/m^3 of a mineral oil are assumptions.
     *
     * @return levelling of that oil
     */
    public static Levelling usual() {
        return usual(DEFAULT_VISCOSITY_PAS);
    }

    /**
     * The same oil, but for its viscosity.
     *
     * @param viscosityPas viscosity (Pa s), as above
     * @return levelling of that oil
     */
    public static Levelling usual(double viscosityPas) {
        return new Levelling(0.030, 850, viscosityPas, DEFAULT_MIN_FILM_UM);
    }

    /**
     * How long a ripple takes to fall to 37 % of its height.
     *
     * @param filmUm mean film (um), above 0
     * @param wavelengthM length of the ripple (m), above 0
     * @return seconds
     * @throws IllegalArgumentException if a value is not a finite number above 0
     */
    public double timeConstantS(double filmUm, double wavelengthM) {
        Require.positive(filmUm, "film (um)");
        return 1 / (mobility(filmUm) * drive(2 * StrictMath.PI / Require.positive(wavelengthM, "wavelength (m)")));
    }

    /**
     * Lets a lane rest. Oil moves across the lane only, row by row; none is lost.
     *
     * <p>Each row is taken apart into cosines from gutter to gutter. Across every edge between two columns each ripple
     * drives what it would at the mean film of the board to either side, so ripples on an even film die exactly as
     * above; where the film changes within a board this is an approximation. No column gives more than it holds.
     *
     * @param film the lane's film, changed
     * @param dwellS how long it rests (s), at least 0
     * @throws IllegalArgumentException if not {@code 0 <= dwellS < infinity}
     */
    public void relax(OilFilm film, double dwellS) {
        relax(List.of(film), dwellS);
    }

    /**
     * Lets several lanes rest equally long, which takes less time than one by one.
     *
     * @param films the lanes' films on one grid, at least one, changed
     * @param dwellS how long they rest (s), at least 0
     * @throws IllegalArgumentException if not {@code 0 <= dwellS < infinity}
     */
    public void relax(List<OilFilm> films, double dwellS) {
        Require.inRange(dwellS, "rest of the lane (s)", 0, Double.MAX_VALUE);
        if (dwellS > 0) {
            RowLevelling rows = new RowLevelling(this, films.get(0).grid(), dwellS);
            films.forEach(rows::relax);
        }
    }

    /** Film's part of the rate, h^3 / (3 eta) (m^2 s/kg); 0 where nothing moves. */
    double mobility(double filmUm) {
        double filmM = filmUm * M_PER_UM;
        return filmUm < leastFilmUm ? 0 : filmM * filmM * filmM / (3 * viscosityPas);
    }

    /** Ripple's part of the rate, rho g k^2 + sigma k^4 (kg/(m^2 s^2)), of a wave number (rad/m). */
    double drive(double waveNumberRadpm) {
        double square = waveNumberRadpm * waveNumberRadpm;
        return square * (densityKgpm3 * GRAVITY_MPS2 + surfaceTensionNpm * square);
    }
}
