package plantair;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Calendar;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.Scanner;
import java.util.Set;
import java.util.TimeZone;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import planted.leak.KnowsSupply;
import planted.pumpup.KnowsTrend;
import planted.quantity.AsksSystem;
import planted.quantity.Clean;
import planted.quantity.FormatsByDefault;
import planted.quantity.KnowsFramework;
import planted.quantity.KnowsLocale;
import planted.quantity.KnowsText;
import planted.quantity.PlatformMath;
import planted.quantity.PlatformMathReference;
import planted.quantity.ReadsClock;
import planted.statistics.KnowsQuantity;
import planted.supply.KnowsLeak;
import planted.trend.KnowsHipparchus;
import planted.wall.KnowsPumpUp;

/** The packages that compute know nothing of frameworks, clocks, places or each other beyond the map of modules. */
class PurityTests {

    /** A pure package, the pure packages it may use, and its libraries. */
    private record Pure(String name, List<String> modules, List<String> libraries) {}

    private static final Pure QUANTITY = new Pure("quantity", List.of(), List.of());
    private static final Pure STATISTICS = new Pure("statistics", List.of(), List.of("org.hipparchus.."));
    private static final Pure PUMPUP = new Pure("pumpup", List.of("quantity", "statistics"), List.of());
    private static final Pure TREND = new Pure("trend", List.of("quantity", "statistics"), List.of());
    private static final Pure WALL = new Pure("wall", List.of("quantity", "statistics"), List.of());
    private static final Pure LEAK = new Pure("leak", List.of("quantity", "statistics", "pumpup"), List.of());
    private static final Pure SUPPLY = new Pure("supply", List.of("quantity", "statistics", "pumpup"), List.of());
    private static final List<Pure> PURE = List.of(QUANTITY, STATISTICS, PUMPUP, TREND, WALL, LEAK, SUPPLY);

    private static final String[] LANGUAGE = {
        "java.lang",
        "java.math",
        "java.time",
        "java.time.temporal",
        "java.util",
        "java.util.function",
        "java.util.regex",
        "java.util.stream",
        "org.jspecify.annotations"
    };

    /** Functions that a Java machine may round its own way; StrictMath may not. */
    private static final Set<String> PLATFORM_FUNCTIONS = Set.of(
            "pow", "exp", "expm1", "log", "log10", "log1p", "sin", "cos", "tan", "asin", "acos", "atan", "atan2",
            "sinh", "cosh", "tanh", "cbrt", "hypot", "random");

    /** psi, cfm, cubic foot, atmosphere, kelvin offsets, gallon: numbers that only plantair.quantity may hold. */
    private static final Pattern FACTOR = Pattern.compile(
            "(?<![\\w.])(6\\.894|0?\\.4719|28\\.31|14\\.69|273\\.15|459\\.67|3\\.785|0?\\.1336|7\\.48)");

    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("plantair");

    static List<ArchRule> rules() {
        return Stream.concat(PURE.stream().map(pure -> dependencies("plantair", pure)), everywhere("plantair"))
                .toList();
    }

    static Stream<Arguments> plantedFaults() {
        return Stream.of(
                arguments(dependencies("planted", QUANTITY), KnowsText.class),
                arguments(dependencies("planted", QUANTITY), KnowsFramework.class),
                arguments(dependencies("planted", STATISTICS), KnowsQuantity.class),
                arguments(dependencies("planted", PUMPUP), KnowsTrend.class),
                arguments(dependencies("planted", TREND), KnowsHipparchus.class),
                arguments(dependencies("planted", WALL), KnowsPumpUp.class),
                arguments(dependencies("planted", LEAK), KnowsSupply.class),
                arguments(dependencies("planted", SUPPLY), KnowsLeak.class),
                arguments(noClockPlaceOrChance("planted"), ReadsClock.class),
                arguments(noClockPlaceOrChance("planted"), KnowsLocale.class),
                arguments(noClockPlaceOrChance("planted"), AsksSystem.class),
                arguments(noNow("planted"), ReadsClock.class),
                arguments(noDefaultLocale("planted"), FormatsByDefault.class),
                arguments(noPlatformMath("planted"), PlatformMath.class),
                arguments(noPlatformMath("planted"), PlatformMathReference.class));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void holdsInTheProgram(ArchRule rule) {
        rule.check(APP);
    }

    @ParameterizedTest
    @MethodSource("plantedFaults")
    void findsThePlantedFault(ArchRule rule, Class<?> planted) {
        JavaClasses faulty = new ClassFileImporter().importClasses(planted);

        assertThat(rule.evaluate(faulty).hasViolation()).isTrue();
    }

    @Test
    void letsACleanClassPass() {
        JavaClasses clean = new ClassFileImporter().importClasses(Clean.class);

        dependencies("planted", QUANTITY).check(clean);
        everywhere("planted").forEach(rule -> rule.check(clean));
    }

    @Test
    void findsAPackageThatHasBecomeEmpty() {
        JavaClasses hollow = new ClassFileImporter().importPackages("planted.hollow");
        ArchRule rule = dependencies("planted", new Pure("hollow", List.of(), List.of()));

        assertThat(hollow).hasSize(1);
        assertThatThrownBy(() -> rule.check(hollow)).isInstanceOf(AssertionError.class);
    }

    @Test
    void keepsConversionFactorsInOnePackage() {
        List<Path> files = SourceScan.javaFiles(Path.of("src/main/java")).stream()
                .filter(file -> !file.startsWith("src/main/java/plantair/quantity"))
                .toList();

        assertThat(files).isNotEmpty();
        assertThat(SourceScan.finds(files, FACTOR)).isEmpty();
    }

    @Test
    void findsAPlantedConversionFactor(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("Planted.java");
        Files.writeString(
                file,
                "class Planted {\n/* 273.15 in a comment */\ndouble k = c + 273.15; // 459.67\n"
                        + "double x = 1273.15;\ndouble q = cfm*.4719474;\n}\n");

        assertThat(SourceScan.finds(SourceScan.javaFiles(folder), FACTOR))
                .containsExactly(file + ":3: double k = c + 273.15;", file + ":5: double q = cfm*.4719474;");
    }

    private static Stream<ArchRule> everywhere(String root) {
        return Stream.of(noClockPlaceOrChance(root), noNow(root), noDefaultLocale(root), noPlatformMath(root));
    }

    private static ArchRule dependencies(String root, Pure pure) {
        Stream<String> own = Stream.concat(Stream.of(pure.name()), pure.modules().stream())
                .map(module -> root + "." + module + "..");
        String[] allowed = Stream.of(own, pure.libraries().stream(), Stream.of(LANGUAGE))
                .flatMap(packages -> packages)
                .toArray(String[]::new);
        return classes()
                .that()
                .resideInAPackage(root + "." + pure.name() + "..")
                .and()
                .doNotHaveSimpleName("package-info")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(allowed)
                .allowEmptyShould(false)
                .because("a pure package uses only what the map of modules allows, and is not empty");
    }

    private static ArchRule noClockPlaceOrChance(String root) {
        return noClasses()
                .that()
                .resideInAnyPackage(packages(root))
                .should()
                .dependOnClassesThat()
                .belongToAnyOf(
                        System.class,
                        Runtime.class,
                        Thread.class,
                        ProcessBuilder.class,
                        Clock.class,
                        Date.class,
                        Calendar.class,
                        TimeZone.class,
                        Locale.class,
                        ResourceBundle.class,
                        Scanner.class,
                        Random.class,
                        UUID.class)
                .because("the same readings must give the same digits everywhere and always");
    }

    private static ArchRule noNow(String root) {
        return noAccess(
                root,
                "to a now() of java.time",
                access -> access.getTarget().getName().equals("now")
                        && access.getTargetOwner().getPackageName().startsWith("java.time"));
    }

    private static ArchRule noDefaultLocale(String root) {
        Set<String> names = Set.of("format", "formatted", "toLowerCase", "toUpperCase");
        return noAccess(
                root,
                "to text in the machine's locale",
                access -> access.getTargetOwner().isEquivalentTo(String.class)
                        && names.contains(access.getTarget().getName()));
    }

    private static ArchRule noPlatformMath(String root) {
        return noAccess(
                root,
                "to functions of Math that StrictMath has",
                access -> access.getTargetOwner().isEquivalentTo(Math.class)
                        && PLATFORM_FUNCTIONS.contains(access.getTarget().getName()));
    }

    private static ArchRule noAccess(String root, String description, Predicate<JavaAccess<?>> forbidden) {
        return noClasses()
                .that()
                .resideInAnyPackage(packages(root))
                .should()
                .accessTargetWhere(describe(description, forbidden));
    }

    private static String[] packages(String root) {
        return PURE.stream().map(pure -> root + "." + pure.name() + "..").toArray(String[]::new);
    }
}
