package lanetide.cli;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows between packages: which may know which. */
@AnalyzeClasses(packages = "lanetide", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule NOTHING_KNOWS_THE_PROGRAM = noClasses()
            .that()
            .resideOutsideOfPackage("lanetide.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("lanetide.cli..");

    @ArchTest
    static final ArchRule THE_PROGRAM_KNOWS_ITS_LIBRARIES_ONLY = classes()
            .that()
            .resideInAPackage("lanetide.cli..")
            .should()
            .onlyDependOnClassesThat(resideInAPackage("lanetide..")
                    .or(resideInAPackage("java.."))
                    .or(resideInAPackage("picocli.."))
                    .or(resideInAPackage("org.snakeyaml.engine.."))
                    .or(resideInAPackage("org.apache.commons.csv.."))
                    .or(resideInAPackage("tools.jackson.."))
                    .or(resideInAPackage("gg.jte.."))
                    .or(resideInAPackage("biweekly.."))
                    .or(resideInAPackage("org.apache.commons.math3.stat..")));

    @ArchTest
    static final ArchRule YAML_STAYS_IN_THE_READER = noClasses()
            .that()
            .resideOutsideOfPackage("lanetide.cli.scenario..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.snakeyaml..");

    @ArchTest
    static final ArchRule THE_COMMAND_LINE_STAYS_IN_THE_COMMANDS = noClasses()
            .that()
            .resideInAnyPackage("lanetide.cli.scenario..", "lanetide.cli.report..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..");

    @ArchTest
    static final ArchRule JSON_STAYS_IN_THE_REPORTS = noClasses()
            .that()
            .resideOutsideOfPackage("lanetide.cli.report..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tools.jackson..");

    @ArchTest
    static final ArchRule CSV_STAYS_IN_THE_REPORTS_AND_THE_READER = noClasses()
            .that()
            .resideOutsideOfPackages("lanetide.cli.report..", "lanetide.cli.scenario..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.commons.csv..");

    @ArchTest
    static final ArchRule PACKAGES_FORM_NO_CIRCLE =
            slices().matching("lanetide.cli.(*)..").should().beFreeOfCycles();
}
