package plantair.api;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.enums.ParameterIn;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import plantair.api.Evaluation.Outcome;
import plantair.web.UnitSet;
import tools.jackson.databind.JsonNode;

/** Answers other programs; what is wrong comes as problem details (RFC 9457). */
@RestController
final class EvaluateController {

    static final String PATH = "/api/v1/pump-up/evaluate";

    /** In the query; read after the body, since a form would hide it there. */
    private static final String UNITS = "units";

    private static final String JSON = MediaType.APPLICATION_JSON_VALUE;
    private static final String PROBLEM = MediaType.APPLICATION_PROBLEM_JSON_VALUE;

    private final Evaluation evaluation;

    EvaluateController(Evaluation evaluation) {
        this.evaluation = evaluation;
    }

    @Operation(
            operationId = "evaluatePumpUp",
            summary = "Work out a pump-up test without recording it",
            parameters =
                    @Parameter(
                            in = ParameterIn.QUERY,
                            name = UNITS,
                            description = "Units of the answer.",
                            schema = @Schema(implementation = UnitSet.class, defaultValue = "US")),
            requestBody =
                    @RequestBody(
                            required = true,
                            content =
                                    @Content(
                                            mediaType = JSON,
                                            schema = @Schema(implementation = EvaluateRequest.class))))
    @ApiResponse(
            responseCode = "200",
            description = "What the test says.",
            content = @Content(mediaType = JSON, schema = @Schema(implementation = EvaluateAnswer.class)))
    @ApiResponse(
            responseCode = "422",
            description = "One entry in errors for each field that cannot be used.",
            content = @Content(mediaType = PROBLEM, schema = @Schema(implementation = Problem.class)))
    @PostMapping(PATH)
    ResponseEntity<Object> evaluate(HttpServletRequest request, Locale locale) throws IOException {
        JsonNode body = JsonBody.of(request);
        String units = Objects.requireNonNullElse(request.getParameter(UNITS), UnitSet.US.name());
        Outcome outcome = evaluation.evaluate(body, units, locale);
        return outcome.answer()
                .<ResponseEntity<Object>>map(answer -> ResponseEntity.ok()
                        .contentType(MediaType.APPLICATION_JSON)
                        .body(answer))
                .orElseGet(() -> unusable(outcome.problems()));
    }

    private static ResponseEntity<Object> unusable(List<FieldProblem> problems) {
        ProblemDetail detail = ProblemDetail.forStatusAndDetail(
                HttpStatus.UNPROCESSABLE_CONTENT, "Nothing was worked out; errors says which fields and why.");
        detail.setProperty("errors", problems);
        return problem(detail).body(detail);
    }

    @Hidden
    @RequestMapping(PATH)
    ResponseEntity<Object> otherMethod() {
        ProblemDetail detail =
                ProblemDetail.forStatusAndDetail(HttpStatus.METHOD_NOT_ALLOWED, "This address takes POST only.");
        return problem(detail).header(HttpHeaders.ALLOW, "POST").body(detail);
    }

    @ExceptionHandler
    ResponseEntity<Object> unreadable(ResponseStatusException refused) {
        return problem(refused.getBody()).body(refused.getBody());
    }

    private static ResponseEntity.BodyBuilder problem(ProblemDetail detail) {
        return ResponseEntity.status(HttpStatusCode.valueOf(detail.getStatus()))
                .contentType(MediaType.APPLICATION_PROBLEM_JSON);
    }

    /**
     * Problem details as RFC 9457 has them, for the description only.
     *
     * @param status the HTTP status
     * @param title its name
     * @param detail in words
     * @param instance the address asked
     * @param errors one for each field
     */
    @Schema(name = "Problem")
    record Problem(int status, String title, String detail, String instance, List<FieldProblem> errors) {}
}
