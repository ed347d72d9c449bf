package plantair.testing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandler;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without a screen: keeps cookies, follows no redirect, sends forms with their token. */
public final class Client {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final Pattern CODE = Pattern.compile("one-time code: (\\S+)");

    private final CookieManager cookies;
    private final HttpClient http;
    private String baseUrl;

    private Client(String baseUrl, CookieManager cookies) {
        this.baseUrl = baseUrl;
        this.cookies = cookies;
        this.http = HttpClient.newBuilder().cookieHandler(cookies).build();
    }

    /** Somebody who has not signed in. */
    public static Client stranger(String baseUrl) {
        return new Client(baseUrl, new CookieManager());
    }

    /** Somebody who signed in on the page. */
    public static Client signedIn(String baseUrl, String username, String password) {
        var client = stranger(baseUrl);
        client.signIn(username, password);
        return client;
    }

    /** Ann, who opened the first account with the code that the process printed. */
    public static Client first(AppProcess app) {
        return first(app, app);
    }

    /** The same, with the code of one process at another one of the same database. */
    public static Client first(AppProcess printed, AppProcess asked) {
        var code = CODE.matcher(printed.log());
        if (!code.find()) {
            throw new AssertionError("no code in\n" + printed.log());
        }
        var client = stranger(asked.baseUrl());
        var opened = client.post(
                "/setup",
                Map.of(
                        "code", code.group(1),
                        "username", People.ANN.username(),
                        "displayName", People.ANN.displayName(),
                        "password", People.PASSWORD,
                        "again", People.PASSWORD));
        if (opened.statusCode() != 302) {
            throw new AssertionError(opened.body());
        }
        client.signIn(People.ANN.username(), People.PASSWORD);
        return client;
    }

    /** The same browser, with the same cookies, at another instance. */
    public Client beside(String otherBaseUrl) {
        return new Client(otherBaseUrl, cookies);
    }

    /** The same cookies at another address, as after a restart on another port. */
    public void moveTo(String otherBaseUrl) {
        baseUrl = otherBaseUrl;
    }

    /** Where it asks, without a slash at the end. */
    public String address() {
        return baseUrl;
    }

    /** Sends the form of the page to sign in. */
    public HttpResponse<String> signIn(String username, String password) {
        return post("/login", Map.of("username", username, "password", password));
    }

    /** Asks for a page. */
    public HttpResponse<String> get(String path, String... headers) {
        return send(request(path, headers).build());
    }

    /** Asks for a file; fails where the connection is cut before its end. */
    public HttpResponse<byte[]> file(String path) {
        return send(request(path).build(), BodyHandlers.ofByteArray());
    }

    /** Sends a form with its token. */
    public HttpResponse<String> post(String path, Map<String, String> form) {
        Map<String, String> fields = new HashMap<>(form);
        fields.put("_csrf", token());
        return postAsIs(path, fields);
    }

    /** Sends a form that must be saved, and gives the path that the answer leads to. */
    public String saved(SentForm form) {
        HttpResponse<String> answer = post(form.address(), form.fields());
        if (answer.statusCode() != 302) {
            throw new AssertionError(form.address() + " answered " + answer.statusCode() + ":\n" + answer.body());
        }
        return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
    }

    /** A page or a file that must be there. */
    public String page(String path) {
        HttpResponse<String> answer = get(path);
        if (answer.statusCode() != 200) {
            throw new AssertionError(path + " answered " + answer.statusCode() + ":\n" + answer.body());
        }
        return answer.body();
    }

    /** Sends a form with these fields alone. */
    public HttpResponse<String> postAsIs(String path, Map<String, String> fields, String... headers) {
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return send(request(path, headers)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    /** Sends a form with one file, as a browser does. */
    public HttpResponse<String> upload(String path, Map<String, String> form, String name, byte[] file) {
        String boundary = "---------------------------1735";
        var body = new ByteArrayOutputStream();
        Map<String, String> fields = new HashMap<>(form);
        fields.put("_csrf", token());
        fields.forEach((field, value) -> body.writeBytes(("--" + boundary
                        + "\r\nContent-Disposition: form-data; name=\"" + field + "\"\r\n\r\n" + value + "\r\n")
                .getBytes(StandardCharsets.UTF_8)));
        body.writeBytes(("--" + boundary + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                        + "\"\r\nContent-Type: image/jpeg\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(file);
        body.writeBytes(("\r\n--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return send(request(path)
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(BodyPublishers.ofByteArray(body.toByteArray()))
                .build());
    }

    /** Value of a cookie. */
    public Optional<String> cookie(String name) {
        return cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals(name))
                .map(HttpCookie::getValue)
                .findFirst();
    }

    /** A token that goes with the cookies; any page with a form has one. */
    public String token() {
        for (String path : new String[] {"/login", "/setup"}) {
            var token = TOKEN.matcher(get(path).body());
            if (token.find()) {
                return token.group(1);
            }
        }
        throw new AssertionError("no page has a token");
    }

    private HttpRequest.Builder request(String path, String... headers) {
        var request = HttpRequest.newBuilder(URI.create(baseUrl + path));
        return headers.length == 0 ? request : request.headers(headers);
    }

    private HttpResponse<String> send(HttpRequest request) {
        return send(request, BodyHandlers.ofString());
    }

    private <T> HttpResponse<T> send(HttpRequest request, BodyHandler<T> handler) {
        try {
            return http.send(request, handler);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
