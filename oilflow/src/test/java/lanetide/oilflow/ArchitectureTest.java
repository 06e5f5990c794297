package lanetide.oilflow;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

@AnalyzeClasses(packages = "lanetide.oilflow", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    /** Functions of Math whose last digit the language leaves to the machine; StrictMath's are the same everywhere. */
    private static final Set<String> LOOSE = Set.of(
            "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1", "log",
            "log10", "log1p", "pow", "cbrt", "hypot", "random");

    @ArchTest
    static final ArchRule theOilStandsOnTheJdkAndOneMathematicsLibraryAlone = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", "lanetide.oilflow..", "org.apache.commons.math3..");

    @ArchTest
    static final ArchRule eachPackageKnowsOnlyThoseBelowIt = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("lane")
            .definedBy("..oilflow.lane")
            .layer("ball")
            .definedBy("..oilflow.ball")
            .layer("catalogue")
            .definedBy("..oilflow.catalogue")
            .layer("film")
            .definedBy("..oilflow.film")
            .layer("friction")
            .definedBy("..oilflow.friction")
            .layer("motion")
            .definedBy("..oilflow.motion")
            .layer("pocket")
            .definedBy("..oilflow.pocket")
            .layer("line")
            .definedBy("..oilflow.line")
            .layer("unknown")
            .definedBy("..oilflow.unknown")
            .whereLayer("lane")
            .mayNotAccessAnyLayer()
            .whereLayer("ball")
            .mayOnlyAccessLayers("lane")
            .whereLayer("catalogue")
            .mayOnlyAccessLayers("lane", "ball")
            .whereLayer("film")
            .mayOnlyAccessLayers("lane", "ball")
            .whereLayer("friction")
            .mayOnlyAccessLayers("lane", "ball")
            .whereLayer("motion")
            .mayOnlyAccessLayers("lane", "ball", "film", "friction")
            .whereLayer("pocket")
            .mayOnlyAccessLayers("lane", "ball", "catalogue")
            .whereLayer("line")
            .mayOnlyAccessLayers("lane", "ball", "film", "motion", "pocket")
            .whereLayer("unknown")
            .mayOnlyAccessLayers("lane", "ball", "catalogue", "film", "friction", "motion", "pocket");

    @ArchTest
    static final ArchRule nothingIsSharedBehindTheCallersBack =
            fields().that().areStatic().should().beFinal();

    @ArchTest
    static final ArchRule whatMayBeMissingIsToldByMethodsAlone = noFields()
            .should()
            .haveRawType(Optional.class)
            .orShould()
            .haveRawType(OptionalDouble.class)
            .orShould()
            .haveRawType(OptionalInt.class);

    @ArchTest
    static final ArchRule theSameShotGivesTheSameBytesOnEveryMachine = noClasses()
            .should()
            .callMethodWhere(new DescribedPredicate<JavaMethodCall>("a loose function of Math") {
                @Override
                public boolean test(JavaMethodCall call) {
                    return call.getTargetOwner().isEquivalentTo(Math.class) && LOOSE.contains(call.getName());
                }
            });

    @ArchTest
    static final ArchRule noLuckAndNoClockInThePhysics = noClasses()
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "getProperty", String.class)
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("java.time..", "java.util.random..")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.(Random|SplittableRandom|HashMap|HashSet|concurrent\\.ThreadLocalRandom)");
}
