package plantair.guided.web;

import java.util.UUID;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** A guided test of machine 1 as its page sends it. */
final class GuidedForms {

    private GuidedForms() {}

    static SentForm guided(String day, String... seconds) {
        return PlantForms.pumpUp(day, seconds)
                .at("/guided/1")
                .with("submission", UUID.randomUUID().toString())
                .with("tagRead", "c-1")
                .with("prepared", "VESSEL_SOUND")
                .with("isolated", "VALVE_SHUT")
                .with("drained", "1.5", "[gal_us]")
                .with("afterStop", "SILENT")
                .with("steps", "2026-06-02T13:00:00.000Z run 1 start\n2026-06-02T13:01:00.000Z run 1 stop")
                .with("runs[0].laps", "150 psi @ 18.8 s; 160 psi @ 37.4 s")
                .with("deviceRecordedAt", "2026-06-15T11:56:00.000Z")
                .with("deviceOffsetMs", "240000")
                .with("draftVersion", "0")
                .with("device", "a phone")
                .with("figures.hours", "12034", "h")
                .with("figures.current1", "27.5", "A")
                .with("figures.interstagePressure", "38", "[psi]")
                .with("figures.oilLevel", "NORMAL")
                .with("figures.belt", "SLACK")
                .with("figures.noise", "=squeal");
    }
}
