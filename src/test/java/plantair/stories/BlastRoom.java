package plantair.stories;

import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.GAUGE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.air;
import static plantair.testing.PlantForms.band;
import static plantair.testing.PlantForms.certificate;
import static plantair.testing.PlantForms.pumpUp;

import java.util.List;
import plantair.testing.DemandForms;
import plantair.testing.SentForm;

/**
 * An invented plant at sea level: two machines pump 400 gal from 80 to 120 psi. By hand, ideal gas: 53.47 ft³ × 40 psi / 14.696
 * psi = 145.5 ft³ of free air, which is 91 cfm in 96.0 s and 62 cfm in 140.8 s; 12 cfm leak.
 */
final class BlastRoom {

    private BlastRoom() {}

    static List<SentForm> forms() {
        return List.of(
                SITE.with("elevation", "0", "[ft_i]"),
                rated("A", "95"),
                rated("B", "65"),
                RECEIVER.with("volume", "400", "[gal_us]"),
                GAUGE,
                certificate("K-1", "2026-01-02"),
                test("96.5"),
                test("141.6").at("/compressors/2/tests"),
                DemandForms.CHOICE);
    }

    private static SentForm rated(String tag, String cfm) {
        return COMPRESSOR
                .with("tag", tag)
                .with("ratings[0].pressure", "100", "[psi]")
                .with("ratings[0].flow", cfm, "[cft_i]/min");
    }

    private static SentForm test(String seconds) {
        SentForm test = pumpUp("2026-05-12", seconds, seconds, seconds)
                .with("pipes", "")
                .with("gauge", "1")
                .with("barometer", "14.696", "[psi]");
        return band(air(test, "75", "[degF]"), "80.0", "120.0", "[psi]");
    }
}
