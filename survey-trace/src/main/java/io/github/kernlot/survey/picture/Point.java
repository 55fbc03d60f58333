package io.github.kernlot.survey.picture;

/** A place in a picture: x to the right, y downwards. */
record Point(double x, double y) {}
