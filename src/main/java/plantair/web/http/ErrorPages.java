package plantair.web.http;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.InvalidPropertyException;
import org.springframework.beans.TypeMismatchException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.servlet.ModelAndView;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** A page for whatever a controller threw. What the caller did wrong is never a 500; a 500 tells nothing. */
@ControllerAdvice
final class ErrorPages {

    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);

    private final PageAdvice pages;

    ErrorPages(PageAdvice pages) {
        this.pages = pages;
    }

    @ExceptionHandler(NoSuchRecord.class)
    ModelAndView noSuchRecord(HttpServletRequest request) {
        return page(HttpStatus.NOT_FOUND, request);
    }

    @ExceptionHandler({StaleRecord.class, OptimisticLockingFailureException.class})
    ModelAndView staleRecord(HttpServletRequest request) {
        return page(HttpStatus.CONFLICT, request);
    }

    @ExceptionHandler({
        TypeMismatchException.class,
        InvalidPropertyException.class,
        MultipartException.class,
        HttpMessageNotReadableException.class
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
            throw failure;
        }
        if (failure instanceof ErrorResponse answer) {
            return page(answer.getStatusCode(), request);
        }
        LOG.error("{} {} failed", request.getMethod(), request.getRequestURI(), failure);
        return page(HttpStatus.INTERNAL_SERVER_ERROR, request);
    }

    private ModelAndView page(HttpStatusCode status, HttpServletRequest request) {
        var page = new ModelAndView("error", pages.attributes(request), status);
        page.addObject("status", status.value());
        return page;
    }
}
