package io.github.kernlot.orientation.solve;

/**
 * Where a hole enters and leaves a slab: a bed, a vein or a dyke with two parallel walls.
 *
 * @param top where the hole pierces the wall that is called the top in every hole
 * @param base where it pierces the other wall
 */
public record Intercept(ContactPoint top, ContactPoint base) {

    /**
     * An intercept.
     *
     * @param top where the hole pierces one wall
     * @param base where it pierces the other
     * @return the intercept
     */
    public static Intercept of(ContactPoint top, ContactPoint base) {
        return new Intercept(top, base);
    }
}
