package plantair.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpHeaders;

class UnitSetControllerTests {

    private final UnitSetController controller = new UnitSetController();

    @Test
    void keepsTheChoiceAndGoesBack() {
        var answer = controller.choose("BAR_CUBIC", "/tests?page=2&q=%C3%A9");

        assertThat(answer.getStatusCode().value()).isEqualTo(303);
        assertThat(answer.getHeaders().getFirst(HttpHeaders.LOCATION)).isEqualTo("/tests?page=2&q=%C3%A9");
        assertThat(answer.getHeaders().getFirst(HttpHeaders.SET_COOKIE))
                .contains("units=BAR_CUBIC", "HttpOnly", "SameSite=Lax", "Path=/", "Max-Age=31536000");
    }

    @Test
    void fallsBackToUsUnits() {
        assertThat(controller.choose("x; evil=1", "/").getHeaders().getFirst(HttpHeaders.SET_COOKIE))
                .startsWith("units=US;");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "tests",
                "//evil.example/",
                "///evil.example",
                "/\\evil.example",
                "\\\\evil.example",
                "https://evil.example/",
                "javascript:alert(1)",
                "/a\r\nSet-Cookie: x=1",
                "/\t/evil.example",
                "/{a}"
            })
    void goesToNoOtherSite(String back) {
        assertThat(UnitSetController.ownPage(back)).hasToString("/");
    }
}
