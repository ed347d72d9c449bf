package plantair.testrecord.web;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import plantair.attachment.AttachedFile;
import plantair.attachment.AttachedFiles;
import plantair.attachment.AttachedTo;
import plantair.instrument.Calibration;
import plantair.instrument.Calibrations;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.ChangeRecords;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;

/** Puts together what the report of a test says beyond its page. */
@Component
class ReportViews {

    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final PumpUpTests tests;
    private final Calibrations calibrations;
    private final ChangeRecords changes;
    private final AttachedFiles attached;
    private final Clock clock;

    ReportViews(
            PumpUpTests tests, Calibrations calibrations, ChangeRecords changes, AttachedFiles attached, Clock clock) {
        this.tests = tests;
        this.calibrations = calibrations;
        this.changes = changes;
        this.attached = attached;
        this.clock = clock;
    }

    ReportView view(PumpUpTest test) {
        Optional<ChangeRecord> line =
                changes.findByKindAndObjectIdOrderByIdDesc(ChangeKind.TEST, test.id(), Limit.of(1)).stream()
                        .findFirst();
        return new ReportView(
                test.instruments().stream().map(copy -> used(copy, test)).toList(),
                history(test),
                papers(test),
                line.map(ChangeRecord::chainNumber).orElse(null),
                line.map(ChangeRecord::digest).orElse(null),
                WHEN.format(now()));
    }

    Instant now() {
        return clock.instant();
    }

    private Optional<Calibration> certificate(InstrumentCopy copy, PumpUpTest test) {
        LocalDate day = test.performedAt().atZone(test.zone()).toLocalDate();
        return calibrations.findLatest(copy.instrumentId(), day);
    }

    private ReportView.Used used(InstrumentCopy copy, PumpUpTest test) {
        Optional<Calibration> found = certificate(copy, test);
        return new ReportView.Used(
                copy.tag(),
                "instrument.kind." + copy.kind(),
                found.map(ReportViews::words).orElse(""),
                found.map(one -> one.certificate().traceability()).orElse(""),
                copy.dueOn() == null ? "" : copy.dueOn().toString(),
                "status." + copy.status());
    }

    private static String words(Calibration found) {
        var certificate = found.certificate();
        return Stream.of(
                        certificate.certificateNumber(),
                        certificate.laboratory(),
                        certificate.doneOn().toString())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private List<ReportView.Entry> history(PumpUpTest test) {
        Deque<PumpUpTest> chain = new ArrayDeque<>(List.of(test));
        Optional<PumpUpTest> earlier = earlier(test);
        while (earlier.isPresent()) {
            chain.addFirst(earlier.get());
            earlier = earlier(earlier.get());
        }
        Optional<PumpUpTest> later = tests.findBySupersedesId(test.id());
        while (later.isPresent()) {
            chain.addLast(later.get());
            later = tests.findBySupersedesId(later.get().id());
        }
        return chain.stream()
                .map(one -> new ReportView.Entry(
                        one.id(), one.id() == test.id(), one.recordedBy(), WHEN.format(one.recordedAt()), one.reason()))
                .toList();
    }

    private Optional<PumpUpTest> earlier(PumpUpTest test) {
        return Optional.ofNullable(test.supersedesId()).flatMap(tests::findById);
    }

    private List<AttachedFile> papers(PumpUpTest test) {
        List<AttachedFile> papers = new ArrayList<>(attached.of(AttachedTo.TEST, test.id()));
        List<Long> certificates = test.instruments().stream()
                .flatMap(copy -> certificate(copy, test).stream())
                .map(Calibration::id)
                .distinct()
                .toList();
        papers.addAll(attached.of(AttachedTo.CALIBRATION, certificates));
        return papers;
    }
}
