package plantair.testrecord.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/** What the page of a test shows, as ready text. */
record TestView(
        long id,
        long compressorId,
        String tag,
        String site,
        String performedAt,
        String tester,
        Headline headline,
        @Nullable Fit fit,
        List<ReadingsView> readings,
        List<Run> runs,
        List<LapsView> laps,
        List<Pair> standardFlows,
        List<Component> uncertainty,
        List<FindingView> findings,
        List<String> explanations,
        List<WorkingView> working,
        Record record) {

    /** The largest component, for the size of the bars. */
    public double largestPart() {
        return uncertainty.isEmpty() ? 1 : uncertainty.get(0).part();
    }

    /** True when a run has a temperature of the receiver air. */
    public boolean hasAir() {
        return runs.stream()
                .anyMatch(run -> !run.startAir().isEmpty() || !run.stopAir().isEmpty());
    }

    /** True when a run has a settled reading. */
    public boolean hasSettled() {
        return runs.stream().anyMatch(run -> !run.settled().isEmpty());
    }

    /**
     * The result in one look.
     *
     * @param freeAir free air delivered with its uncertainty; empty when the runs are not averaged
     * @param atPressure the pressure it belongs to
     * @param hand the hand figure
     * @param atRatedSpeed the flow at rated speed; empty when a speed is not known
     * @param ofRating percent of rating; empty when it cannot be told
     * @param ratingText what the rating is
     * @param verdict whether it meets the nameplate; empty when nothing can be compared
     * @param verdictNote with what probability
     * @param believable what the explanations lead to; empty without any
     * @param ofBaseline percent of the own baseline; empty for the baseline itself and where there is none
     * @param baselineId the baseline test; null when there is none
     * @param baselineDate its day
     * @param spread spread of the runs
     */
    record Headline(
            String freeAir,
            String atPressure,
            String hand,
            String atRatedSpeed,
            String ofRating,
            String ratingText,
            String verdict,
            String verdictNote,
            String believable,
            String ofBaseline,
            @Nullable Long baselineId,
            String baselineDate,
            String spread) {}

    /** How it fits the tests before it: a word and a sentence. */
    record Fit(Status status, String text) {}

    /** One run: as typed, and what it says. */
    record Run(
            int number,
            String start,
            String stop,
            String elapsed,
            String startAir,
            String stopAir,
            String settled,
            String settledAir,
            String settledWait,
            String hand,
            String freeAir) {}

    /** A name and a value. */
    record Pair(String name, String value) {}

    /** One component of the uncertainty. */
    record Component(String name, String percent, double part, String kind) {}

    /** A finding as a state and a sentence. */
    record FindingView(Status status, String code, String text) {}

    /** Who recorded the test, and its corrections. */
    record Record(
            String by,
            String at,
            String methodVersion,
            String notes,
            @Nullable Long supersedesId,
            @Nullable String reason,
            @Nullable Long supersededById,
            @Nullable String supersededReason,
            String confirmed,
            String restated,
            boolean joinsTrend,
            @Nullable ReviewMark review,
            @Nullable Long leakTestId) {

        /** Whether a second person may still review it. */
        public boolean isOpen() {
            return review == null && supersededById == null;
        }
    }
}
