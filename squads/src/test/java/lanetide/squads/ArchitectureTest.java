package lanetide.squads;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

@AnalyzeClasses(packages = "lanetide.squads", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    /** Functions of Math whose last digit the language leaves to the machine; StrictMath's are the same everywhere. */
    private static final Set<String> LOOSE = Set.of(
            "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1", "log",
            "log10", "log1p", "pow", "cbrt", "hypot", "random");

    @ArchTest
    static final ArchRule squadsStandOnTheKernelTheOilAndThreeLibraries = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "lanetide.squads..",
                    "lanetide.des..",
                    "lanetide.oilflow..",
                    "org.jgrapht..",
                    "org.apache.commons.rng..",
                    "org.apache.commons.math3..");

    /** From the plan to what is made of its playings; each knows those before it at most. */
    @ArchTest
    static final ArchRule aDayIsBuiltFromBelow = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("rotation")
            .definedBy("..squads.rotation..")
            .layer("score")
            .definedBy("..squads.score")
            .layer("model")
            .definedBy("..squads.model")
            .layer("machines")
            .definedBy("..squads.machines")
            .layer("bowler")
            .definedBy("..squads.bowler")
            .layer("luck")
            .definedBy("..squads.luck")
            .layer("equipment")
            .definedBy("..squads.equipment")
            .layer("result")
            .definedBy("..squads.result")
            .layer("play")
            .definedBy("..squads.play")
            .layer("study")
            .definedBy("..squads.study")
            .whereLayer("rotation")
            .mayNotAccessAnyLayer()
            .whereLayer("score")
            .mayNotAccessAnyLayer()
            .whereLayer("model")
            .mayOnlyAccessLayers("rotation", "score")
            .whereLayer("machines")
            .mayOnlyAccessLayers("model")
            .whereLayer("bowler")
            .mayOnlyAccessLayers("model")
            .whereLayer("luck")
            .mayOnlyAccessLayers("model")
            .whereLayer("equipment")
            .mayOnlyAccessLayers("model", "bowler")
            .whereLayer("result")
            .mayOnlyAccessLayers("model", "score")
            .whereLayer("play")
            .mayOnlyAccessLayers("model", "rotation", "score", "machines", "bowler", "luck", "equipment", "result")
            .whereLayer("study")
            .mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule packagesFormNoCircle =
            slices().matching("lanetide.squads.(**)").should().beFreeOfCycles();

    /** A changed schedule is a value that can be played; the change itself plays nothing. */
    @ArchTest
    static final ArchRule lateChangesKnowThePlanOnly = noClasses()
            .that()
            .resideInAPackage("..squads.change")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..squads.play", "..squads.study", "..squads.score");

    @ArchTest
    static final ArchRule playIsJudgedByOthersAndKnowsNoneOfThem = noClasses()
            .that()
            .resideInAnyPackage(
                    "..squads.model", "..squads.rotation..", "..squads.score", "..squads.play", "..squads.study")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..squads.fairness", "..squads.recondition");

    @ArchTest
    static final ArchRule rotationsKnowNeitherOilNorEvents = noClasses()
            .that()
            .resideInAnyPackage("..squads.rotation..", "..squads.score")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("lanetide.oilflow..", "lanetide.des");

    /** A bowler sees his line, his arrow and where his ball met the pins; he sees no oil and asks nobody who does. */
    @ArchTest
    static final ArchRule aBowlerSeesNoOil = noClasses()
            .that()
            .resideInAPackage("..squads.bowler")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "lanetide.oilflow.film",
                    "lanetide.oilflow.motion",
                    "lanetide.oilflow.friction",
                    "..squads.equipment",
                    "..squads.play")
            .orShould()
            .dependOnClassesThat()
            .haveSimpleNameEndingWith("Finder");

    @ArchTest
    static final ArchRule eventsArePlayedOverAndOverInOnePlace = noClasses()
            .that()
            .resideOutsideOfPackages("..squads.study", "..squads.play")
            .should()
            .dependOnClassesThat()
            .haveSimpleName("TournamentSimulation")
            .orShould()
            .dependOnClassesThat()
            .haveSimpleName("Replications");

    @ArchTest
    static final ArchRule nothingIsSharedBehindTheCallersBack =
            fields().that().areStatic().should().beFinal();

    @ArchTest
    static final ArchRule theSameEventGivesTheSameBytesOnEveryMachine = noClasses()
            .should()
            .callMethodWhere(new DescribedPredicate<JavaMethodCall>("a loose function of Math") {
                @Override
                public boolean test(JavaMethodCall call) {
                    return call.getTargetOwner().isEquivalentTo(Math.class) && LOOSE.contains(call.getName());
                }
            });

    @ArchTest
    static final ArchRule luckComesFromStreamsAndTimeFromTheSimulator = noClasses()
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
            .haveNameMatching("java\\.util\\.(Random|SplittableRandom|concurrent\\.ThreadLocalRandom)");
}
