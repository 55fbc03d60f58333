package io.github.kernlot.house;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Draws the tries of a property from its name, so that a build that was green stays green until something changes. {@code
 * -Dkernlot.seed=2} draws others, {@code -Dkernlot.tries=10} ten times as many.
 */
public final class RepeatableDraws implements AroundPropertyHook {

    private static final int TRIES = 200;

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        PropertyAttributes attributes = context.attributes();
        String name = context.containerClass().getName() + "."
                + context.targetMethod().getName();
        attributes.setSeed(Long.toString(31 * Long.getLong("kernlot.seed", 1) + name.hashCode()));
        attributes.setTries(attributes.tries().orElse(TRIES) * Integer.getInteger("kernlot.tries", 1));
        return property.execute();
    }

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }
}
