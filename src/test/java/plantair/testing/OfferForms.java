package plantair.testing;

/** The forms of two invented offers for site 1 as a browser sends them, sound as they stand. */
public final class OfferForms {

    /** Stated on the older US standard; 102.912 cfm at the intake it was stated for (OfferTests). */
    public static final SentForm OFFER = SentForm.to("/sites/1/offers")
            .with("label", "Anvil 30")
            .with("offeredOn", "2026-05-01")
            .with("flow", "100", "[cft_i]/min")
            .with("basis", "STANDARD_14_696PSIA_60F_DRY")
            .with("pressure", "100", "[psi]")
            .with("power", "18", "kW")
            .with("station", "14.5", "[psi]")
            .with("temperature", "68", "[degF]")
            .with("humidity", "0", "%")
            .with("price", "24000", "{money}")
            .with("note", "")
            .with("open", "true");

    /** More air on its sheet, and less in truth. */
    public static final SentForm OTHER = OFFER.with("label", "Bellows 30")
            .with("flow", "102", "[cft_i]/min")
            .with("basis", "STANDARD_14_5PSIA_68F_DRY")
            .with("power", "21", "kW");

    private OfferForms() {}
}
