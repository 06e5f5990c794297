package lanetide.oilflow.friction;

/** How slippery a contact is. */
@FunctionalInterface
public interface FrictionLaw {
    /**
     * Coefficient of friction of a sliding contact.
     *
     * @param filmUm oil in the contact (um), at least 0
     * @return coefficient of friction, above 0
     */
    double coefficient(double filmUm);
}
