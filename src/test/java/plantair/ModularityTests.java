package plantair;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;
import org.springframework.modulith.core.Violations;
import org.springframework.modulith.docs.Documenter;

/** Direct sub-packages of the program are its modules. */
class ModularityTests {

    @Test
    void hasModulesWithoutCyclesOrIntrusion() {
        ApplicationModules modules = ApplicationModules.of(PlantAirApplication.class);

        modules.verify();
        new Documenter(modules).writeModulesAsPlantUml();
    }

    @Test
    void findsAPlantedCycle() {
        ApplicationModules modules = ApplicationModules.of("planted.cycle", location -> true);

        assertThatThrownBy(modules::verify).isInstanceOf(Violations.class).hasMessageContaining("Cycle detected");
    }

    @Test
    void findsAPlantedIntrusionIntoAnotherModule() {
        ApplicationModules modules = ApplicationModules.of("planted.intrusion", location -> true);

        assertThatThrownBy(modules::verify).isInstanceOf(Violations.class).hasMessageContaining("non-exposed type");
    }
}
