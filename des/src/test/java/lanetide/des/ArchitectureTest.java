package lanetide.des;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

@AnalyzeClasses(packages = "lanetide.des", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule theKernelStandsOnTheJdkAndTwoMathematicsLibrariesAlone = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", "lanetide.des..", "org.apache.commons.rng..", "org.apache.commons.math3..");

    @ArchTest
    static final ArchRule statisticsAndStreamsDoNotKnowTheSimulator = noClasses()
            .that()
            .resideInAnyPackage("lanetide.des.stats", "lanetide.des.random")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("lanetide.des");

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
    static final ArchRule theWallClockHasNoSay = noClasses()
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(Thread.class, "sleep", long.class)
            .orShould()
            .callMethod(Thread.class, "sleep", long.class, int.class)
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.time..")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.Random");
}
