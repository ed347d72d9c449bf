package plantair.pumpup;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.VesselVolume;

/**
 * What one pump-up test says. Flows are at intake conditions unless a basis stands beside them.
 *
 * @param methodVersion the method that made it
 * @param airTemperature how the receiver air was treated
 * @param netVolume net gas volume (M2)
 * @param midPressure the gauge pressure the flow belongs to (M12)
 * @param band mean rise of the runs
 * @param runs each run
 * @param handMethod mean of the hand figures (M1), air temperature ignored
 * @param freeAir free air delivered; null when the runs are not averaged (M19)
 * @param atRatedSpeed the same at rated speed (M14); null when a speed is not known or the runs are not averaged
 * @param uncertainty of {@code freeAir}
 * @param spread highest less lowest run over the mean (M19)
 * @param standardFlows on each named reference (M11); empty when the runs are not averaged
 * @param rating beside the nameplate (M13); null when nothing can be compared
 * @param verdict whether it meets the nameplate (M15); null when nothing can be compared
 * @param leak from the static hold (M10); null when none was made
 * @param efficiency of machine and motor (M16, M17); null when the runs are not averaged
 * @param findings worst first
 * @param working every step with its numbers
 */
public record PumpUpResult(
        String methodVersion,
        AirTemperature airTemperature,
        VesselVolume netVolume,
        GaugePressure midPressure,
        PressureDifference band,
        List<RunResult> runs,
        FlowRate handMethod,
        @Nullable FlowRate freeAir,
        @Nullable FlowRate atRatedSpeed,
        Uncertainty uncertainty,
        double spread,
        List<StandardFlow> standardFlows,
        @Nullable RatingComparison rating,
        @Nullable NameplateVerdict verdict,
        @Nullable HoldLeak leak,
        @Nullable Efficiency efficiency,
        List<Finding> findings,
        List<WorkingStep> working) {

    /** Copies the lists. */
    public PumpUpResult {
        runs = List.copyOf(runs);
        standardFlows = List.copyOf(standardFlows);
        findings = List.copyOf(findings);
        working = List.copyOf(working);
    }

    /** The same without its working, which takes much room and can be made again from the readings. */
    public PumpUpResult withoutWorking() {
        return with(findings, List.of());
    }

    PumpUpResult with(List<Finding> itsFindings, List<WorkingStep> itsWorking) {
        return new PumpUpResult(
                methodVersion,
                airTemperature,
                netVolume,
                midPressure,
                band,
                runs,
                handMethod,
                freeAir,
                atRatedSpeed,
                uncertainty,
                spread,
                standardFlows,
                rating,
                verdict,
                leak,
                efficiency,
                itsFindings,
                itsWorking);
    }

    /** The flow for comparison over time: at rated speed when that is known; null when the runs are not averaged. */
    public @Nullable FlowRate comparableFlow() {
        return atRatedSpeed == null ? freeAir : atRatedSpeed;
    }

    /** Standard uncertainty of the ratio to the rating; zero when nothing can be compared. */
    public double ratingUncertainty() {
        return rating == null ? 0 : rating.ratio() * uncertainty.combined();
    }

    /** False when no flow came out, or a finding says that it does not show the machine's wear. */
    public boolean joinsTrend() {
        return freeAir != null
                && findings.stream().noneMatch(finding -> finding.code().isKeptFromTrend());
    }
}
