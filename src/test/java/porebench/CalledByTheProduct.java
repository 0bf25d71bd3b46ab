package porebench;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which methods something of the product calls, seen in its bytecode. A call by the method itself does not count; a method reference
 * does. Only classes handed to the rule are looked at, so a caller in a test is none.
 */
final class CalledByTheProduct {
    private static final Set<String> OF_EVERY_ENUM = Set.of("values", "valueOf", "$values");

    /** What waits for its caller, each with the reason; a name leaves the list with the wiring or with the method. */
    private static final Set<String> WAITING = Set.of(
            // Tests change one figure of a profile by it; the window and the files make whole profiles.
            "porebench.method.Profile.with(porebench.method.FigureName, porebench.method.Figure)",
            // What the columns of many determinations are compared with, in a test and a benchmark.
            "porebench.statistics.outlier.GrubbsTest.isOutlier(double, double)",
            // Published tables have points where the product asks for p; tests turn the one into the other.
            "porebench.statistics.outlier.PairDistribution.lowerPoint(double)");

    private CalledByTheProduct() {}

    /** Public methods that say themselves what they are for: accessors of records, what an enum has, and what another type promises. */
    static DescribedPredicate<JavaMethod> neededWithoutACaller() {
        return DescribedPredicate.describe(
                "accessors of records, of every enum, promised by another type, or waiting",
                method -> WAITING.contains(method.getFullName())
                        || isAccessor(method)
                        || method.getOwner().isEnum() && OF_EVERY_ENUM.contains(method.getName())
                        || method.getModifiers().contains(JavaModifier.SYNTHETIC)
                        || isPromised(method));
    }

    static ArchCondition<JavaMethod> haveACaller() {
        return new ArchCondition<>("have a caller in the product") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                boolean called = method.getAccessesToSelf().stream()
                        .anyMatch(access -> !access.getOrigin().equals(method));
                if (!called) {
                    events.add(SimpleConditionEvent.violated(method, method.getFullName() + " has no caller"));
                }
            }
        };
    }

    private static boolean isAccessor(JavaMethod method) {
        JavaClass owner = method.getOwner();
        return owner.isRecord()
                && method.getRawParameterTypes().isEmpty()
                && owner.tryGetField(method.getName()).isPresent()
                && !method.getModifiers().contains(JavaModifier.STATIC);
    }

    /** Whether a supertype of ours or of the JDK has a method of that name with as many arguments. */
    private static boolean isPromised(JavaMethod method) {
        JavaClass owner = method.getOwner();
        return Stream.concat(owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
                .flatMap(type -> type.getMethods().stream())
                .anyMatch(promised -> promised.getName().equals(method.getName())
                        && promised.getRawParameterTypes().size()
                                == method.getRawParameterTypes().size());
    }
}
