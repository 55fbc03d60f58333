package io.github.kernlot.orientation.line.fit;

import io.github.kernlot.orientation.line.LineDrift;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.MarkNoise;
import java.util.function.ToDoubleFunction;

/** A number of the {@link LineModel} that marks can teach. The bias that all marks of a hole share is none: no residual shows it. */
public enum LineParameter {
    /** {@link MarkNoise#sensor}, degrees. */
    SENSOR("sensor", "degrees", 45),
    /** {@link MarkNoise#level}, degrees; it also takes up what the sigmas of pencil and transfer leave unexplained. */
    LEVEL("level", "degrees", 45),
    /** {@link LineDrift#locked}, degrees. */
    LOCKED("locked join", "degrees", 45),
    /** {@link LineDrift#doubtful}, degrees. */
    DOUBTFUL("doubtful join", "degrees", 45),
    /** {@link LineDrift#wander}, degrees per square root of metre. */
    WANDER("wander", "degrees per root metre", 15),
    /** {@link MarkBlunders#flipped}, a probability. */
    FLIPPED("flipped", "", 0.3),
    /** {@link MarkBlunders#wrong}, a probability. */
    WRONG("wrong", "", 0.4),
    /** {@link LineDrift#slip}, a probability. */
    SLIP("slip", "", 0.95);

    private final String label;
    private final String unit;
    private final double limit;

    LineParameter(String label, String unit, double limit) {
        this.label = label;
        this.unit = unit;
        this.limit = limit;
    }

    /**
     * The value in a model.
     *
     * @param model the model
     * @return a sigma in its unit, or a probability
     */
    public double of(LineModel model) {
        return switch (this) {
            case SENSOR -> model.noise().sensor();
            case LEVEL -> model.noise().level();
            case LOCKED -> model.drift().locked();
            case DOUBTFUL -> model.drift().doubtful();
            case WANDER -> model.drift().wander();
            case FLIPPED -> model.blunders().flipped();
            case WRONG -> model.blunders().wrong();
            case SLIP -> model.drift().slip();
        };
    }

    /** A model with all parameters given, and the rest of another. */
    static LineModel model(LineModel rest, ToDoubleFunction<LineParameter> value) {
        MarkNoise noise = rest.noise();
        return new LineModel(
                rest.side(),
                new MarkNoise(
                        value.applyAsDouble(SENSOR),
                        value.applyAsDouble(LEVEL),
                        noise.pencilMillimetres(),
                        noise.transferMillimetres(),
                        noise.bias()),
                new MarkBlunders(value.applyAsDouble(FLIPPED), value.applyAsDouble(WRONG)),
                new LineDrift(
                        value.applyAsDouble(WANDER),
                        value.applyAsDouble(LOCKED),
                        value.applyAsDouble(DOUBTFUL),
                        value.applyAsDouble(SLIP)));
    }

    boolean isProbability() {
        return unit.isEmpty();
    }

    boolean isOfMark() {
        return this == SENSOR || this == LEVEL;
    }

    /** The greatest value that a fit considers: beyond it a sigma says nothing, and a blunder is the rule. */
    double limit() {
        return limit;
    }

    /**
     * The unit.
     *
     * @return the unit of a sigma; empty for a probability
     */
    public String unit() {
        return unit;
    }

    /** As it is called in a report: {@code locked join}. */
    @Override
    public String toString() {
        return label;
    }
}
