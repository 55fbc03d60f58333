package io.github.kernlot.orientation.bulk;

/** What is converted to what: the steps of a block of rows. */
enum Conversion {
    PLANE_TO_GROUND,
    POLE_TO_GROUND,
    LINE_IN_PLANE_TO_GROUND,
    LINE_TO_GROUND,
    PLANE_TO_CORE,
    LINE_TO_CORE;

    boolean readsBeta() {
        return this == PLANE_TO_GROUND || this == POLE_TO_GROUND || this == LINE_IN_PLANE_TO_GROUND;
    }

    void run(Block block, int count) {
        switch (this) {
            case PLANE_TO_GROUND, POLE_TO_GROUND -> {
                block.normalsOnCore(count);
                block.toPlanesInGround(count);
            }
            case LINE_IN_PLANE_TO_GROUND -> {
                block.linesInPlanes(count);
                block.toLinesInGround(count);
            }
            case LINE_TO_GROUND -> {
                block.linesOnCore(count);
                block.toLinesInGround(count);
            }
            case PLANE_TO_CORE -> {
                block.normalsInGround(count);
                block.toPlanesOnCore(count);
            }
            case LINE_TO_CORE -> {
                block.linesInGround(count);
                block.toLinesOnCore(count);
            }
        }
    }
}
