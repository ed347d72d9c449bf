package plantair.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

class SameOriginRequestsTests {

    private final SameOriginRequests filter = new SameOriginRequests(Set.of("plant.example"));

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "127.0.0.1", "[::1]", "plant.example", "PLANT.example"})
    void servesItsOwnHostNames(String host) throws Exception {
        assertThat(status(request("GET", host))).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.example", "localhost.evil.example", "0.0.0.0", "127.0.0.1.evil.example"})
    void refusesAForeignHostNameEvenToRead(String host) throws Exception {
        assertThat(status(request("GET", host))).isEqualTo(403);
    }

    @ParameterizedTest
    @CsvSource({"same-origin, 200", "none, 200", "same-site, 403", "cross-site, 403", "odd, 403"})
    void letsOnlyOwnPagesChangeRecords(String site, int status) throws Exception {
        var request = request("POST", "localhost");
        request.addHeader("Sec-Fetch-Site", site);

        assertThat(status(request)).isEqualTo(status);
    }

    @ParameterizedTest
    @CsvSource({
        "http://localhost:8080, 200",
        "https://localhost:8080, 200",
        "http://localhost:9090, 403",
        "http://localhost, 403",
        "http://evil.example, 403",
        "http://localhost:8080.evil.example, 403",
        "null, 403"
    })
    void comparesTheOriginWithTheHost(String origin, int status) throws Exception {
        var request = request("POST", "localhost");
        request.addHeader("Origin", origin);

        assertThat(status(request)).isEqualTo(status);
    }

    @Test
    void letsLinksOfOtherSitesRead() throws Exception {
        var request = request("GET", "localhost");
        request.addHeader("Sec-Fetch-Site", "cross-site");

        assertThat(status(request)).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "TRACE"})
    void guardsEveryMethodThatMayChange(String method) throws Exception {
        var request = request(method, "localhost");
        request.addHeader("Sec-Fetch-Site", "cross-site");

        assertThat(status(request)).isEqualTo(403);
    }

    private static MockHttpServletRequest request(String method, String host) {
        var request = new MockHttpServletRequest(method, "/tests");
        request.setServerName(host);
        request.addHeader("Host", host + ":8080");
        return request;
    }

    private int status(MockHttpServletRequest request) throws Exception {
        var response = new MockHttpServletResponse();
        var chain = new MockFilterChain();
        filter.doFilter(request, response, chain);
        assertThat(chain.getRequest() == null).isEqualTo(response.getStatus() == 403);
        return response.getStatus();
    }
}
