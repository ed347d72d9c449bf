package plantair;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_FIELD_INJECTION;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import jakarta.persistence.Entity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Calendar;
import java.util.Date;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import planted.coding.EntityFormController;
import planted.coding.FieldInjection;
import planted.coding.MisnamedEndpoint;
import planted.coding.OldDate;
import planted.coding.Prints;
import planted.coding.PublicController;
import planted.coding.ReadsMillis;
import planted.coding.ReadsToday;
import planted.coding.RefersToNow;
import planted.coding.ThrowsAnything;

/** Rules for the whole program. Each stands beside a planted class that breaks it. */
class CodingRulesTests {

    private static final Pattern LOMBOK = Pattern.compile("\\blombok\\b");

    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("plantair");

    private static final ArchRule CONTROLLERS_ARE_PACKAGE_PRIVATE = classes()
            .that()
            .areMetaAnnotatedWith(Controller.class)
            .should()
            .bePackagePrivate()
            .allowEmptyShould(true)
            .because("nothing but the framework calls a controller");

    private static final ArchRule CONTROLLERS_SAY_SO = classes()
            .that()
            .areMetaAnnotatedWith(Controller.class)
            .should()
            .haveSimpleNameEndingWith("Controller")
            .allowEmptyShould(true);

    private static final ArchRule NO_ENTITY_IS_BOUND = methods()
            .that()
            .areMetaAnnotatedWith(RequestMapping.class)
            .or()
            .areMetaAnnotatedWith(ModelAttribute.class)
            .should(takeNoEntity())
            .allowEmptyShould(true)
            .because("a request that binds to an entity can set every column of it");

    private static final ArchRule NO_OLD_DATES = noClasses()
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(Date.class, Calendar.class)
            .because("java.time has a type for each meaning");

    private static final ArchRule TIME_COMES_FROM_A_CLOCK = noClasses()
            .should()
            .accessTargetWhere(describe("reads the time without a Clock", CodingRulesTests::readsTimeWithoutClock))
            .because("a test must be able to set the time");

    private static final ArchRule PACKAGES_ARE_NULL_MARKED = classes().should(resideInANullMarkedPackage());

    static Stream<Arguments> rules() {
        return Stream.of(
                arguments(CONTROLLERS_ARE_PACKAGE_PRIVATE, PublicController.class),
                arguments(CONTROLLERS_SAY_SO, MisnamedEndpoint.class),
                arguments(NO_ENTITY_IS_BOUND, EntityFormController.class),
                arguments(NO_CLASSES_SHOULD_USE_FIELD_INJECTION, FieldInjection.class),
                arguments(NO_OLD_DATES, OldDate.class),
                arguments(TIME_COMES_FROM_A_CLOCK, ReadsToday.class),
                arguments(TIME_COMES_FROM_A_CLOCK, RefersToNow.class),
                arguments(TIME_COMES_FROM_A_CLOCK, ReadsMillis.class),
                arguments(NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS, Prints.class),
                arguments(NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS, ThrowsAnything.class),
                arguments(PACKAGES_ARE_NULL_MARKED, Prints.class));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void holdsInTheProgramAndFindsThePlantedFault(ArchRule rule, Class<?> planted) {
        JavaClasses faulty = new ClassFileImporter().importClasses(planted);

        assertThat(rule.evaluate(faulty).hasViolation()).isTrue();
        rule.check(APP);
    }

    @Test
    void usesNoLombok() {
        assertThat(SourceScan.finds(SourceScan.javaFiles(Path.of("src/main/java")), LOMBOK))
                .isEmpty();
    }

    /** Its annotations leave no trace in byte code. */
    @Test
    void findsPlantedLombok(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("Planted.java"), "import lombok.Data;\n@Data class Planted {}\n");

        assertThat(SourceScan.finds(SourceScan.javaFiles(folder), LOMBOK)).hasSize(1);
    }

    private static boolean readsTimeWithoutClock(JavaAccess<?> access) {
        String name = access.getTarget().getName();
        if (access.getTargetOwner().isEquivalentTo(System.class)) {
            return name.equals("currentTimeMillis");
        }
        return name.equals("now")
                && access.getTargetOwner().getPackageName().startsWith("java.time")
                && access.getTarget() instanceof CodeUnitAccessTarget target
                && target.getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Clock.class));
    }

    private static ArchCondition<JavaMethod> takeNoEntity() {
        return new ArchCondition<>("take no entity") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                method.getParameters().stream()
                        .flatMap(parameter -> parameter.getType().getAllInvolvedRawTypes().stream())
                        .filter(type -> type.isAnnotatedWith(Entity.class))
                        .forEach(type -> events.add(SimpleConditionEvent.violated(
                                method, method.getFullName() + " takes " + type.getSimpleName())));
            }
        };
    }

    private static ArchCondition<JavaClass> resideInANullMarkedPackage() {
        return new ArchCondition<>("reside in a package with @NullMarked") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                if (!type.getPackage().isAnnotatedWith(NullMarked.class)) {
                    events.add(SimpleConditionEvent.violated(type, type.getPackageName() + " is not @NullMarked"));
                }
            }
        };
    }
}
