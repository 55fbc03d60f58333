/** A module that asks for the two modules of Kernlot by their names. */
module consumer {
    requires io.github.kernlot.orientation;
    requires io.github.kernlot.survey;
}
