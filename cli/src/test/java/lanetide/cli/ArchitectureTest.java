package lanetide.cli;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Files;

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
                    .or(resideInAPackage("org.jgrapht.."))
                    .or(resideInAPackage("org.apache.commons.math3.stat..")));

    @ArchTest
    static final ArchRule YAML_STAYS_IN_THE_READER = noClasses()
            .that()
            .resideOutsideOfPackage("lanetide.cli.scenario..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.snakeyaml..");

    @ArchTest
    static final ArchRule THE_COMMAND_LINE_STAYS_IN_THE_COMMANDS_AND_THEIR_OPTIONS = noClasses()
            .that()
            .resideOutsideOfPackages("lanetide.cli", "lanetide.cli.command", "lanetide.cli.options")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..");

    @ArchTest
    static final ArchRule NO_ANSWER_KNOWS_ITS_COMMAND = noClasses()
            .that()
            .resideOutsideOfPackages("lanetide.cli", "lanetide.cli.command", "lanetide.cli.options")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("lanetide.cli.command", "lanetide.cli.options");

    @ArchTest
    static final ArchRule JSON_IS_WRITTEN_WHERE_ITS_NAME_STANDS = noClasses()
            .that()
            .haveSimpleNameNotEndingWith("Json")
            .and()
            .doNotHaveFullyQualifiedName("lanetide.cli.report.JsonAnswer")
            .and()
            .doNotHaveFullyQualifiedName("lanetide.cli.page.PageData")
            .and()
            .resideOutsideOfPackage("lanetide.cli.schema")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tools.jackson..");

    @ArchTest
    static final ArchRule TABLES_ARE_WRITTEN_IN_ONE_PLACE_AND_READ_IN_ONE = noClasses()
            .that()
            .haveSimpleNameNotStartingWith("Csv")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.commons.csv..");

    @ArchTest
    static final ArchRule FILES_ARE_OPENED_WHERE_THEY_ARE_GUARDED = noClasses()
            .that()
            .doNotHaveSimpleName("NamedFiles")
            .and()
            .resideOutsideOfPackage("lanetide.cli.output")
            .and()
            .resideInAPackage("lanetide.cli..")
            .should()
            .callMethodWhere(target(owner(equivalentTo(Files.class)))
                    .and(target(nameMatching("(new|read|write|lines|move|copy|create|delete).*"))));

    @ArchTest
    static final ArchRule EVENTS_ARE_PLAYED_BY_STUDIES = noClasses()
            .that()
            .resideInAPackage("lanetide.cli..")
            .should()
            .dependOnClassesThat()
            .haveSimpleName("TournamentSimulation")
            .orShould()
            .dependOnClassesThat()
            .haveSimpleName("Replications");

    @ArchTest
    static final ArchRule PACKAGES_FORM_NO_CIRCLE =
            slices().matching("lanetide.cli.(**)").should().beFreeOfCycles();
}
