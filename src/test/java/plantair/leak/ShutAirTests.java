package plantair.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plantair.pumpup.VolumePart;
import plantair.quantity.VesselVolume;

/** The volume that is shut, and how sure it is. */
class ShutAirTests {

    private static VolumePart part(VolumePart.Kind kind, double volume, double u) {
        return new VolumePart("", kind, new VesselVolume(volume), u);
    }

    /** By hand: 3 and 1 m³ less 0.5 of water; √((0.02 · 3)² + (0.04 · 1)²)/3.5 = 2.060 %. */
    @Test
    void addsItsPiecesAndTheirUncertainties() {
        ShutAir shut = ShutAir.of(List.of(
                part(VolumePart.Kind.RECEIVER, 3, 0.02),
                part(VolumePart.Kind.PIPE, 1, 0.04),
                part(VolumePart.Kind.WATER, 0.5, 0)));

        assertThat(shut.volume().cubicMetres()).isEqualTo(3.5);
        assertThat(shut.relativeU()).isCloseTo(0.020603, within(5e-7));
    }

    @Test
    void refusesNothing() {
        assertThatThrownBy(() -> ShutAir.of(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ShutAir(new VesselVolume(1), -0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ShutAir(new VesselVolume(1), Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
