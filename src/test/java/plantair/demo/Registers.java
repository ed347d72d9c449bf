package plantair.demo;

import static plantair.quantity.FlowBasis.INTAKE;
import static plantair.quantity.FlowBasis.STANDARD_14_5PSIA_68F_DRY;
import static plantair.quantity.FlowBasis.UNKNOWN;

import java.time.LocalDate;
import java.util.List;
import plantair.equipment.CompressorFacts;
import plantair.equipment.CompressorKind;
import plantair.equipment.CompressorPlate;
import plantair.equipment.Control;
import plantair.equipment.Drive;
import plantair.equipment.PipeFacts;
import plantair.equipment.RatingEntry;
import plantair.equipment.ReceiverFacts;
import plantair.equipment.VolumeKnownBy;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;
import plantair.register.Facts;
import plantair.site.SiteFacts;

/** What the demo plant owns. All of it is invented. */
final class Registers {

    static final String GULL = "Gull Point cannery";
    static final String MESA = "Juniper Mesa packing hall";

    static final List<SiteFacts> SITES = List.of(
            new SiteFacts(
                    GULL,
                    "America/Los_Angeles",
                    of("12 [ft_i]"),
                    null,
                    "USD",
                    of("0.118 /(kW.h)"),
                    "Fish and fruit lines. Compressor house by the quay."),
            new SiteFacts(
                    MESA,
                    "America/Denver",
                    of("1600 m"),
                    null,
                    "USD",
                    of("0.094 /(kW.h)"),
                    "High up: barometer about 83.5 kPa, never 29.9 inHg. Do not take the weather report's figure."));

    static final List<Sited<CompressorFacts>> COMPRESSORS = List.of(
            at(
                    GULL,
                    new CompressorFacts(
                            new CompressorPlate(
                                    "C-01",
                                    "Torvane PV-215",
                                    "88-1406",
                                    CompressorKind.PISTON,
                                    2,
                                    Drive.BELT,
                                    Control.LOAD_UNLOAD,
                                    of("15 [HP]"),
                                    of("460 V"),
                                    of("20.5 A"),
                                    3,
                                    of("60 Hz"),
                                    of("875 {rev}/min"),
                                    null,
                                    of("1900 h"),
                                    "Two-stage, three cylinders. Second-stage valves and gaskets new on 8 June 2023.",
                                    true),
                            List.of(
                                    rating("100 [psi]", "50.5 [cft_i]/min", INTAKE),
                                    rating("175 [psi]", "47.0 [cft_i]/min", INTAKE)))),
            at(
                    GULL,
                    new CompressorFacts(
                            new CompressorPlate(
                                    "C-02",
                                    "Orbisk 22S",
                                    "S22-03917",
                                    CompressorKind.SCREW,
                                    1,
                                    Drive.DIRECT,
                                    Control.LOAD_UNLOAD,
                                    of("30 [HP]"),
                                    of("460 V"),
                                    of("36 A"),
                                    3,
                                    of("60 Hz"),
                                    null,
                                    null,
                                    of("5000 h"),
                                    "Base load.",
                                    true),
                            List.of(
                                    rating("100 [psi]", "124 [cft_i]/min", INTAKE),
                                    rating("125 [psi]", "119 [cft_i]/min", INTAKE)))),
            at(
                    GULL,
                    new CompressorFacts(
                            new CompressorPlate(
                                    "C-03",
                                    "Quelmar RV10",
                                    "",
                                    CompressorKind.VANE,
                                    1,
                                    Drive.DIRECT,
                                    Control.MODULATING,
                                    of("10 [HP]"),
                                    of("460 V"),
                                    null,
                                    3,
                                    of("60 Hz"),
                                    null,
                                    "Bought second-hand. Figure from the seller's list; it does not say what kind of cfm.",
                                    true),
                            List.of(rating("100 [psi]", "38 [cft_i]/min", UNKNOWN)))),
            at(
                    GULL,
                    new CompressorFacts(
                            new CompressorPlate(
                                    "C-04",
                                    "Torvane PV-260",
                                    "16-0512",
                                    CompressorKind.PISTON,
                                    2,
                                    Drive.BELT,
                                    Control.LOAD_UNLOAD,
                                    of("20 [HP]"),
                                    of("460 V"),
                                    of("26 A"),
                                    3,
                                    of("60 Hz"),
                                    of("820 {rev}/min"),
                                    null,
                                    of("3400 h"),
                                    "Bought new in 2016 for the fruit line. Tests before 2020 copied from the log book.",
                                    true),
                            List.of(
                                    rating("100 [psi]", "69 [cft_i]/min", INTAKE),
                                    rating("175 [psi]", "65 [cft_i]/min", INTAKE)))),
            at(
                    MESA,
                    new CompressorFacts(
                            new CompressorPlate(
                                    "C-11",
                                    "Torvane PH-75",
                                    "91-0233",
                                    CompressorKind.PISTON,
                                    1,
                                    Drive.BELT,
                                    Control.START_STOP,
                                    of("7.5 [HP]"),
                                    of("230 V"),
                                    of("21 A"),
                                    3,
                                    of("60 Hz"),
                                    null,
                                    "Plate says scfm at sea level. It will not do that up here, and need not.",
                                    true),
                            List.of(rating("100 [psi]", "27 [cft_i]/min", STANDARD_14_5PSIA_68F_DRY)))),
            at(
                    MESA,
                    new CompressorFacts(
                            new CompressorPlate(
                                    "C-12",
                                    "Lumeo spiral L8",
                                    "L8 21 0077",
                                    CompressorKind.SCROLL,
                                    1,
                                    Drive.BELT,
                                    Control.START_STOP,
                                    of("8 kW"),
                                    of("400 V"),
                                    of("16.2 A"),
                                    3,
                                    of("60 Hz"),
                                    null,
                                    "Oil-free, for the filling heads. Imported; all its gauges are in bar.",
                                    true),
                            List.of(rating("6 bar", "0.98 m3/min", INTAKE), rating("8 bar", "0.94 m3/min", INTAKE)))));

    static final List<Sited<ReceiverFacts>> RECEIVERS = List.of(
            at(
                    GULL,
                    new ReceiverFacts(
                            "R-01",
                            of("120 [gal_us]"),
                            VolumeKnownBy.PLATE,
                            of("200 [psi]"),
                            of("180 [psi]"),
                            LocalDate.of(2030, 3, 31),
                            "Vertical, under C-01.",
                            true)),
            at(
                    GULL,
                    new ReceiverFacts(
                            "R-02",
                            of("400 [gal_us]"),
                            VolumeKnownBy.PLATE,
                            of("165 [psi]"),
                            of("150 [psi]"),
                            LocalDate.of(2030, 3, 31),
                            of("130 [psi]"),
                            true,
                            of("0.185 [in_i]"),
                            of("0.190 [in_i]"),
                            "Wet tank before the dryer. Look at the drain before every test.",
                            true)),
            at(
                    GULL,
                    new ReceiverFacts(
                            "R-03",
                            of("200 [gal_us]"),
                            VolumeKnownBy.MAKER_SHEET,
                            of("150 [psi]"),
                            of("140 [psi]"),
                            LocalDate.of(2025, 11, 30),
                            "Inspector was to come in November.",
                            true)),
            at(
                    GULL,
                    new ReceiverFacts(
                            "R-04",
                            of("240 [gal_us]"),
                            VolumeKnownBy.PLATE,
                            of("165 [psi]"),
                            of("150 [psi]"),
                            LocalDate.of(2031, 6, 30),
                            "Dry tank. Counts with R-02 when the dryer is bypassed.",
                            true)),
            at(
                    GULL,
                    new ReceiverFacts(
                            "R-05",
                            of("240 [gal_us]"),
                            VolumeKnownBy.MAKER_SHEET,
                            of("200 [psi]"),
                            of("185 [psi]"),
                            LocalDate.of(2031, 6, 30),
                            "Horizontal, beside C-04. Shut V-9 to test.",
                            true)),
            at(
                    MESA,
                    new ReceiverFacts(
                            "R-11",
                            of("80 [gal_us]"),
                            VolumeKnownBy.DIMENSIONS,
                            of("150 [psi]"),
                            of("165 [psi]"),
                            LocalDate.of(2030, 9, 30),
                            "The 165 psi valve is too high for this tank. Do not stand beside it; a 150 is on order.",
                            true)),
            at(
                    MESA,
                    new ReceiverFacts(
                            "R-12",
                            of("500 L"),
                            VolumeKnownBy.PLATE,
                            of("11 bar"),
                            of("10 bar"),
                            LocalDate.of(2031, 1, 31),
                            "",
                            true)),
            at(
                    MESA,
                    new ReceiverFacts(
                            "R-13",
                            of("60 [gal_us]"),
                            VolumeKnownBy.GUESS,
                            null,
                            null,
                            null,
                            "Plate painted over. Out of use since the rebuild; keep it shut.",
                            false)));

    static final List<Sited<PipeFacts>> PIPES = List.of(
            at(
                    GULL,
                    new PipeFacts(
                            "P-02",
                            of("24 [ft_i]"),
                            of("2.067 [in_i]"),
                            null,
                            "2 inch pipe from C-02 to R-02 and across to R-04.",
                            true)),
            at(
                    GULL,
                    new PipeFacts(
                            "P-03",
                            null,
                            null,
                            of("3.5 [gal_us]"),
                            "Separator and filter between C-03 and R-03.",
                            true)),
            at(MESA, new PipeFacts("P-12", of("6.5 m"), of("36 mm"), null, "", true)));

    private Registers() {}

    /**
     * A thing with the name of its site.
     *
     * @param site name
     * @param facts the thing
     */
    record Sited<F extends Facts>(String site, F facts) {}

    private static <F extends Facts> Sited<F> at(String site, F facts) {
        return new Sited<>(site, facts);
    }

    private static Entered of(String text) {
        return Entered.parse(text);
    }

    private static RatingEntry rating(String pressure, String flow, FlowBasis basis) {
        return new RatingEntry(of(pressure), of(flow), basis);
    }
}
