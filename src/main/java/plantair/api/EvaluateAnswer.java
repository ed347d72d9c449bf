package plantair.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.FindingCode;
import plantair.pumpup.Severity;
import plantair.quantity.FlowBasis;

/** What a test says. Numbers have all their digits; how far they can be believed, the uncertainty says. */
record EvaluateAnswer(
        @Schema(description = "The method that made it, docs/method.md.")
        String methodVersion,

        @Schema(description = "How the receiver air was treated, inferred from the readings of the runs.")
        AirTemperature airTemperature,

        @Schema(description = "Net gas volume.") Amount netVolume,

        @Schema(description = "Gauge pressure that the flows belong to.")
        Amount midPressure,

        @Schema(description = "Mean of the hand figures, air temperature ignored.")
        Flow handMethod,

        @Schema(description = "Free air delivered; null when the runs are not averaged: see the findings.") @Nullable
        Flow freeAir,

        @Schema(description = "The same at rated speed; null when a speed is not known.") @Nullable
        Flow atRatedSpeed,

        @Schema(description = "Free air delivered on each named reference.")
        List<Flow> standardFlow,

        @Schema(description = "Delivered over rated flow, at mid pressure; null when they cannot be compared.")
        @Nullable
        Double percentOfRated,

        @Schema(description = "The components of the uncertainty.")
        List<BudgetLine> budget,

        @Schema(description = "Worst first; docs/findings.md.")
        List<FindingLine> findings,

        @Schema(description = "Every step with its numbers.")
        List<WorkingLine> working) {

    /**
     * A number in a unit.
     *
     * @param value the number
     * @param unit UCUM code
     */
    @Schema(name = "Amount")
    record Amount(double value, String unit) {}

    /**
     * A flow.
     *
     * @param value the number
     * @param unit UCUM code
     * @param standardUncertainty k = 1, in the same unit; null when it is not known
     * @param basis what the flow refers to
     */
    @Schema(name = "Flow")
    record Flow(double value, String unit, @Nullable Double standardUncertainty, FlowBasis basis) {}

    /**
     * One component of the uncertainty.
     *
     * @param label in words
     * @param relative relative standard uncertainty of the flow, 0.01 for 1 %
     * @param kind whether all tests with that source carry the same error
     * @param sharedWith the source that they have in common; null for a random one
     */
    @Schema(name = "BudgetLine")
    record BudgetLine(
            String label,
            double relative,
            Kind kind,
            @Nullable String sharedWith) {

        /** New in each test, or the same in all with one source. */
        enum Kind {
            RANDOM,
            SHARED
        }
    }

    /**
     * A finding.
     *
     * @param code which
     * @param severity how grave
     * @param message in words
     */
    @Schema(name = "Finding")
    record FindingLine(FindingCode code, Severity severity, String message) {}

    /**
     * One step of the working.
     *
     * @param equation its number in docs/method.md
     * @param run the run it belongs to, from 1; null for a step of the whole test
     * @param text the step with its numbers
     */
    @Schema(name = "WorkingStep")
    record WorkingLine(String equation, @Nullable Integer run, String text) {}
}
