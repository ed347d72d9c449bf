package plantair;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

/** Makes odd requests of sound ones: the forms of the pages, with some of it replaced by what nobody should type. */
final class RequestMangler {

    private static final List<String> ODD = List.of(
            "",
            " ",
            "-",
            ".",
            "0",
            "-1",
            "1",
            "2",
            "-0",
            "0.0000000001",
            "999999999",
            "99999999999999999999",
            "1e9",
            "NaN",
            "Infinity",
            "٣",
            "１２",
            "1,5",
            "1.5.5",
            "0x1F",
            "1:00",
            "99:59",
            "−5",
            "½",
            "'; drop table site; --",
            "<b>5</b>",
            "${7*7}",
            "#{7*7}",
            "__${7*7}__",
            "\u0000",
            "\uD800",
            "\u202E",
            "\uFEFF",
            "🙂",
            "a\r\nb: c",
            "../../etc/passwd",
            "%2e%2e",
            "%",
            "%zz",
            "null",
            "true",
            "on",
            "[psi]",
            "Cel",
            "VALVES",
            "9999-12-31",
            "0001-01-01",
            "+999999999-01-01",
            "24:00",
            "2026-05-12",
            "00000000-0000-0000-0000-000000000000",
            "SETTLED",
            "x".repeat(5_000));
    private static final List<String> NAMES = List.of(
            "page",
            "units",
            "back",
            "edit",
            "edit.version",
            "edit.version.x",
            "runs",
            "runs[0]",
            "runs[0].elapsed",
            "runs[99].elapsed.number",
            "runs[100].elapsed.number",
            "runs[-1].elapsed.number",
            "ratings[5].pressure.unit",
            "points[3].error",
            "class",
            "class.classLoader",
            "form",
            "[",
            "]",
            "a[b]c",
            ".",
            "action",
            "more",
            "confirmed");
    private static final List<String> HEADERS = List.of(
            HttpHeaders.ACCEPT,
            HttpHeaders.COOKIE,
            HttpHeaders.RANGE,
            HttpHeaders.IF_MODIFIED_SINCE,
            HttpHeaders.IF_NONE_MATCH,
            HttpHeaders.REFERER,
            HttpHeaders.ORIGIN,
            HttpHeaders.CONTENT_ENCODING,
            HttpHeaders.TRANSFER_ENCODING,
            "Sec-Fetch-Site",
            "X-Forwarded-For",
            "X-Forwarded-Proto",
            "X-HTTP-Method-Override");
    private static final List<MediaType> TYPES = List.of(
            MediaType.APPLICATION_JSON,
            MediaType.APPLICATION_XML,
            MediaType.TEXT_PLAIN,
            MediaType.MULTIPART_FORM_DATA,
            MediaType.APPLICATION_FORM_URLENCODED,
            MediaType.APPLICATION_OCTET_STREAM);

    /** What was sent, in words, and the status of the answer. */
    record Sent(String words, int status) {}

    private final MockMvcTester site;
    private final Random random;
    private final Map<Address, List<Map<String, String>>> forms = new HashMap<>();
    private final List<String> seen;

    RequestMangler(MockMvcTester site, Random random, List<Address> addresses) {
        this.site = site;
        this.random = random;
        addresses.stream()
                .filter(address -> address.method() == HttpMethod.GET)
                .forEach(page -> collect(page, addresses));
        this.seen = forms.values().stream()
                .flatMap(List::stream)
                .flatMap(form -> form.keySet().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** The forms of a page as they would be sent untouched. */
    private void collect(Address page, List<Address> addresses) {
        var answer = site.get().uri(page.template(), ones(page)).exchange().getResponse();
        String body = new String(answer.getContentAsByteArray(), StandardCharsets.UTF_8);
        if (answer.getStatus() != 200
                || !String.valueOf(answer.getContentType()).contains("html")) {
            return;
        }
        for (Element form : Jsoup.parse(body).select("form")) {
            HttpMethod method = form.attr("method").equals("post") ? HttpMethod.POST : HttpMethod.GET;
            addresses.stream()
                    .filter(address -> address.method() == method && address.takes(form.attr("action")))
                    .forEach(address -> forms.computeIfAbsent(address, key -> new ArrayList<>())
                            .add(fields(form)));
        }
    }

    private static Object[] ones(Address address) {
        Object[] ones = new Object[address.variables()];
        java.util.Arrays.fill(ones, "1");
        return ones;
    }

    private static Map<String, String> fields(Element form) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Element control : form.select("[name]")) {
            fields.put(
                    control.attr("name"),
                    control.tagName().equals("select")
                            ? control.select("option[selected]").val()
                            : control.val());
        }
        return fields;
    }

    Sent send(Address address) {
        Object[] variables = ones(address);
        for (int i = 0; i < variables.length; i++) {
            variables[i] = random.nextInt(10) < 7 ? "1" : oneOf(ODD);
        }
        Map<String, String> fields = mangled(address);
        var request = site.method(address.method()).uri(address.template(), variables);
        for (var field : fields.entrySet()) {
            request = request.param(field.getKey(), field.getValue());
        }
        List<String> words =
                new ArrayList<>(List.of(address.toString(), List.of(variables).toString(), fields.toString()));
        if (random.nextInt(4) == 0) {
            String header = oneOf(HEADERS);
            String value = oneOf(ODD);
            words.add(header + ": " + value);
            request = request.header(header, value);
        }
        if (address.method() == HttpMethod.POST && random.nextInt(4) == 0) {
            MediaType type = oneOf(TYPES);
            String body = oneOf(ODD) + oneOf(List.of("{", "{\"method\":", "[]", "{\"runs\":[{}]}", "a=b&c", "--x"));
            words.add(type + " " + body);
            request = request.contentType(type).content(body);
        }
        var answer = request.exchange();
        if (answer.getUnresolvedException() != null) {
            throw new AssertionError(String.join(" ", words), answer.getUnresolvedException());
        }
        return new Sent(String.join(" ", words), answer.getResponse().getStatus());
    }

    private Map<String, String> mangled(Address address) {
        List<Map<String, String>> known = forms.getOrDefault(address, List.of());
        Map<String, String> fields = new LinkedHashMap<>();
        if (!known.isEmpty() && random.nextInt(10) < 8) {
            fields.putAll(oneOf(known));
        }
        List<String> names = new ArrayList<>(fields.keySet());
        names.addAll(address.names());
        for (int change = random.nextInt(5); change > 0; change--) {
            int kind = random.nextInt(10);
            String name = kind == 0 ? oneOf(NAMES) : kind == 1 || names.isEmpty() ? oneOf(seen) : oneOf(names);
            fields.put(name, oneOf(ODD));
        }
        return fields;
    }

    private <T> T oneOf(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
