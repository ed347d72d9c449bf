package plantair.web.http;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.hibernate.exception.ConstraintViolationException;
import org.hibernate.exception.ConstraintViolationException.ConstraintKind;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.InvalidPropertyException;
import org.springframework.beans.TypeMismatchException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.security.web.firewall.RequestRejectedException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.ModelAndView;
import plantair.web.DiskFull;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;
import plantair.web.Unworded;

/** A page for whatever a controller threw. What the caller did wrong is never a 500; a 500 tells nothing. */
@ControllerAdvice
final class ErrorPages {

    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private final PageAdvice pages;

    ErrorPages(PageAdvice pages) {
        this.pages = pages;
    }

    @ExceptionHandler(NoSuchRecord.class)
    ModelAndView noSuchRecord(HttpServletRequest request) {
        return page(HttpStatus.NOT_FOUND, request);
    }

    /** With a link to what somebody else made of the record, and with what was typed. */
    @ExceptionHandler
    ModelAndView staleRecord(StaleRecord failure, HttpServletRequest request) {
        var page = page(HttpStatus.CONFLICT, request);
        failure.later()
                .ifPresent(later -> page.addObject("later", later).addObject("laterAt", WHEN.format(later.at())));
        return page.addObject("sent", SentFields.of(request));
    }

    @ExceptionHandler(OptimisticLockingFailureException.class)
    ModelAndView overtaken(HttpServletRequest request) {
        return page(HttpStatus.CONFLICT, request).addObject("sent", SentFields.of(request));
    }

    @ExceptionHandler({
        TypeMismatchException.class,
        InvalidPropertyException.class,
        MultipartException.class,
        HttpMessageNotReadableException.class,
        RequestRejectedException.class
    })
    ModelAndView badRequest(HttpServletRequest request) {
        return page(HttpStatus.BAD_REQUEST, request);
    }

    @ExceptionHandler(MaxUploadSizeExceededException.class)
    ModelAndView tooLarge(HttpServletRequest request) {
        return page(HttpStatus.CONTENT_TOO_LARGE, request);
    }

    /** A body that Tomcat cannot take apart: bad encoding, too many parts, too large. */
    @ExceptionHandler
    ModelAndView unreadableForm(InvalidParameterException failure, HttpServletRequest request) {
        return page(HttpStatusCode.valueOf(failure.getErrorCode()), request);
    }

    /** Once an answer has begun, as in an export, no page can follow: the connection is cut instead. */
    @ExceptionHandler
    ModelAndView other(Exception failure, HttpServletRequest request, HttpServletResponse response) throws Exception {
        if (response.isCommitted()) {
            throw failure; // AwayAnswer writes it to the log
        }
        if (failure instanceof ErrorResponse answer) {
            return page(answer.getStatusCode(), request);
        }
        log(request, failure);
        HttpStatus status = status(failure);
        var page = page(status, request);
        if (status != HttpStatus.INTERNAL_SERVER_ERROR) {
            var sent = SentFields.of(request);
            page.addObject("sent", sent).addObject("again", sent.isWhole() && status != HttpStatus.CONFLICT);
        }
        return page;
    }

    /** By the pattern of the address: an address itself may hold a secret. */
    private static void log(HttpServletRequest request, Exception failure) {
        Object pattern = request.getAttribute(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE);
        LOG.error("{} {} failed", request.getMethod(), pattern, Unworded.of(failure));
    }

    /** A full disk, and a database that is away, pass; then the same request can be sent again. */
    private static HttpStatus status(Exception failure) {
        if (DiskFull.isCauseOf(failure)) {
            return HttpStatus.INSUFFICIENT_STORAGE;
        }
        if (failure instanceof DataIntegrityViolationException && isDouble(failure.getCause())) {
            return HttpStatus.CONFLICT;
        }
        return DatabaseAway.isCauseOf(failure) ? HttpStatus.SERVICE_UNAVAILABLE : HttpStatus.INTERNAL_SERVER_ERROR;
    }

    /** Two saved the same at the same moment, and the database let one of them. */
    private static boolean isDouble(@Nullable Throwable cause) {
        return cause instanceof ConstraintViolationException violation && violation.getKind() == ConstraintKind.UNIQUE;
    }

    private ModelAndView page(HttpStatusCode status, HttpServletRequest request) {
        var page = new ModelAndView("error", pages.attributes(request), status);
        page.addObject("status", status.value());
        return page;
    }
}
