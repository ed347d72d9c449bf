package plantair.runlog.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.attachment.Pieces;
import plantair.quantity.Elapsed;
import plantair.runlog.LogFiles;
import plantair.runlog.LogReadings;
import plantair.runlog.LoggedRun;
import plantair.runlog.LoggedRunWithdrawals;
import plantair.runlog.LoggedRuns;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultProjection;
import plantair.web.NoSuchRecord;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** One logged run, and its file as it was sent. */
@Controller
class LoggedRunController {

    private static final int SHOWN = 25;
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final LoggedRuns runs;
    private final LoggedRunWithdrawals withdrawals;
    private final LogFiles files;
    private final Pieces pieces;
    private final PumpUpTests tests;

    LoggedRunController(
            LoggedRuns runs, LoggedRunWithdrawals withdrawals, LogFiles files, Pieces pieces, PumpUpTests tests) {
        this.runs = runs;
        this.withdrawals = withdrawals;
        this.files = files;
        this.pieces = pieces;
        this.tests = tests;
    }

    /** A reading that the page shows. */
    record Shown(int line, String time, String pressure, String seconds, String gauge) {}

    @GetMapping("/logs/{id}")
    String show(@PathVariable long id, UnitSet units, Model model) {
        LoggedRun run = find(id);
        PumpUpTest test = tests.findById(run.testId()).orElseThrow();
        LogReadings readings = files.read(run, ResultProjection.stationPressure(test));
        QuantityFormat format = QuantityFormat.of(units);
        model.addAttribute("run", run);
        model.addAttribute("tag", test.compressor().tag());
        model.addAttribute("recordedAt", WHEN.format(run.recordedAt()));
        model.addAttribute("unit", run.choices().unit().symbol());
        model.addAttribute("count", readings.rows().size());
        model.addAttribute("leftOut", readings.faulty());
        model.addAttribute("rise", RiseView.of(readings.points(), format));
        model.addAttribute("rows", shown(readings.rows(), format));
        withdrawals.findByLoggedRunId(id).ifPresent(gone -> {
            model.addAttribute("withdrawal", gone);
            model.addAttribute("withdrawnAt", WHEN.format(gone.withdrawnAt()));
        });
        return "logs/show";
    }

    /** Spread evenly over all, so that a long log shows as a whole. */
    private static List<Shown> shown(List<LogReadings.Row> rows, QuantityFormat format) {
        int step = Math.max(1, (rows.size() + SHOWN - 1) / SHOWN);
        return IntStream.iterate(0, i -> i < rows.size(), i -> i + step)
                .mapToObj(rows::get)
                .map(row -> new Shown(
                        row.line(),
                        row.time(),
                        row.pressure(),
                        row.point().seconds() > 0
                                ? format.elapsed(new Elapsed(row.point().seconds()))
                                : "0 s",
                        format.gauge(row.point().pressure())))
                .toList();
    }

    @GetMapping("/logs/{id}/file")
    void file(@PathVariable long id, HttpServletResponse response) throws IOException {
        LoggedRun run = find(id);
        response.setContentType("text/plain");
        response.setContentLengthLong(run.byteCount());
        response.setHeader("Content-Security-Policy", "default-src 'none'; sandbox; frame-ancestors 'none'");
        response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
        response.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                ContentDisposition.attachment()
                        .filename(run.fileName(), StandardCharsets.UTF_8)
                        .build()
                        .toString());
        pieces.write(run.sha256(), response.getOutputStream());
    }

    private LoggedRun find(long id) {
        return runs.findById(id).orElseThrow(() -> new NoSuchRecord("logged run " + id));
    }
}
