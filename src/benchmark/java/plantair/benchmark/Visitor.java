package plantair.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody signed in at a running program, who asks for pages and times them. */
final class Visitor {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]*)\"");

    private final String address;
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .version(HttpClient.Version.HTTP_1_1)
            .build();

    private Visitor(String address) {
        this.address = address;
    }

    static Visitor signedIn(String address, String username, String password) throws IOException, InterruptedException {
        var visitor = new Visitor(address);
        Matcher token = TOKEN.matcher(visitor.text("/login"));
        if (!token.find()) {
            throw new IllegalStateException("no sign-in page at " + address);
        }
        String form = "_csrf=" + encoded(token.group(1)) + "&username=" + encoded(username) + "&password="
                + encoded(password);
        HttpRequest request = HttpRequest.newBuilder(URI.create(address + "/login"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", address)
                .POST(BodyPublishers.ofString(form))
                .build();
        HttpResponse<Void> answer = visitor.client.send(request, BodyHandlers.discarding());
        if (answer.headers().firstValue("Location").orElse("").contains("login")) {
            throw new IllegalStateException("not signed in at " + address);
        }
        return visitor;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** The whole answer as text. */
    String text(String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(request(path), BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(path + " answers " + answer.statusCode());
        }
        return answer.body();
    }

    /** Milliseconds until the last byte of an answer. */
    double millis(String path) throws IOException, InterruptedException {
        long start = System.nanoTime();
        HttpResponse<byte[]> answer = client.send(request(path), BodyHandlers.ofByteArray());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(path + " answers " + answer.statusCode());
        }
        return (System.nanoTime() - start) / 1e6;
    }

    /** Bytes of an answer that is not kept. */
    long download(String path) throws IOException, InterruptedException {
        HttpResponse<InputStream> answer = client.send(request(path), BodyHandlers.ofInputStream());
        try (var body = answer.body()) {
            return body.transferTo(OutputStream.nullOutputStream());
        }
    }

    private HttpRequest request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path))
                .timeout(Duration.ofMinutes(30))
                .build();
    }
}
