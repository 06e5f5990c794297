/** Oil on the lane: patterns, the film grid, film splitting, the oil account. */
package lanetide.oilflow.film;
