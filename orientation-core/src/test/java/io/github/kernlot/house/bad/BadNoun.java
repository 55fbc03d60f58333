package io.github.kernlot.house.bad;

import com.tngtech.archunit.core.domain.JavaClass;
import io.github.kernlot.house.bad.internal.BadKernel;
import io.github.kernlot.house.bad.sphere.BadMean;
import java.util.List;

/** Open to extension, shows what it should hide, holds state for everybody, and talks. */
public class BadNoun {
    static int calls;

    protected List<JavaClass> foreign;

    public double getDip() {
        calls++;
        System.out.println(calls);
        return 0;
    }

    public BadKernel kernel() {
        return new BadKernel(this);
    }

    public BadMean mean() {
        return new BadMean();
    }

    double hiddenFromCallers(JavaClass hidden) {
        return hidden.getMethods().size();
    }
}
