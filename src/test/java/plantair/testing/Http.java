package plantair.testing;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/** Asks a running application, as a browser does, without following redirects. */
public final class Http {

    private final HttpClient client = HttpClient.newHttpClient();

    /** Sends a form. */
    public HttpResponse<String> post(AppProcess app, SentForm form) throws IOException, InterruptedException {
        String body = form.fields().entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return client.send(
                HttpRequest.newBuilder(URI.create(app.baseUrl() + form.address()))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    /** Sends a form that must be saved, and gives the path that the answer leads to. */
    public String saved(AppProcess app, SentForm form) throws IOException, InterruptedException {
        HttpResponse<String> answer = post(app, form);
        if (answer.statusCode() != 302) {
            throw new AssertionError(form.address() + " answered " + answer.statusCode() + ":\n" + answer.body());
        }
        return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
    }

    /** A page or a file that must be there. */
    public String get(AppProcess app, String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(app.baseUrl() + path)).build(), BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new AssertionError(path + " answered " + answer.statusCode() + ":\n" + answer.body());
        }
        return answer.body();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
