package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Vector;

/**
 * A slip as it is read on core: a plane, and the way in which the rock on one side of it moved, seen from the other side.
 *
 * @param plane the plane on which the blocks slid
 * @param movement the movement of the block; the part of it that lies in the plane counts
 * @param block the block that is meant: on the down-hole or on the up-hole side of the plane
 */
public record CoreSlip(CorePlane plane, DirectedCoreLine movement, HoleSense block) {

    /**
     * Checks that there is a movement in the plane.
     *
     * @throws IllegalArgumentException if the movement stands at right angles to the plane
     */
    public CoreSlip {
        if (Directions.isAlong(movement.vector(), plane.normal())) {
            throw new IllegalArgumentException(
                    "the movement stands at right angles to the plane; a slip needs a movement in it");
        }
    }

    /** The movement of the rock on the down-hole side. */
    Vector movementDownHole() {
        Vector given = movement.vector();
        return block == HoleSense.DOWN_HOLE ? given : given.negated();
    }

    /** {@code alpha 41.0, beta 213.0, down-hole block moved along axis angle 51.1, delta 167.4}. */
    @Override
    public String toString() {
        String side = block == HoleSense.DOWN_HOLE ? "down-hole" : "up-hole";
        return plane + ", " + side + " block moved along " + movement.toString().substring("arrow with ".length());
    }
}
