package plantair.benchmark;

import java.io.ByteArrayOutputStream;
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
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

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

    /** Sends a form with the token of its session, follows where the answer leads, and gives that page. */
    String send(String path, Map<String, String> form) throws IOException, InterruptedException {
        Map<String, String> fields = new HashMap<>(form);
        fields.put("_csrf", token());
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        HttpResponse<String> answer = client.send(
                request(path, "application/x-www-form-urlencoded", BodyPublishers.ofString(body)),
                BodyHandlers.ofString());
        if (answer.statusCode() == 302) {
            return text(place(answer));
        }
        if (answer.statusCode() != 200 && answer.statusCode() != 422) {
            throw new IllegalStateException(path + " answers " + answer.statusCode());
        }
        return answer.body();
    }

    /** Sends a file as a browser does, and gives the address that the answer leads to. */
    String upload(String path, String name, byte[] file) throws IOException, InterruptedException {
        String boundary = "---------------------------4711";
        var body = new ByteArrayOutputStream();
        body.writeBytes(("--" + boundary + "\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + token()
                        + "\r\n--" + boundary + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                        + "\"\r\nContent-Type: application/octet-stream\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(file);
        body.writeBytes(("\r\n--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8));
        HttpResponse<String> answer = client.send(
                request(
                        path,
                        "multipart/form-data; boundary=" + boundary,
                        BodyPublishers.ofByteArray(body.toByteArray())),
                BodyHandlers.ofString());
        if (answer.statusCode() != 302) {
            throw new IllegalStateException(path + " answers " + answer.statusCode() + " to a file");
        }
        return place(answer);
    }

    private String token() throws IOException, InterruptedException {
        Matcher token = TOKEN.matcher(text("/export"));
        if (!token.find()) {
            throw new IllegalStateException("a page without a token");
        }
        return token.group(1);
    }

    private static String place(HttpResponse<String> answer) {
        return URI.create(answer.headers().firstValue("Location").orElseThrow()).getRawPath();
    }

    private HttpRequest request(String path, String type, HttpRequest.BodyPublisher body) {
        return HttpRequest.newBuilder(URI.create(address + path))
                .header("Content-Type", type)
                .header("Origin", address)
                .timeout(Duration.ofMinutes(30))
                .POST(body)
                .build();
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

    /** Whether the answer has this header. */
    boolean header(String path, String name) throws IOException, InterruptedException {
        return client.send(request(path), BodyHandlers.discarding()).headers().firstValue(name).isPresent();
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

    /** A whole file. */
    byte[] bytes(String path) throws IOException, InterruptedException {
        return client.send(request(path), BodyHandlers.ofByteArray()).body();
    }

    /** Lines of a file whose cells hold no line breaks, which is not kept. */
    long lines(String path) throws IOException, InterruptedException {
        HttpResponse<InputStream> answer = client.send(request(path), BodyHandlers.ofInputStream());
        long lines = 0;
        byte[] buffer = new byte[1 << 16];
        try (var body = answer.body()) {
            for (int read = body.read(buffer); read >= 0; read = body.read(buffer)) {
                for (int i = 0; i < read; i++) {
                    lines += buffer[i] == '\n' ? 1 : 0;
                }
            }
        }
        return lines;
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
