package plantair.testrecord.web;

import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import plantair.instrument.Calibration;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.RatingComparison;
import plantair.quantity.FlowRate;
import plantair.testrecord.GaugeRestatement;
import plantair.testrecord.GaugeRestatements;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.Restatements;
import plantair.testrecord.ResultProjection;
import plantair.web.UnitSet;

/** What a calibration does to the tests it touches: as recorded beside restated. */
@Component
class ImpactViews {

    private final ResultProjection projection;
    private final GaugeRestatements signed;
    private final MessageSource messages;

    ImpactViews(ResultProjection projection, GaugeRestatements signed, MessageSource messages) {
        this.projection = projection;
        this.signed = signed;
        this.messages = messages;
    }

    /** A test that is touched. */
    record Row(
            long id,
            String date,
            String tag,
            String tester,
            String recorded,
            String recordedOfRating,
            String restated,
            String restatedOfRating) {}

    /** The calibration, and the signature if there is one. */
    record Head(
            long id,
            long instrumentId,
            String tag,
            String certificate,
            String doneOn,
            boolean hasErrors,
            @Nullable String signedBy,
            String signedAt,
            String note) {}

    Head head(Calibration calibration) {
        Optional<GaugeRestatement> signature = signed.findByCalibrationId(calibration.id());
        return new Head(
                calibration.id(),
                calibration.instrument().id(),
                calibration.instrument().facts().tag(),
                calibration.certificate().certificateNumber(),
                calibration.doneOn().toString(),
                !Restatements.errors(calibration).isEmpty(),
                signature.map(GaugeRestatement::restatedBy).orElse(null),
                signature
                        .map(found -> found.restatedAt()
                                        .atZone(ZoneOffset.UTC)
                                        .toLocalDateTime()
                                        .truncatedTo(ChronoUnit.MINUTES)
                                + " UTC")
                        .orElse(""),
                signature.map(GaugeRestatement::note).orElse(""));
    }

    List<Row> rows(List<PumpUpTest> tests, Calibration calibration, UnitSet units, Locale locale) {
        var words = new ResultWords(units, messages, locale);
        return tests.stream().map(test -> row(test, calibration, words)).toList();
    }

    private Row row(PumpUpTest test, Calibration calibration, ResultWords words) {
        PumpUpResult recorded = projection.asIf(test, List.of());
        PumpUpResult restated = projection.asIf(test, Restatements.errors(calibration));
        return new Row(
                test.id(),
                test.performedAt().atZone(test.zone()).toLocalDate().toString(),
                test.compressor().tag(),
                test.tester(),
                flow(recorded.freeAir(), words),
                ofRating(recorded.rating(), words),
                flow(restated.freeAir(), words),
                ofRating(restated.rating(), words));
    }

    private static String flow(@Nullable FlowRate flow, ResultWords words) {
        return flow == null ? words.say("test.noFlow") : words.format().flow(flow);
    }

    private static String ofRating(@Nullable RatingComparison rating, ResultWords words) {
        return rating == null ? "" : words.format().percent(rating.ratio());
    }
}
